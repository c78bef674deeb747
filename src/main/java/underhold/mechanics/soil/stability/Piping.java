package underhold.mechanics.soil.stability;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SafetyFactor;
import underhold.mechanics.soil.Water;

/**
 * Upward seepage at the base of a cut in sand.
 *
 * <p>Formula: critical gradient ic = (Gs - 1)/(1 + e) = g'/gw; exit gradient i = h/l; factor ic/i.
 * Symbols: Gs specific gravity of the grains, e void ratio, g' buoyant unit weight [kN/m3], gw of
 * water, h head difference [m], l seepage path [m]. Assumptions: uniform soil, mean gradient along
 * the path. Valid range: cohesionless soil. Accuracy: rough; the true exit gradient beside an edge
 * is above the mean. A pit without an embedded wall has a short path: treat any inflow in silt or
 * sand as a stop (judgement). Source: definition, common to soil mechanics texts; required factor
 * 1.5 to 2; basis: from memory, verify.
 */
public final class Piping {

  private Piping() {}

  /** Critical gradient from grains and voids, dimensionless. */
  public static double criticalGradient(double specificGravity, double voidRatio) {
    Require.between(specificGravity, 1, 10, "specific gravity", "");
    Require.notNegative(voidRatio, "void ratio", "");
    return (specificGravity - 1) / (1 + voidRatio);
  }

  /** Critical gradient from a buoyant unit weight, dimensionless. */
  public static double criticalGradient(double buoyantKilonewtonsPerCubicMetre) {
    return Require.notNegative(buoyantKilonewtonsPerCubicMetre, "buoyant unit weight", "kN/m3")
        / Water.KILONEWTONS_PER_CUBIC_METRE;
  }

  /** Mean exit gradient, dimensionless. */
  public static double exitGradient(double headMetres, double pathMetres) {
    Require.notNegative(headMetres, "head difference", "m");
    return headMetres / Require.positive(pathMetres, "seepage path", "m");
  }

  /** Critical gradient against exit gradient. */
  public static SafetyFactor factor(double criticalGradient, double exitGradient) {
    return new SafetyFactor(criticalGradient, exitGradient);
  }
}
