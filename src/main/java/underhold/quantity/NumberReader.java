package underhold.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the number at the head of a text whose signs are plain. */
final class NumberReader {
  /** Digits of a number in one of its forms, without sign or exponent: 12, 1,200.5, .5. */
  private static final String DIGITS = "\\d+(?:,\\d+)*(?:\\.\\d*)?|\\.\\d+";

  /** 3/8, 1 3/8, 1-3/8, without sign. */
  private static final String FRACTION = "(?:\\d{1,9}[ -]\\s*)?\\d{1,9}/\\d{1,9}";

  /** Most digits of an exponent; more cannot be held in a double in any case. */
  private static final int EXPONENT_DIGITS = 4;

  private static final Pattern HEAD =
      Pattern.compile(
          "([+-]?)\\s*(?:(" + FRACTION + ")|(" + DIGITS + ")(?:[eE]([+-]?\\d+))?)", Pattern.DOTALL);
  private static final Pattern NOT_A_NUMBER =
      Pattern.compile("[+-]?\\s*(?:nan|inf|infinity|∞)(?![a-z]).*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final Pattern COMMA_AND_DIGITS = Pattern.compile(",\\s*\\d.*", Pattern.DOTALL);
  private static final Pattern GROUPED = Pattern.compile("[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d*)?");
  private static final Pattern MORE_DIGITS =
      Pattern.compile("(?:[-+./:x×*–—'~]|to)?\\s*\\d.*", Pattern.DOTALL);

  private NumberReader() {}

  /** Reads the number at the head of the text. */
  static NumberText read(String text) {
    Matcher head = HEAD.matcher(text);
    if (!head.lookingAt()) {
      boolean notFinite = NOT_A_NUMBER.matcher(text).matches();
      return new NumberText.Unreadable(
          notFinite ? RejectionCode.NOT_FINITE : RejectionCode.NO_NUMBER);
    }
    String rest = text.substring(head.end());
    if (COMMA_AND_DIGITS.matcher(rest).matches()) {
      return new NumberText.Unreadable(RejectionCode.DECIMAL_COMMA);
    }
    boolean feetMark = rest.startsWith("'");
    if (!feetMark && MORE_DIGITS.matcher(rest.strip()).matches()) {
      return new NumberText.Unreadable(RejectionCode.BAD_NUMBER);
    }
    NumberText magnitude =
        head.group(2) != null
            ? fraction(head.group(2))
            : decimal(head.group(3), head.group(4) == null ? "" : head.group(4));
    if (magnitude instanceof NumberText.Read read) {
      BigDecimal value = head.group(1).equals("-") ? read.value().negate() : read.value();
      return new NumberText.Read(value, SPACE.matcher(head.group()).replaceAll(" "), rest.strip());
    }
    return magnitude;
  }

  private static NumberText decimal(String digits, String exponent) {
    if (digits.contains(",") && !GROUPED.matcher(digits).matches()) {
      boolean oneComma = digits.indexOf(',') == digits.lastIndexOf(',');
      return new NumberText.Unreadable(
          oneComma ? RejectionCode.DECIMAL_COMMA : RejectionCode.BAD_NUMBER);
    }
    if (exponent.length() > EXPONENT_DIGITS) {
      return new NumberText.Unreadable(RejectionCode.NOT_FINITE);
    }
    String number = digits.replace(",", "") + (exponent.isEmpty() ? "" : "e" + exponent);
    return new NumberText.Read(new BigDecimal(number), digits, "");
  }

  private static NumberText fraction(String text) {
    int slash = text.indexOf('/');
    String before = text.substring(0, slash).replace('-', ' ');
    int gap = before.lastIndexOf(' ');
    BigDecimal whole = gap < 0 ? BigDecimal.ZERO : new BigDecimal(before.substring(0, gap).strip());
    BigDecimal numerator = new BigDecimal(before.substring(gap + 1));
    BigDecimal denominator = new BigDecimal(text.substring(slash + 1));
    if (denominator.signum() == 0) {
      return new NumberText.Unreadable(RejectionCode.NOT_FINITE);
    }
    if (gap >= 0 && numerator.compareTo(denominator) >= 0) {
      return new NumberText.Unreadable(RejectionCode.BAD_NUMBER);
    }
    return new NumberText.Read(
        whole.add(numerator.divide(denominator, Factors.PRECISION)), text, "");
  }
}
