package underhold.site;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;

/** A slope between points, written {@code 1 in 500} or {@code 1:500}; the value is the ratio. */
final class Slope {
  private static final Pattern FORM =
      Pattern.compile("1 *(?:in|:) *([0-9]{1,6}(?:\\.[0-9]{1,3})?)", Pattern.CASE_INSENSITIVE);

  private Slope() {}

  static Optional<Quantity> parse(String text) {
    if (text.length() > Quantity.LONGEST_TEXT) {
      return Optional.empty();
    }
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double run = Double.parseDouble(matcher.group(1));
    return run > 0
        ? Optional.of(new Quantity(1 / run, Measure.RATIO, "", text.strip()))
        : Optional.empty();
  }
}
