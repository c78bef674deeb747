package underhold.report;

import java.util.ArrayList;
import java.util.List;
import underhold.report.drawing.text.Signs;

/** Lays out a text line by line, wrapped between words; no line is wider than the look allows. */
public final class TextPage {
  /** Columns below which a paragraph goes under its mark instead of beside it. */
  private static final int LEAST_ROOM = 20;

  private static final int NARROW_HANG = 2;

  private final Look look;
  private final StringBuilder text = new StringBuilder();

  public TextPage(Look look) {
    this.look = look;
  }

  public Look look() {
    return look;
  }

  /** An empty line, never two in a row and never at the top. */
  public TextPage blank() {
    if (text.length() > 0 && !text.toString().endsWith("\n\n")) {
      text.append('\n');
    }
    return this;
  }

  /** A heading, set off by an empty line above. */
  public TextPage heading(String heading) {
    blank();
    return tinted(Tint.STRONG, 0, heading);
  }

  /** A wrapped paragraph. */
  public TextPage para(int indent, String words) {
    return tinted(Tint.NONE, indent, words);
  }

  /** A wrapped paragraph in a tint. */
  public TextPage tinted(Tint tint, int indent, String words) {
    for (String line : lines(words, room(indent))) {
      text.append(" ".repeat(indent)).append(tint.on(line, look)).append('\n');
    }
    return this;
  }

  /** A sketch line by line, in plain signs where the output has no others. */
  public TextPage sketch(List<String> lines) {
    boolean plain = !look.charset().canEncode() || !encodes(lines);
    lines.forEach(line -> text.append(plain ? Signs.plain(line) : line).append('\n'));
    return this;
  }

  private boolean encodes(List<String> lines) {
    return look.charset().newEncoder().canEncode(String.join("", lines));
  }

  /** A paragraph hung beside a mark: the mark stands once, in a column of its own. */
  public TextPage item(int indent, String mark, int column, String words) {
    return item(Tint.NONE, indent, mark, column, words);
  }

  /** As {@link #item(int, String, int, String)}, the mark in a tint. */
  public TextPage item(Tint tint, int indent, String mark, int column, String words) {
    int hang = indent + column;
    boolean narrow = look.width() - hang < LEAST_ROOM;
    if (narrow || mark.length() >= column) {
      tinted(tint, indent, mark);
      return para(narrow ? indent + NARROW_HANG : hang, words);
    }
    boolean first = true;
    for (String line : lines(words, room(hang))) {
      String lead = first ? tint.on(mark, look) + " ".repeat(column - mark.length()) : "";
      text.append(" ".repeat(first ? indent : hang)).append(lead).append(line).append('\n');
      first = false;
    }
    return this;
  }

  /** One line with something at its right end; on a line of its own where both do not fit. */
  public TextPage ends(Tint leftTint, String leftText, Tint rightTint, String rightText) {
    String left = Plain.in(look.charset(), leftText);
    String right = Plain.in(look.charset(), rightText);
    int gap = look.width() - left.length() - right.length();
    if (gap < 2) {
      tinted(leftTint, 0, left);
      return tinted(rightTint, 4, right);
    }
    text.append(leftTint.on(left, look)).append(" ".repeat(gap));
    text.append(rightTint.on(right, look)).append('\n');
    return this;
  }

  /** What was laid out, ending with a line end. */
  public String text() {
    return text.toString();
  }

  private List<String> lines(String words, int columns) {
    return wrap(Plain.in(look.charset(), words), columns);
  }

  private int room(int indent) {
    return Math.max(LEAST_ROOM, look.width() - indent);
  }

  /** The words in lines of that many columns; a word that is longer is cut. */
  static List<String> wrap(String words, int columns) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : words.split("\\R", -1)) {
      StringBuilder line = new StringBuilder();
      for (String word : paragraph.strip().split("\\s+")) {
        String rest = word;
        if (line.length() > 0 && line.length() + 1 + rest.length() > columns) {
          lines.add(line.toString());
          line.setLength(0);
        }
        while (rest.length() > columns) {
          lines.add(rest.substring(0, columns));
          rest = rest.substring(columns);
        }
        line.append(line.length() > 0 ? " " : "").append(rest);
      }
      lines.add(line.toString());
    }
    return lines;
  }
}
