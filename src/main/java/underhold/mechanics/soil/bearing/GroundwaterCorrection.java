package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.Water;

/**
 * Groundwater in a drained bearing calculation: effective overburden at the base and effective unit
 * weight below it.
 *
 * <p>Formula, with water at depth w below the ground surface: overburden s' = g min(w, D) + (gsat -
 * gw) max(D - w, 0); unit weight below: gsat - gw for w up to D; g for w from D + B down; straight
 * line between, (gsat - gw) + (w - D)/B (g - (gsat - gw)).
 *
 * <p>Symbols: D depth of the base [m], B width [m], g moist, gsat saturated unit weight [kN/m3], gw
 * unit weight of water. Assumptions: level water table, no seepage. Valid range: drained analysis
 * only, gsat above gw. Accuracy: the straight line is a convention. Source: when it applies, UFC
 * 3-220-20 (16 January 2025), 5-3.2 (cited, secondary digest); the straight line from memory,
 * verify.
 */
public final class GroundwaterCorrection {

  private GroundwaterCorrection() {}

  /**
   * Unit weights of the ground and the depth to water.
   *
   * @param moistKilonewtonsPerCubicMetre unit weight above the water table
   * @param saturatedKilonewtonsPerCubicMetre unit weight below the water table
   * @param waterDepthMetres depth of the water table below the ground surface
   */
  public record Ground(
      double moistKilonewtonsPerCubicMetre,
      double saturatedKilonewtonsPerCubicMetre,
      double waterDepthMetres) {
    public Ground {
      Require.positive(moistKilonewtonsPerCubicMetre, "moist unit weight", "kN/m3");
      Require.between(
          saturatedKilonewtonsPerCubicMetre,
          Water.KILONEWTONS_PER_CUBIC_METRE,
          Require.LARGEST,
          "saturated unit weight",
          "kN/m3");
      Require.notNegative(waterDepthMetres, "depth to water", "m");
    }

    double buoyant() {
      return saturatedKilonewtonsPerCubicMetre - Water.KILONEWTONS_PER_CUBIC_METRE;
    }
  }

  /**
   * What the bearing equation needs.
   *
   * @param overburdenKilopascals effective vertical stress at the base
   * @param unitWeightBelowKilonewtonsPerCubicMetre effective unit weight below the base
   */
  public record Corrected(
      double overburdenKilopascals, double unitWeightBelowKilonewtonsPerCubicMetre) {}

  /** Corrected overburden and unit weight for a footing. */
  public static Corrected apply(Footing footing, Ground ground) {
    double depth = footing.depthMetres();
    double water = ground.waterDepthMetres();
    double moist = ground.moistKilonewtonsPerCubicMetre();
    double overburden =
        moist * Math.min(water, depth) + ground.buoyant() * Math.max(depth - water, 0);
    double share = Math.min(1, Math.max(0, (water - depth) / footing.widthMetres()));
    return new Corrected(overburden, ground.buoyant() + share * (moist - ground.buoyant()));
  }
}
