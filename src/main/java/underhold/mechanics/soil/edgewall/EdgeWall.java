package underhold.mechanics.soil.edgewall;

import java.util.List;
import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.stability.PierAsRetainingWall;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.mechanics.soil.stability.PierAsRetainingWall.LateralForce;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Pier;
import underhold.mechanics.soil.stability.PierAsRetainingWall.VerticalForce;

/**
 * A wall of pits alone, without props, while a share of the structure's load still stands on it and
 * on the soil behind it.
 *
 * <p>Formula: the load on the wall is s V, the vertical stress behind its top q + s p; then {@link
 * PierAsRetainingWall}. Before piles take the load s = 1, when they carry it all s = 0: what
 * pressed the wall down and let it rub is gone, while soil and water push as before. Assumptions:
 * rigid prism, load central, water under the base where it stands above it. Source: statics.
 *
 * @param heightMetres height of the wall
 * @param thicknessMetres thickness
 * @param unitWeightKilonewtonsPerCubicMetre unit weight of its concrete
 * @param structureKilonewtonsPerMetre the structure's load V over the wall
 * @param structureKilopascals the structure's pressure p on the soil behind
 * @param pressure pressure on the back without the structure
 * @param holding friction, adhesion and what else holds the base
 */
public record EdgeWall(
    double heightMetres,
    double thicknessMetres,
    double unitWeightKilonewtonsPerCubicMetre,
    double structureKilonewtonsPerMetre,
    double structureKilopascals,
    BackPressure pressure,
    Holding holding) {

  public EdgeWall {
    Require.positive(heightMetres, "wall height", "m");
    Require.positive(thicknessMetres, "wall thickness", "m");
    Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight of the wall", "kN/m3");
    Require.notNegative(structureKilonewtonsPerMetre, "load of the structure", "kN/m");
    Require.notNegative(structureKilopascals, "pressure of the structure", "kPa");
  }

  /** Pressure on the back while that share of the structure's load stands on the soil. */
  public BackPressure pressureAt(double share) {
    Require.between(share, 0, 1, "share of the load", "");
    return pressure.withSurcharge(pressure.surchargeKilopascals() + share * structureKilopascals);
  }

  /** Weight of the wall [kN per metre]. */
  public double weight() {
    return heightMetres * thicknessMetres * unitWeightKilonewtonsPerCubicMetre;
  }

  /** Uplift of standing water under the base [kN per metre]. */
  public double uplift() {
    return Water.KILONEWTONS_PER_CUBIC_METRE * pressure.headAt(heightMetres) * thicknessMetres;
  }

  /** The wall alone while that share stands on it, 1 before the piles take the load. */
  public Case at(double share) {
    BackPressure back = pressureAt(share);
    double push = back.forceAbove(heightMetres);
    double arm = push > 0 ? back.momentAbove(heightMetres) / push : 0;
    Pier pier =
        new Pier(
            heightMetres,
            thicknessMetres,
            unitWeightKilonewtonsPerCubicMetre,
            new VerticalForce(share * structureKilonewtonsPerMetre, thicknessMetres / 2),
            new VerticalForce(uplift(), thicknessMetres / 2),
            List.of(new LateralForce("soil and water", push, arm)),
            holding);
    return PierAsRetainingWall.check(pier).withBuilding();
  }
}
