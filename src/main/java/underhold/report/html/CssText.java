package underhold.report.html;

/** Words inside a style sheet. */
final class CssText {
  private CssText() {}

  /**
   * The words as a quoted string of CSS; all but letters, digits and blanks as their number, with
   * the blank that belongs to it.
   */
  static String quoted(String words) {
    StringBuilder out = new StringBuilder("\"");
    words
        .codePoints()
        .forEach(
            each -> {
              boolean plain = each == ' ' || each < 0x7F && Character.isLetterOrDigit(each);
              if (plain) {
                out.appendCodePoint(each);
              } else {
                out.append(String.format("\\%06X ", each));
              }
            });
    return out.append('"').toString();
  }
}
