package underhold.report.html;

import java.util.ArrayList;
import java.util.List;

/**
 * The text of a drawing parted into a sketch, which needs letters of one width, and words.
 *
 * @param sketch the lines from the first to the last that has box or block signs
 * @param words the other lines
 */
record DrawingWords(List<String> sketch, List<String> words) {

  static DrawingWords of(List<String> lines) {
    int first = -1;
    int last = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).codePoints().anyMatch(DrawingWords::isDrawn)) {
        first = first < 0 ? i : first;
        last = i;
      }
    }
    if (first < 0) {
      return new DrawingWords(List.of(), lines);
    }
    List<String> words = new ArrayList<>(lines.subList(0, first));
    words.addAll(lines.subList(last + 1, lines.size()));
    return new DrawingWords(
        lines.subList(first, last + 1), words.stream().filter(line -> !line.isBlank()).toList());
  }

  /** Box drawing and block elements. */
  private static boolean isDrawn(int point) {
    return point >= 0x2500 && point <= 0x259F;
  }
}
