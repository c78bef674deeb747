package underhold.mechanics.soil;

import java.util.OptionalDouble;

/**
 * Resistance over demand, kept as its two parts so that a zero demand never becomes an infinite
 * factor.
 *
 * @param resistance what resists, in any unit
 * @param demand what drives, in the same unit, not negative
 */
public record SafetyFactor(double resistance, double demand) {

  /** Below this the demand counts as none and no factor is stated (judgement). */
  private static final double NO_DEMAND = 1e-12;

  public SafetyFactor {
    // Products of accepted inputs may pass the limit for a single input, so only NaN and infinity
    // are refused here.
    if (!Double.isFinite(resistance) || !Double.isFinite(demand) || demand < 0) {
      throw new IllegalArgumentException(
          "a safety factor needs finite parts and a demand of 0 or above, got "
              + resistance
              + " / "
              + demand);
    }
  }

  /** The factor; empty when there is nothing to resist. */
  public OptionalDouble value() {
    double factor = demand > NO_DEMAND ? resistance / demand : Double.NaN;
    return Double.isFinite(factor) ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  /**
   * Whether the resistance is at least {@code required} times the demand; true when there is no
   * demand.
   */
  public boolean isAtLeast(double required) {
    return resistance >= required * demand;
  }
}
