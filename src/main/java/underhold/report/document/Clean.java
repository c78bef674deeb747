package underhold.report.document;

/**
 * Words from outside made fit for any format. Line ends and tabs become blanks; control characters,
 * signs that turn the direction of writing, halves of characters and what no text may hold become
 * the replacement sign. Nothing else is changed.
 */
final class Clean {
  private static final int REPLACEMENT = 0xFFFD;

  private Clean() {}

  static String words(String text) {
    if (text.codePoints().noneMatch(Clean::isUnfit)) {
      return text;
    }
    StringBuilder clean = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .codePoints()
        .map(point -> isBreak(point) ? ' ' : isUnfit(point) ? REPLACEMENT : point)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  private static boolean isBreak(int point) {
    return point == '\n'
        || point == '\r'
        || point == '\t'
        || point == 0x85
        || point == 0x2028
        || point == 0x2029;
  }

  private static boolean isUnfit(int point) {
    return Character.isISOControl(point)
        || Character.getType(point) == Character.SURROGATE
        || (point & 0xFFFE) == 0xFFFE
        || (point >= 0xFDD0 && point <= 0xFDEF)
        || turns(point);
  }

  /** Marks, embeddings, overrides and isolates of direction, and the paragraph signs. */
  private static boolean turns(int point) {
    return point == 0x061C
        || point == 0x200E
        || point == 0x200F
        || (point >= 0x2028 && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069)
        || point == 0xFEFF;
  }
}
