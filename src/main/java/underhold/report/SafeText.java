package underhold.report;

import java.util.Locale;

/**
 * Texts from outside, safe to print: whatever could move the cursor, colour the screen or turn the
 * direction of writing is written out as its code point.
 */
public final class SafeText {
  private static final int JOINERS_FROM = 0x200C;
  private static final int JOINERS_TO = 0x200D;

  private SafeText() {}

  /** The text with line ends kept, tabs as blanks and unsafe signs as {@code <U+001B>}. */
  public static String of(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (point == '\n') {
                safe.append('\n');
              } else if (point == '\t' || point == '\r') {
                safe.append(' ');
              } else if (isUnsafe(point)) {
                safe.append(String.format(Locale.ROOT, "<U+%04X>", point));
              } else {
                safe.appendCodePoint(point);
              }
            });
    return safe.toString();
  }

  /**
   * A JSON text in which such signs, which stand only inside its texts, are escaped; it holds the
   * same data.
   */
  static String json(String json) {
    if (json.codePoints().noneMatch(point -> point != '\n' && isUnsafe(point))) {
      return json;
    }
    StringBuilder safe = new StringBuilder(json.length());
    for (char unit : json.toCharArray()) {
      boolean pairHalf = Character.isSurrogate(unit);
      if (unit != '\n' && !pairHalf && isUnsafe(unit)) {
        safe.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
      } else {
        safe.append(unit);
      }
    }
    return safe.toString();
  }

  /** The joiners are letters' helpers in several scripts; other formats only deceive. */
  private static boolean isUnsafe(int point) {
    if (point >= JOINERS_FROM && point <= JOINERS_TO) {
      return false;
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
