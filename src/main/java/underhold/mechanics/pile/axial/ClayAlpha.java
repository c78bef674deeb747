package underhold.mechanics.pile.axial;

import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Adhesion factor of bored piles in clay: unit side resistance fs = alpha su.
 *
 * <p>Symbols: su undrained shear strength [kPa], pa atmospheric pressure [kPa], alpha
 * dimensionless. Assumptions: total stress, dry or cased hole cleaned of softened clay. Accuracy: a
 * regression of load tests; the scatter is wide, which is what the factor of safety is for.
 */
public final class ClayAlpha {
  private static final double PLATEAU = 0.55;
  private static final double FALL_PER_UNIT = 0.1;
  private static final double PLATEAU_END = 1.5;
  private static final double CLAY_END = 2.5;
  private static final double BASE_2018 = 0.30;
  private static final double SLOPE_2018 = 0.17;

  private ClayAlpha() {}

  /**
   * The form of 1999 and 2010: 0.55 while su/pa is at most 1.5, then 0.55 - 0.1 (su/pa - 1.5) to
   * su/pa = 2.5; beyond that the ground is a cohesive intermediate geomaterial and the method does
   * not apply.
   *
   * <p>Source: O'Neill and Reese, FHWA drilled shafts manual, 1999; FHWA GEC 10, 2010, 13.3.5.2;
   * AASHTO LRFD 10.8.3.5.1b; basis: from memory, verify (0.55 itself was seen used in B. M. Das,
   * Principles of Foundation Engineering, example 12.5).
   */
  public static Outcome<Double> oneillReese(double undrainedStrengthKilopascals) {
    double ratio = strengthRatio(undrainedStrengthKilopascals);
    if (ratio > CLAY_END) {
      return Outcome.outOfRange(
          "su/pa is above 2.5: treat the layer as intermediate ground or rock, not as clay");
    }
    return Outcome.of(PLATEAU - FALL_PER_UNIT * Math.max(ratio - PLATEAU_END, 0));
  }

  /**
   * The form of 2018: 0.30 + 0.17/(su/pa), at most 1.0, with su from consolidated-undrained
   * triaxial compression.
   *
   * <p>Source: FHWA GEC 10, FHWA-NHI-18-024, 2018; basis: from memory, verify.
   */
  public static double brown2018(double undrainedStrengthKilopascals) {
    double ratio = strengthRatio(undrainedStrengthKilopascals);
    return ratio > 0 ? Math.min(BASE_2018 + SLOPE_2018 / ratio, 1) : 1;
  }

  /** Unit side resistance alpha su, kPa. */
  public static double sideKilopascals(double alpha, double undrainedStrengthKilopascals) {
    Require.between(alpha, 0, 1, "alpha", "");
    return alpha * Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa");
  }

  private static double strengthRatio(double undrainedStrengthKilopascals) {
    return Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa")
        / Atmosphere.KILOPASCALS;
  }
}
