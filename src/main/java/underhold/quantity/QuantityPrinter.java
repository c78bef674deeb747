package underhold.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Prints quantities the way an engineer writes them: up to four significant figures, a point for
 * decimals, no thousands separator, no trailing zeros, the unit behind a blank. Nothing depends on
 * the machine's locale. Feet are decimal feet. What is printed can be typed in again.
 *
 * <p>Accuracy: rounding half away from zero to four significant figures, so within 0.05 % of the
 * value; a count keeps all its digits. An exponent is used only for a speed below 0.001, for
 * anything else below 0.000001, and from 1e12 upwards.
 */
public final class QuantityPrinter {
  private static final MathContext READING = new MathContext(4, RoundingMode.HALF_UP);

  /** Hides the noise of calculation before rounding: 1.234499999999998 is meant as 1.2345. */
  private static final MathContext NOISE = new MathContext(12, RoundingMode.HALF_UP);

  /** Enough to give a value back within 1e-14 of itself. */
  private static final MathContext FULL = new MathContext(15, RoundingMode.HALF_UP);

  private static final BigDecimal SMALL_SPEED = new BigDecimal("0.001");
  private static final BigDecimal SMALL = new BigDecimal("0.000001");
  private static final BigDecimal LARGE = new BigDecimal("1e12");

  private QuantityPrinter() {}

  /**
   * Prints a value held in the measure's inside unit in the unit named.
   *
   * @throws IllegalArgumentException if the value is not finite or the unit is none of the measure
   */
  public static String print(double si, Measure measure, String unitSymbol) {
    return print(si, measure, unitSymbol, measure == Measure.COUNT ? FULL : READING);
  }

  /** Prints a value in the unit that is usual for the measure in that system. */
  public static String print(double si, Measure measure, UnitSystem system) {
    return print(si, measure, measure.printUnit(system));
  }

  /**
   * Prints a value in the unit for small sizes: mm or in for a length, mm/s or in/s for a speed.
   */
  public static String printFine(double si, Measure measure, UnitSystem system) {
    return print(si, measure, measure.finePrintUnit(system));
  }

  /** Prints a quantity in the unit it was typed in. */
  public static String print(Quantity quantity) {
    return print(quantity.si(), quantity.measure(), quantity.unit());
  }

  /** As {@link #print(double, Measure, String)}, to 15 significant figures, for files. */
  public static String printFull(double si, Measure measure, String unitSymbol) {
    return print(si, measure, unitSymbol, FULL);
  }

  private static String print(double si, Measure measure, String unitSymbol, MathContext figures) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(measure.phrase() + " must be finite, not " + si);
    }
    MeasureUnit unit = measure.requireUnit(unitSymbol);
    BigDecimal exact = unit.decimalFromInside(si);
    BigDecimal calm = figures.equals(READING) ? exact.round(NOISE) : exact;
    BigDecimal value = calm.round(figures).stripTrailingZeros();
    return unit.symbol().isEmpty()
        ? digits(value, measure)
        : digits(value, measure) + " " + unit.symbol();
  }

  private static String digits(BigDecimal value, Measure measure) {
    BigDecimal size = value.abs();
    BigDecimal small = measure == Measure.SPEED ? SMALL_SPEED : SMALL;
    boolean plain =
        value.signum() == 0 || (size.compareTo(small) >= 0 && size.compareTo(LARGE) < 0);
    return plain ? value.toPlainString() : withExponent(value);
  }

  /** The value as 1.2e-5. */
  private static String withExponent(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    return value.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
  }
}
