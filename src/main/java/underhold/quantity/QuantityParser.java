package underhold.quantity;

import java.util.Optional;

/** Reads one text as a quantity of one measure. */
final class QuantityParser {
  private final String text;
  private final Measure measure;
  private final Rejections rejections;

  QuantityParser(String text, Measure measure) {
    this.text = onOneLine(text);
    this.measure = measure;
    this.rejections = new Rejections(this.text, measure);
  }

  /** As typed, but without what would end a line, or move the cursor, where it is shown. */
  private static String onOneLine(String text) {
    return text.strip().replace('\t', ' ').replace('\u2028', ' ').replace('\u2029', ' ');
  }

  ParsedQuantity parse() {
    if (text.length() > Quantity.LONGEST_TEXT) {
      return rejections.tooLong();
    }
    String plain = Typography.plain(text).strip();
    if (plain.isEmpty()) {
      return rejections.empty();
    }
    if (text.chars().anyMatch(QuantityParser::isControl)) {
      return rejections.unreadable(RejectionCode.BAD_NUMBER);
    }
    NumberText number = FeetAndInches.read(plain).orElseGet(() -> NumberReader.read(plain));
    if (number instanceof NumberText.Unreadable unreadable) {
      return rejections.unreadable(unreadable.code());
    }
    return withUnit((NumberText.Read) number);
  }

  private static boolean isControl(int character) {
    return Character.isISOControl(character);
  }

  private ParsedQuantity withUnit(NumberText.Read number) {
    String typed = number.rest();
    if (typed.isEmpty()) {
      return measure
          .unit("")
          .map(unit -> convert(number, unit))
          .orElseGet(() -> rejections.noUnit(number.typed()));
    }
    Optional<MeasureUnit> known = UnitTable.find(typed);
    if (known.isEmpty()) {
      return rejections.unknownUnit(typed);
    }
    MeasureUnit unit = known.get();
    return unit.measure() == measure ? convert(number, unit) : rejections.wrongMeasure(unit);
  }

  private ParsedQuantity convert(NumberText.Read number, MeasureUnit unit) {
    double si = unit.toInside(number.value());
    boolean lost = si == 0 && number.value().signum() != 0;
    if (lost || !Double.isFinite(si)) {
      return rejections.unreadable(RejectionCode.NOT_FINITE);
    }
    return new ParsedQuantity.Parsed(new Quantity(si, measure, unit.symbol(), text));
  }
}
