package underhold.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A quantity as it was typed and as the program holds it.
 *
 * @param si the value in {@link Measure#insideUnit()}, finite, never -0
 * @param measure what kind of quantity it is
 * @param unit the canonical symbol of the unit typed; empty for a plain number
 * @param text the quantity exactly as typed, without blanks around it
 */
public record Quantity(double si, Measure measure, String unit, String text) {
  /** The longest text that is read as a quantity. */
  public static final int LONGEST_TEXT = 100;

  /**
   * Refuses what no typed text could have given.
   *
   * @throws IllegalArgumentException if the value is not finite, the unit is none of the measure,
   *     or the text is blank or too long
   */
  public Quantity {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(measure.phrase() + " must be finite, not " + si);
    }
    si = si + 0.0; // turns -0 into 0
    unit = measure.requireUnit(unit).symbol();
    text = text.strip();
    if (text.isEmpty() || text.length() > LONGEST_TEXT) {
      throw new IllegalArgumentException(
          "the text must have 1 to " + LONGEST_TEXT + " characters, not " + text.length());
    }
  }

  // Written out because trials compare quantities millions of times.
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || other instanceof Quantity quantity
            && Double.compare(si, quantity.si) == 0
            && measure == quantity.measure
            && unit.equals(quantity.unit)
            && text.equals(quantity.text);
  }

  @Override
  public int hashCode() {
    return Double.hashCode(si) * 31 + text.hashCode();
  }

  /**
   * A quantity that nobody typed, with a printed text. The text is rounded for reading ({@link
   * QuantityPrinter#print}), {@code si} is not: to write the value to a file without loss use
   * {@link QuantityPrinter#printFull}.
   *
   * @throws IllegalArgumentException if the value is not finite or the unit is none of the measure
   */
  public static Quantity of(double si, Measure measure, String unit) {
    return new Quantity(si, measure, unit, QuantityPrinter.print(si, measure, unit));
  }

  /** Reads a text as a quantity of the measure asked for; never throws on any text. */
  public static ParsedQuantity parse(String text, Measure measure) {
    return new QuantityParser(text, measure).parse();
  }

  /**
   * The number in another unit of the same measure.
   *
   * @throws IllegalArgumentException if the unit is none of the measure
   */
  public double in(String otherUnit) {
    return measure.requireUnit(otherUnit).fromInside(si);
  }
}
