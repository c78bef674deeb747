package underhold.quantity;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A unit in which a {@link Measure} may be typed and printed.
 *
 * @param symbol the canonical symbol, "ft"; empty for a plain number
 * @param name the unit in words, plural, for help texts: "feet"
 * @param measure what it measures
 * @param insideUnitsPerUnit how many of the measure's inside units make one of this unit, above 0
 * @param system the system it belongs to; empty when it belongs to both
 */
public record MeasureUnit(
    String symbol,
    String name,
    Measure measure,
    BigDecimal insideUnitsPerUnit,
    Optional<UnitSystem> system) {

  /** Refuses a factor that is not positive and a unit without a name. */
  public MeasureUnit {
    if (insideUnitsPerUnit.signum() <= 0) {
      throw new IllegalArgumentException(symbol + ": the factor must be above 0");
    }
    if (name.isBlank()) {
      throw new IllegalArgumentException(symbol + ": the unit needs a name");
    }
  }

  /**
   * Turns a number of this unit into the measure's inside unit, rounded once.
   *
   * @throws IllegalArgumentException if the value or the result is not finite
   */
  public double toInside(double value) {
    return finite(toInside(decimal(value)));
  }

  /**
   * Turns a value in the measure's inside unit into a number of this unit, rounded once.
   *
   * @throws IllegalArgumentException if the value or the result is not finite
   */
  public double fromInside(double si) {
    return finite(decimalFromInside(si).doubleValue());
  }

  /** As {@link #toInside(double)}; infinite where the result is too large for a double. */
  double toInside(BigDecimal value) {
    return value.multiply(insideUnitsPerUnit).doubleValue();
  }

  /** As {@link #fromInside(double)}, before rounding to a double. */
  BigDecimal decimalFromInside(double si) {
    return insideUnitsPerUnit.compareTo(BigDecimal.ONE) == 0
        ? decimal(si)
        : decimal(si).divide(insideUnitsPerUnit, Factors.PRECISION);
  }

  private BigDecimal decimal(double value) {
    return BigDecimal.valueOf(finite(value));
  }

  private double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(measure.phrase() + " must be finite, not " + value);
    }
    return value;
  }
}
