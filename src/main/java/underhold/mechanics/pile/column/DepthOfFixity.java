package underhold.mechanics.pile.column;

import underhold.mechanics.soil.Require;

/**
 * Depth below the dug level at which a bared pile may be taken as held.
 *
 * <p>Sand: T = (E I/nh)^(1/5), depth 1.8 T. Clay: R = (E I/k)^(1/4), depth 1.4 R. By rule: 1.524 m
 * (5 ft) into stiff, 3.048 m (10 ft) into soft ground. Symbols: E I [kN m2], nh rate of growth of
 * the horizontal modulus [kN/m3], k horizontal modulus [kPa]. Assumptions: pile longer than 4 T or
 * 4 R below the dug level, ground level in front. Sources: M. Davisson, AASHTO LRFD 10.7.3.13.4,
 * from memory, verify; rule: International Building Code 2009, 1810.2.1 (secondary copy).
 */
public final class DepthOfFixity {
  /** Support depth in stiff ground, m (5 ft). */
  public static final double STIFF_METRES = 1.524;

  /** Support depth in soft ground, m (10 ft). */
  public static final double SOFT_METRES = 3.048;

  private static final double SAND_FACTOR = 1.8;
  private static final double CLAY_FACTOR = 1.4;

  private DepthOfFixity() {}

  /** T, m. */
  public static double relativeStiffnessSandMetres(
      double bendingStiffness, double growthKilonewtonsPerCubicMetre) {
    return Math.pow(
        Require.positive(bendingStiffness, "bending stiffness", "kN m2")
            / Require.positive(growthKilonewtonsPerCubicMetre, "nh", "kN/m3"),
        0.2);
  }

  /** 1.8 T, m. */
  public static double sandMetres(double bendingStiffness, double growthKilonewtonsPerCubicMetre) {
    return SAND_FACTOR
        * relativeStiffnessSandMetres(bendingStiffness, growthKilonewtonsPerCubicMetre);
  }

  /** R, m. */
  public static double relativeStiffnessClayMetres(
      double bendingStiffness, double modulusKilopascals) {
    return Math.pow(
        Require.positive(bendingStiffness, "bending stiffness", "kN m2")
            / Require.positive(modulusKilopascals, "horizontal modulus", "kPa"),
        0.25);
  }

  /** 1.4 R, m. */
  public static double clayMetres(double bendingStiffness, double modulusKilopascals) {
    return CLAY_FACTOR * relativeStiffnessClayMetres(bendingStiffness, modulusKilopascals);
  }
}
