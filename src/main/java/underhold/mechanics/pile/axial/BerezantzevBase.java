package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Net unit base resistance of a bored pile in sand, after Berezantzev.
 *
 * <p>Nq* = 0.21 e^(0.17 phi); qb = q (w Nq* - 1). Symbols: phi [degrees], q effective vertical
 * stress at the base [kPa], w reduction by depth and angle (a chart; 0.83 in the example). Source:
 * B. M. Das, Principles of Foundation Engineering, example 12.2, from a companion to the book
 * (seen).
 */
public final class BerezantzevBase {
  private static final double FACTOR = 0.21;
  private static final double GROWTH = 0.17;

  private BerezantzevBase() {}

  /** Nq*. */
  public static double bearingFactor(double frictionAngleDegrees) {
    return FACTOR * Math.exp(GROWTH * Require.frictionAngle(frictionAngleDegrees));
  }

  /** Net unit base resistance, kPa, not below 0. */
  public static double baseKilopascals(
      double effectiveStressKilopascals, double frictionAngleDegrees, double depthReduction) {
    Require.notNegative(effectiveStressKilopascals, "effective stress", "kPa");
    Require.between(depthReduction, 0, 1, "reduction w", "");
    return effectiveStressKilopascals
        * Math.max(depthReduction * bearingFactor(frictionAngleDegrees) - 1, 0);
  }
}
