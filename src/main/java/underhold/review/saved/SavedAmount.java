package underhold.review.saved;

import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;

/**
 * An amount of a sheet.
 *
 * @param text as it was shown
 * @param value in the inside unit
 * @param unit the inside unit; empty for plain numbers
 */
public record SavedAmount(String text, double value, String unit) {
  static SavedAmount of(Amount amount, UnitSystem units) {
    return new SavedAmount(amount.in(units), amount.si(), amount.measure().insideUnit());
  }

  /**
   * Whether another run gave the same: within one part in a thousand million, for the last digits
   * of a sine or a root may differ from one machine to the next.
   */
  public boolean same(SavedAmount other) {
    return unit.equals(other.unit) && same(value, other.value);
  }

  /** Whether two numbers are the same but for the last digits. */
  public static boolean same(double one, double other) {
    return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
  }

  private static final double ROUNDING = 1e-9;
}
