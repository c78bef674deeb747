package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;

/**
 * Apparent pressure envelope of Peck for braced cuts in sand.
 *
 * <p>Formula: p = 0.65 g H Ka, uniform over the height. Symbols: g unit weight [kN/m3], H depth of
 * the cut [m], Ka of Rankine, p [kPa]. Assumptions: dry or drained sand, braced as it is dug. Valid
 * range: cuts of about 6 m and deeper (from memory, verify). Accuracy: an envelope of measured
 * strut loads, not a pressure. Source: R. B. Peck, 1969, as used by B. M. Das, Principles of
 * Foundation Engineering; basis: cited, secondary.
 */
public final class PeckSandEnvelope {

  /** Share of the pressure at the foot that is taken as uniform, dimensionless; Peck 1969. */
  private static final double SHARE = 0.65;

  private PeckSandEnvelope() {}

  /** Uniform apparent pressure [kPa]. */
  public static double kilopascals(
      double unitWeightKilonewtonsPerCubicMetre, double depthMetres, double frictionAngleDegrees) {
    Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
    Require.positive(depthMetres, "depth of the cut", "m");
    return SHARE
        * unitWeightKilonewtonsPerCubicMetre
        * depthMetres
        * RankinePressure.activeCoefficient(frictionAngleDegrees);
  }
}
