package underhold.shell;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The last gate before the terminal: whatever was typed or stands in a file, what is printed moves
 * no cursor, changes no colour or title, and turns no direction of writing. Such signs are written
 * as their code points, {@code <U+001B>}.
 */
final class Printable {
  /** The tints that pages are made with. */
  private static final Pattern TINT = Pattern.compile("\u001B\\[[0-9;]{0,8}m");

  private Printable() {}

  /** A page of lines; the program's own tints pass where colour is wanted. */
  static String page(String page, boolean colour) {
    return safe(page, colour, true);
  }

  /** A message in one line. */
  static String line(String message) {
    return safe(message, false, false);
  }

  private static String safe(String text, boolean colour, boolean lines) {
    if (text.codePoints().noneMatch(Printable::steers)) {
      return text;
    }
    StringBuilder safe = new StringBuilder(text.length());
    var tint = TINT.matcher(text);
    for (int at = 0; at < text.length(); ) {
      int point = text.codePointAt(at);
      int length = Character.charCount(point);
      if (colour && point == 0x1B && tint.region(at, text.length()).lookingAt()) {
        safe.append(tint.group());
        length = tint.group().length();
      } else if (!steers(point) || (lines && isLineEnd(text, at))) {
        safe.appendCodePoint(point);
      } else {
        safe.append(String.format(Locale.ROOT, "<U+%04X>", point));
      }
      at += length;
    }
    return safe.toString();
  }

  /** A line end of this or, in tables for other programs, of another system; or a tab. */
  private static boolean isLineEnd(String text, int at) {
    char sign = text.charAt(at);
    boolean pair = sign == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
    return sign == '\n' || sign == '\t' || pair;
  }

  private static boolean steers(int point) {
    return Character.isISOControl(point)
        || Character.getType(point) == Character.SURROGATE
        || (point >= 0x2028 && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069);
  }
}
