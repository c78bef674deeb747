package underhold.report;

import java.util.regex.Pattern;

/**
 * A text as a cell of a table that a spreadsheet may open: on one line, and never run as a formula.
 */
public final class SafeCell {
  /** Signs by which spreadsheets know a formula, and their wide forms. */
  private static final String BEGIN_FORMULAS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private static final String MADE_TEXT = "'";
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?");

  private SafeCell() {}

  /**
   * The text on one line; one that a spreadsheet would take for a formula begins with an
   * apostrophe. A plain number, also a negative one, stays as it is.
   */
  public static String of(String text) {
    String line = SafeText.of(text).replace('\n', ' ');
    boolean control = !text.isEmpty() && (text.charAt(0) == '\t' || text.charAt(0) == '\r');
    String bare = line.strip();
    boolean formula = !bare.isEmpty() && BEGIN_FORMULAS.indexOf(bare.charAt(0)) >= 0;
    boolean unsafe = control || (formula && !NUMBER.matcher(bare).matches());
    return unsafe ? MADE_TEXT + line : line;
  }
}
