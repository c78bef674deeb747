package underhold.report.html;

import java.text.Normalizer;

/**
 * Characters that a page may hold. Control characters, halves of a pair, characters that XML or
 * HTML forbid, and characters that reorder the text around them are shown as U+FFFD, so that a
 * reader sees that something stood there. Words written from right to left are isolated, so that
 * they never move the numbers beside them.
 */
final class SafeText {
  private static final char SHOWN = '\uFFFD';
  private static final char ISOLATE = '\u2067';
  private static final char END_OF_ISOLATE = '\u2069';

  private SafeText() {}

  /** The text with what no page may hold replaced. */
  static String of(String text) {
    return isPlain(text) ? text : Normalizer.normalize(cleaned(text), Normalizer.Form.NFC);
  }

  private static String cleaned(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    int at = 0;
    while (at < text.length()) {
      int plain = endOfPlain(text, at);
      if (plain > at) {
        out.append(text, at, plain);
        at = plain;
        continue;
      }
      int codePoint = text.codePointAt(at);
      int next = at + Character.charCount(codePoint);
      if (isRightToLeft(codePoint)) {
        int end = endOfRun(text, next);
        out.append(ISOLATE);
        text.substring(at, end).codePoints().forEach(each -> append(out, each));
        out.append(END_OF_ISOLATE);
        at = end;
      } else {
        append(out, codePoint);
        at = next;
      }
    }
    return out.toString();
  }

  private static boolean isPlain(String text) {
    return endOfPlain(text, 0) == text.length();
  }

  /** Where the first character stands, from a place on, that is looked at by itself. */
  private static int endOfPlain(String text, int from) {
    int at = from;
    while (at < text.length() && isPlain(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isPlain(char each) {
    return each >= ' ' && each < 0x7F
        || each == '\n'
        || each == '\t'
        || each > 0x9F && each < 0x590
        || isSign(each);
  }

  /**
   * Dashes, quotes, primes, raised digits, arrows, operators, boxes and ticks, of which pages are
   * full.
   */
  private static boolean isSign(char each) {
    return each >= 0x2010 && each <= 0x2027
        || each >= 0x2030 && each <= 0x205E
        || each >= 0x2070 && each <= 0x209C
        || each >= 0x2190 && each <= 0x22FF
        || each >= 0x2500 && each <= 0x25FF
        || each >= 0x2701 && each <= 0x27BE;
  }

  private static void append(StringBuilder out, int codePoint) {
    if (isAllowed(codePoint)) {
      out.appendCodePoint(codePoint);
    } else if (codePoint == '\r') {
      out.append(' ');
    } else {
      out.append(SHOWN);
    }
  }

  private static boolean isAllowed(int codePoint) {
    if (codePoint == '\n' || codePoint == '\t') {
      return true;
    }
    boolean noncharacter =
        (codePoint & 0xFFFE) == 0xFFFE || codePoint >= 0xFDD0 && codePoint <= 0xFDEF;
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL, Character.SURROGATE -> false;
      case Character.FORMAT -> !reorders(codePoint);
      default -> !noncharacter;
    };
  }

  private static boolean reorders(int codePoint) {
    return codePoint >= 0x202A && codePoint <= 0x202E
        || codePoint >= 0x2066 && codePoint <= 0x206F
        || codePoint == 0x200E
        || codePoint == 0x200F
        || codePoint == 0x061C;
  }

  /** Where the last character written from right to left ends, before one written the other way. */
  private static int endOfRun(String text, int start) {
    int end = start;
    int at = start;
    while (at < text.length()) {
      int codePoint = text.codePointAt(at);
      at += Character.charCount(codePoint);
      if (isRightToLeft(codePoint)) {
        end = at;
      } else if (Character.isLetterOrDigit(codePoint) || Character.isISOControl(codePoint)) {
        break;
      }
    }
    return end;
  }

  private static boolean isRightToLeft(int codePoint) {
    byte direction = Character.getDirectionality(codePoint);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT && codePoint != 0x200F
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC && codePoint != 0x061C;
  }
}
