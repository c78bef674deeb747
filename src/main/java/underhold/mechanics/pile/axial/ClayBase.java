package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Unit base resistance of bored piles in clay: qb = Nc* su.
 *
 * <p>Nc* = 6.5, 8.0, 9.0 at su = 25, 50, 100 kPa and above, linear between (judgement), 6.5 below
 * 25 kPa; where the pile is shorter than three diameters at most 6 (1 + 0.2 L/D). qb is at most
 * 3830 kPa (80 ksf). Symbols: su mean over two diameters below the base [kPa]. Assumptions:
 * undrained, clean base. Source: B. M. Das, Principles of Foundation Engineering, 2016, Table 10.4
 * (seen), example 12.5; the limit of 80 ksf: AASHTO LRFD 10.8.3.5.1c, from memory, verify.
 */
public final class ClayBase {
  /** The usual factor of a deep base in stiff clay. */
  public static final double DEEP_FACTOR = 9;

  /** Largest unit base resistance, kPa (80 ksf). */
  public static final double LARGEST_KILOPASCALS = 3830;

  private static final double SOFT = 25;
  private static final double FIRM = 50;
  private static final double STIFF = 100;
  private static final double SOFT_FACTOR = 6.5;
  private static final double FIRM_FACTOR = 8;
  private static final double SHALLOW_FACTOR = 6;
  private static final double DEPTH_GAIN = 0.2;
  private static final double DEEP_RATIO = 3;

  private ClayBase() {}

  /**
   * Nc*.
   *
   * @param undrainedStrengthKilopascals su
   * @param depthRatio L/D, embedded length over diameter of the base
   */
  public static double factor(double undrainedStrengthKilopascals, double depthRatio) {
    Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa");
    Require.notNegative(depthRatio, "L/D", "");
    double factor = bySoil(undrainedStrengthKilopascals);
    return depthRatio < DEEP_RATIO
        ? Math.min(factor, SHALLOW_FACTOR * (1 + DEPTH_GAIN * depthRatio))
        : factor;
  }

  private static double bySoil(double strength) {
    if (strength <= FIRM) {
      double share = Math.max(strength - SOFT, 0) / (FIRM - SOFT);
      return SOFT_FACTOR + share * (FIRM_FACTOR - SOFT_FACTOR);
    }
    double share = Math.min(strength - FIRM, STIFF - FIRM) / (STIFF - FIRM);
    return FIRM_FACTOR + share * (DEEP_FACTOR - FIRM_FACTOR);
  }

  /** Unit base resistance, kPa, with a given factor and the limit of 80 ksf. */
  public static double baseKilopascals(double factor, double undrainedStrengthKilopascals) {
    Require.between(factor, 0, DEEP_FACTOR, "Nc*", "");
    Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa");
    return Math.min(factor * undrainedStrengthKilopascals, LARGEST_KILOPASCALS);
  }
}
