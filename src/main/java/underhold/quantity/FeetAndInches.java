package underhold.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads feet with inches: 4' 6", 4'-6", 4 ft 6 in, 4'-6 1/2". The feet are whole and the inches
 * from 0 to below 12, otherwise one of the two is likely a slip of the hand.
 */
final class FeetAndInches {
  private static final BigDecimal INCHES_PER_FOOT = new BigDecimal("12");

  private static final Pattern FORM =
      Pattern.compile(
          "([+-]?)\\s*(\\d+(?:[.,]\\d+)*)\\s*(?:'|ft\\.?|foot|feet)\\s*-?\\s*"
              + "(\\d[^a-z\"]*)(?:\"|in\\.?|ins|inch|inches)",
          Pattern.CASE_INSENSITIVE);

  private FeetAndInches() {}

  /** The length in feet; empty when the text does not have that form at all. */
  static Optional<NumberText> read(String plainText) {
    Matcher form = FORM.matcher(plainText);
    if (!form.matches()) {
      return Optional.empty();
    }
    NumberText feet = NumberReader.read(form.group(2));
    NumberText inches = NumberReader.read(form.group(3).strip());
    if (!(feet instanceof NumberText.Read wholeFeet)) {
      return Optional.of(feet);
    }
    if (!(inches instanceof NumberText.Read moreInches)) {
      return Optional.of(inches);
    }
    boolean whole = wholeFeet.value().stripTrailingZeros().scale() <= 0;
    boolean below = moreInches.value().compareTo(INCHES_PER_FOOT) < 0;
    if (!whole || !below || !moreInches.rest().isEmpty()) {
      return Optional.of(new NumberText.Unreadable(RejectionCode.BAD_NUMBER));
    }
    BigDecimal value =
        wholeFeet.value().add(moreInches.value().divide(INCHES_PER_FOOT, Factors.PRECISION));
    boolean negative = form.group(1).equals("-");
    return Optional.of(new NumberText.Read(negative ? value.negate() : value, plainText, "ft"));
  }
}
