package underhold.report.drawing.kit;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Measures, cleans, clips and wraps words without asking the machine for its fonts, so that a
 * drawing is the same everywhere. Widths are those of a wide sans-serif face (DejaVu Sans, measured
 * here); common faces are narrower, so words that fit by these widths fit on paper.
 */
public final class Lettering {
  private static final int FIRST = ' ';

  /** Advance of the signs from blank to tilde, thousandths of the size. */
  private static final int[] PLAIN = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  private static final int[] BOLD = {
    348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696,
    696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683,
    683, 821, 837, 372, 372, 775, 637, 995, 837, 850, 733, 850, 770, 720, 682, 812, 774, 1103, 771,
    724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716, 712, 343, 343, 665,
    343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838
  };

  private static final int WIDEST = 1000;
  private static final String CUT = "…";
  private static final char GLUE = '\u00A0';

  /** The blank between a number and a short word after it, which is likely its unit. */
  private static final Pattern UNIT = Pattern.compile("(?<=\\d) (?=[\\p{L}·/-]{1,6}\\d?(?:\\W|$))");

  private Lettering() {}

  /** Width of the words [mm] in letters of that size [mm]. */
  public static double width(String words, double size, boolean bold) {
    int[] table = bold ? BOLD : PLAIN;
    return words.codePoints().map(point -> advance(point, table)).sum() * size / 1000;
  }

  private static int advance(int point, int[] table) {
    if (point >= FIRST && point < FIRST + table.length) {
      return table[point - FIRST];
    }
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK || type == Character.FORMAT) {
      return 0;
    }
    int bare = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFD).codePointAt(0);
    return bare >= FIRST && bare < FIRST + table.length ? table[bare - FIRST] : WIDEST;
  }

  /**
   * The words on one line and without what a drawing must not hold: control characters, halves of
   * characters, signs that turn the direction of writing.
   */
  public static String clean(String words) {
    StringBuilder clean = new StringBuilder(words.length());
    words.codePoints().forEach(point -> clean.appendCodePoint(shown(point)));
    return clean.toString().strip();
  }

  private static int shown(int point) {
    if (point == '\n' || point == '\t' || point == '\r') {
      return ' ';
    }
    int type = Character.getType(point);
    boolean bad =
        type == Character.CONTROL
            || type == Character.SURROGATE
            || type == Character.FORMAT
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR
            || (point & 0xFFFE) == 0xFFFE;
    return bad ? '?' : point;
  }

  /** The words, cut short to the width [mm]. */
  public static String clip(String words, double width, Letters letters) {
    String clean = clean(words);
    if (letters.width(clean) <= width) {
      return clean;
    }
    int[] points = clean.codePoints().toArray();
    int count = points.length;
    while (count > 0 && letters.width(new String(points, 0, count).strip() + CUT) > width) {
      count--;
    }
    return new String(points, 0, count).strip() + CUT;
  }

  /** The words on lines no wider than that [mm]; a word that is wider alone is cut in two. */
  public static List<String> wrap(String words, double width, Letters letters) {
    List<String> lines = new ArrayList<>();
    String line = "";
    String glued = UNIT.matcher(clean(words)).replaceAll(String.valueOf(GLUE));
    for (String word : glued.split(" +", -1)) {
      String rest = word;
      while (letters.width(rest) > width && rest.codePointCount(0, rest.length()) > 1) {
        if (!line.isEmpty()) {
          lines.add(line);
          line = "";
        }
        int fits = fitting(rest, width, letters);
        lines.add(rest.substring(0, fits));
        rest = rest.substring(fits);
      }
      String longer = line.isEmpty() ? rest : line + " " + rest;
      if (letters.width(longer) > width && !line.isEmpty()) {
        lines.add(line);
        line = rest;
      } else {
        line = longer;
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    lines.replaceAll(done -> done.replace(GLUE, ' '));
    return lines;
  }

  private static int fitting(String word, double width, Letters letters) {
    int end = word.offsetByCodePoints(0, 1);
    while (end < word.length()) {
      int next = word.offsetByCodePoints(end, 1);
      if (letters.width(word.substring(0, next)) > width) {
        break;
      }
      end = next;
    }
    return end;
  }
}
