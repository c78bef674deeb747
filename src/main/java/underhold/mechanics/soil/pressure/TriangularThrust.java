package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.Water;

/**
 * Thrust of a pressure that grows from zero with depth, of soil weight or of water, and of a
 * uniform surcharge.
 *
 * <p>Formula: soil P = K g H^2/2 at H/3; water P = gw h^2/2 at h/3; uniform surcharge p = K q, P =
 * K q H at H/2. Symbols: K coefficient (active or at rest), g unit weight [kN/m3], H wall height
 * [m], h water height above the foot [m], q surcharge [kPa]. Assumptions: level ground, hydrostatic
 * water. Accuracy: exact under the assumptions. Groundwater is a pressure on the wall, not a
 * surcharge, and K does not apply to it. Source: Caltrans, Trenching and Shoring Manual (June 2011,
 * revision 2, July 2025), 5-1 and 5-1-1; basis: cited, secondary digest.
 */
public final class TriangularThrust {

  private TriangularThrust() {}

  /** Thrust of soil weight on a wall. */
  public static Resultant soil(
      double coefficient, double unitWeightKilonewtonsPerCubicMetre, double heightMetres) {
    Require.notNegative(coefficient, "earth pressure coefficient", "");
    Require.notNegative(unitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
    Require.notNegative(heightMetres, "wall height", "m");
    return new Resultant(
        0.5 * coefficient * unitWeightKilonewtonsPerCubicMetre * heightMetres * heightMetres,
        heightMetres / 3);
  }

  /** Thrust of still water standing to some height above the foot of the wall. */
  public static Resultant water(double waterHeightMetres) {
    return soil(1, Water.KILONEWTONS_PER_CUBIC_METRE, waterHeightMetres);
  }

  /** Pressure of still water at some depth below its surface, 0 above it [kPa]. */
  public static double waterKilopascals(double depthBelowWaterMetres) {
    return Water.KILONEWTONS_PER_CUBIC_METRE
        * Math.max(0, Require.finite(depthBelowWaterMetres, "depth below water", "m"));
  }

  /** Pressure of a uniform surcharge, the same at every depth [kPa]. */
  public static double uniformSurchargeKilopascals(
      double coefficient, double surchargeKilopascals) {
    Require.notNegative(coefficient, "earth pressure coefficient", "");
    Require.notNegative(surchargeKilopascals, "surcharge", "kPa");
    return coefficient * surchargeKilopascals;
  }

  /** Thrust of a uniform surcharge. */
  public static Resultant uniformSurcharge(
      double coefficient, double surchargeKilopascals, double heightMetres) {
    Require.notNegative(heightMetres, "wall height", "m");
    return new Resultant(
        uniformSurchargeKilopascals(coefficient, surchargeKilopascals) * heightMetres,
        heightMetres / 2);
  }
}
