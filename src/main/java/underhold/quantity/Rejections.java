package underhold.quantity;

import java.util.Optional;
import java.util.stream.Collectors;
import underhold.quantity.ParsedQuantity.Rejected;

/** The words in which a text is refused: what was typed, what is accepted, what to type instead. */
final class Rejections {
  private final String text;
  private final Measure measure;

  Rejections(String text, Measure measure) {
    this.text = text;
    this.measure = measure;
  }

  Rejected empty() {
    return reject(RejectionCode.EMPTY, "nothing was typed; " + needed(), example());
  }

  Rejected tooLong() {
    return reject(
        RejectionCode.TOO_LONG,
        quoted()
            + (" has " + text.length() + " characters, more than " + Quantity.LONGEST_TEXT)
            + ("; " + needed()),
        example());
  }

  Rejected noUnit(String number) {
    String us = measure.printUnit(UnitSystem.US);
    String si = measure.printUnit(UnitSystem.SI);
    String first = number + " " + us;
    return reject(
        RejectionCode.NO_UNIT,
        number + " has no unit; " + needed(),
        "type " + (us.equals(si) ? first : first + " or " + number + " " + si));
  }

  Rejected unreadable(RejectionCode code) {
    return switch (code) {
      case DECIMAL_COMMA ->
          reject(
              code,
              quoted()
                  + " may be read in two ways: a comma groups thousands (1,200) and a point marks"
                  + " decimals (1.2)",
              withPoint().map(point -> "for a decimal type " + point).orElse(example()));
      case BAD_NUMBER ->
          reject(
              code,
              quoted()
                  + " is not one number and one unit; forms such as 1200, 1,200, 1.2e-5,"
                  + " 1 1/2 and 4' 6\" are read, ranges are not",
              example());
      case NOT_FINITE ->
          reject(
              code,
              quoted() + " is not finite, or too large or too small to work with; " + needed(),
              example());
      default ->
          reject(
              code,
              quoted() + " does not begin with a number in the digits 0 to 9; " + needed(),
              example());
    };
  }

  Rejected wrongMeasure(MeasureUnit unit) {
    return reject(
        RejectionCode.WRONG_MEASURE,
        quoted() + " is " + unit.measure().phrase() + "; " + needed(),
        example());
  }

  Rejected unknownUnit(String typed) {
    Optional<String> confusing = UnitSuggestions.ambiguous(typed);
    if (confusing.isPresent()) {
      return reject(RejectionCode.AMBIGUOUS_UNIT, confusing.get() + "; " + needed(), example());
    }
    Optional<String> trailing = UnitSuggestions.trailingText(typed, measure);
    if (trailing.isPresent()) {
      return reject(
          RejectionCode.TRAILING_TEXT,
          quoted() + " goes on after the unit: " + Typography.quoted(trailing.get()),
          "type one number and its unit alone, for example " + measure.example() + feetAndInches());
    }
    return reject(
        RejectionCode.UNKNOWN_UNIT,
        Typography.quoted(typed) + " is not a unit known here; " + needed(),
        UnitSuggestions.nearest(typed, measure)
            .map(near -> "did you mean " + near + "?")
            .orElse(example()));
  }

  private Rejected reject(RejectionCode code, String message, String suggestion) {
    return new Rejected(code, message, suggestion);
  }

  private String feetAndInches() {
    return measure == Measure.LENGTH ? ", or feet and inches as 4' 6\"" : "";
  }

  private Optional<String> withPoint() {
    boolean simple = text.indexOf(',') == text.lastIndexOf(',') && text.indexOf('.') < 0;
    return simple && text.length() <= 20
        ? Optional.of(text.replace(',', '.')).filter(point -> isQuantity(point))
        : Optional.empty();
  }

  private boolean isQuantity(String candidate) {
    return new QuantityParser(candidate, measure).parse().toOptional().isPresent();
  }

  /** "a length is needed: m, mm, cm, ft, in". */
  private String needed() {
    String symbols =
        measure.units().stream()
            .map(MeasureUnit::symbol)
            .filter(symbol -> !symbol.isEmpty())
            .collect(Collectors.joining(", "));
    if (measure.needsUnit()) {
      return measure.phrase() + " is needed: " + symbols;
    }
    return measure.phrase()
        + " is needed: a number without a unit"
        + (symbols.isEmpty() ? "" : " or with " + symbols);
  }

  private String example() {
    return "type for example " + measure.example();
  }

  private String quoted() {
    return Typography.quoted(text);
  }
}
