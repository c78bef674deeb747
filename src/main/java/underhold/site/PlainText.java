package underhold.site;

import java.util.Optional;

/** Rules for texts that come from outside. */
public final class PlainText {
  /** Longest name of a site or zone, in characters. */
  static final int LONGEST_NAME = 200;

  /** Longest note, in characters. */
  static final int LONGEST_NOTE = 4000;

  private static final int LONGEST_SHOWN = 60;

  private PlainText() {}

  /** The text in quotation marks, safe to print: short, without control characters. */
  public static String quoted(String text) {
    return "\"" + shown(text) + "\"";
  }

  /** The text made safe to print: short, without control characters. */
  public static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    int count = 0;
    for (int at = 0; at < text.length(); ) {
      int point = text.codePointAt(at);
      if (count++ == LONGEST_SHOWN) {
        return shown.append('…').toString();
      }
      shown.appendCodePoint(isUnsafe(point) ? '?' : point);
      at += Character.charCount(point);
    }
    return shown.toString();
  }

  /** Why the text cannot be a name; empty if it can. */
  static Optional<String> whyNoName(String text) {
    if (text.isBlank()) {
      return Optional.of("the name is empty");
    }
    if (text.length() > LONGEST_NAME) {
      return Optional.of(tooLong("the name", text, LONGEST_NAME));
    }
    return text.codePoints().anyMatch(PlainText::isUnsafe)
        ? Optional.of("the name holds a control character or half a character")
        : Optional.empty();
  }

  /** Why the text cannot be a note; empty if it can. A note may have several lines. */
  static Optional<String> whyNoNote(String text) {
    if (text.length() > LONGEST_NOTE) {
      return Optional.of(tooLong("the note", text, LONGEST_NOTE));
    }
    boolean unsafe =
        text.codePoints()
            .anyMatch(point -> point != '\n' && point != '\r' && point != '\t' && isUnsafe(point));
    return unsafe
        ? Optional.of("the note holds a control character or half a character")
        : Optional.empty();
  }

  private static String tooLong(String what, String text, int longest) {
    return what + " has " + text.length() + " characters; at most " + longest + " are allowed";
  }

  /** Control characters, halves of characters, and signs that turn the direction of writing. */
  public static boolean isUnsafe(int point) {
    return Character.isISOControl(point)
        || Character.getType(point) == Character.SURROGATE
        || (point >= 0x2028 && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069)
        || point == 0xFEFF;
  }
}
