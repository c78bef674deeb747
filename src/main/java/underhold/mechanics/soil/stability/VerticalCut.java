package underhold.mechanics.soil.stability;

import underhold.mechanics.soil.Require;

/**
 * Height to which a vertical face in clay stands for a short time.
 *
 * <p>Formula: Hc = 4 c/g, with a tension crack 2.67 c/g; a surcharge takes q/g off, down to 0.
 * Symbols: c undrained strength [kPa], g [kN/m3], q surcharge [kPa], Hc [m]. Assumptions: uniform
 * intact clay, undrained, dry crack. Valid range: clay only; dry sand has none. Accuracy: an upper
 * estimate at failure, without any factor; fissures, time and vibration lower it. Source: K.
 * Terzaghi, Theoretical Soil Mechanics, 1943; basis: from memory, verify.
 */
public final class VerticalCut {

  /** Stability factor of an intact face, dimensionless; from memory, verify. */
  private static final double INTACT = 4;

  /** Stability factor of a face with a tension crack, dimensionless; from memory, verify. */
  private static final double CRACKED = 2.67;

  private VerticalCut() {}

  /** Critical height of an intact face [m]. */
  public static double criticalHeightMetres(
      double undrainedStrengthKilopascals,
      double unitWeightKilonewtonsPerCubicMetre,
      double surchargeKilopascals) {
    return height(
        INTACT,
        undrainedStrengthKilopascals,
        unitWeightKilonewtonsPerCubicMetre,
        surchargeKilopascals);
  }

  /** Critical height of a face with a tension crack [m]. */
  public static double crackedCriticalHeightMetres(
      double undrainedStrengthKilopascals,
      double unitWeightKilonewtonsPerCubicMetre,
      double surchargeKilopascals) {
    return height(
        CRACKED,
        undrainedStrengthKilopascals,
        unitWeightKilonewtonsPerCubicMetre,
        surchargeKilopascals);
  }

  private static double height(double factor, double strength, double weight, double surcharge) {
    Require.notNegative(strength, "undrained strength", "kPa");
    Require.positive(weight, "unit weight", "kN/m3");
    Require.notNegative(surcharge, "surcharge", "kPa");
    return Math.max(0, (factor * strength - surcharge) / weight);
  }
}
