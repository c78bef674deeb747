package underhold.site;

import java.util.Locale;
import java.util.stream.Collectors;
import underhold.quantity.Measure;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.RejectionCode;
import underhold.site.SiteProblem.Code;

/** Reads one typed value of one fact. Whatever is typed, nothing is thrown. */
public final class FactReader {
  /** What a user types for a fact that nobody knows. */
  public static final String UNKNOWN = "unknown";

  private static final String SLOPE_EXAMPLE = "type for example 1 in 500";

  private FactReader() {}

  /**
   * Reads a value as typed. Words are taken in any case and with blanks for hyphens; {@code true}
   * and {@code false} stand for {@code yes} and {@code no}.
   */
  public static FactReading read(FactDefinition definition, String typed) {
    String text = typed.strip();
    if (text.equalsIgnoreCase(UNKNOWN)) {
      return new FactReading.NotKnown();
    }
    return switch (definition.kind()) {
      case CHOICE, YES_NO -> word(definition, text);
      case QUANTITY -> quantity(definition, text);
      case SLOPE -> slope(definition, text);
    };
  }

  private static FactReading word(FactDefinition definition, String text) {
    String word = canonical(definition, text);
    if (definition.allowed(word).isPresent()) {
      return new FactReading.Accepted(new FactValue.Choice(word));
    }
    var words = definition.values().stream().map(FactDefinition.Allowed::value).toList();
    return new FactReading.Rejected(
        Code.NOT_ALLOWED_VALUE,
        (text.isEmpty() ? "nothing was typed" : PlainText.quoted(text) + " is not a value")
            + " of "
            + definition.label()
            + "; allowed: "
            + words.stream().collect(Collectors.joining(", "))
            + ", unknown",
        NearestName.question(text, words));
  }

  private static String canonical(FactDefinition definition, String text) {
    if (text.length() > Quantity.LONGEST_TEXT) {
      return "";
    }
    String word = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    if (definition.kind() == FactKind.YES_NO) {
      return switch (word) {
        case "true" -> "yes";
        case "false" -> "no";
        default -> word;
      };
    }
    return word;
  }

  private static FactReading slope(FactDefinition definition, String text) {
    return Slope.parse(text)
        .map(quantity -> inRange(definition, quantity))
        .orElseGet(
            () ->
                new FactReading.Rejected(
                    Code.NOT_A_QUANTITY,
                    (text.isEmpty() ? "nothing was typed" : PlainText.quoted(text) + " is no slope")
                        + "; a slope is needed",
                    SLOPE_EXAMPLE));
  }

  private static FactReading quantity(FactDefinition definition, String text) {
    return Quantity.parse(text, definition.requireRange().measure())
        .fold(parsed -> inRange(definition, parsed.quantity()), rejected -> rejection(rejected));
  }

  private static FactReading rejection(ParsedQuantity.Rejected rejected) {
    return new FactReading.Rejected(
        code(rejected.code()), rejected.message(), rejected.suggestion());
  }

  private static Code code(RejectionCode code) {
    return switch (code) {
      case NO_UNIT -> Code.NO_UNIT;
      case UNKNOWN_UNIT, AMBIGUOUS_UNIT, WRONG_MEASURE -> Code.WRONG_UNIT;
      case EMPTY, TOO_LONG, NO_NUMBER, DECIMAL_COMMA, BAD_NUMBER, NOT_FINITE, TRAILING_TEXT ->
          Code.NOT_A_QUANTITY;
    };
  }

  private static FactReading inRange(FactDefinition definition, Quantity quantity) {
    FactDefinition.Range range = definition.requireRange();
    if (quantity.si() < range.min() || quantity.si() > range.max()) {
      return new FactReading.Rejected(
          Code.OUT_OF_RANGE,
          (definition.label() + " cannot be " + PlainText.shown(quantity.text()))
              + ("; it must lie between " + limits(definition, quantity.unit())),
          "check the number and its unit");
    }
    boolean whole = range.measure() == Measure.COUNT && !LayerFields.isLayerField(definition);
    if (whole && quantity.si() != Math.rint(quantity.si())) {
      return new FactReading.Rejected(
          Code.NOT_ALLOWED_VALUE,
          definition.label() + " must be a whole number, not " + PlainText.shown(quantity.text()),
          "");
    }
    return new FactReading.Accepted(new FactValue.Amount(quantity));
  }

  /** The limits as the dictionary writes them, and in the user's unit where that is another. */
  private static String limits(FactDefinition definition, String unit) {
    FactDefinition.Range range = definition.requireRange();
    String asWritten = range.minText() + " and " + range.maxText();
    if (definition.kind() == FactKind.SLOPE
        || unit.isEmpty()
        || range.maxText().endsWith(" " + unit)) {
      return asWritten;
    }
    return asWritten
        + " ("
        + QuantityPrinter.print(range.min(), range.measure(), unit)
        + " and "
        + QuantityPrinter.print(range.max(), range.measure(), unit)
        + ")";
  }
}
