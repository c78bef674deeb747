package underhold.mechanics.soil.edgewall;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.Water;

/**
 * Pressure of soil, surcharge and standing water on the back of a wall.
 *
 * <p>Formula: p(z) = K (q + g z - gw [z - zw]) + gw [z - zw] = a + b z + c [z - zw], with a = K q,
 * b = K g, c = (1 - K) gw and [x] = x where x is above 0, else 0. Force above a depth F(z) = a z +
 * b z^2/2 + c [z - zw]^2/2; its moment about that depth M(z) = a z^2/2 + b z^3/6 + c [z - zw]^3/6.
 *
 * <p>Symbols: z depth below the top of the wall, zw depth of the water, w0 its height above the top
 * [m]; K coefficient of earth pressure; q total vertical stress at the top, no less than gw w0; g
 * total unit weight of the soil, gw of water; u water pressure. Assumptions: one soil, level at the
 * top of the wall, hydrostatic water, K on effective stress, no cohesion. Valid range: K from 0 to
 * 1. Accuracy: exact integrals. Source: UFC 3-220-20 (16 January 2025), 4-2; basis: cited,
 * secondary digest; integrals by statics.
 *
 * @param coefficient K
 * @param unitWeightKilonewtonsPerCubicMetre g
 * @param surchargeKilopascals q, vertical
 * @param waterDepthMetres zw, 0 where water stands above the top; no less than the height of the
 *     wall where there is no water
 * @param waterAboveTopMetres w0, 0 where water stands below the top
 */
public record BackPressure(
    double coefficient,
    double unitWeightKilonewtonsPerCubicMetre,
    double surchargeKilopascals,
    double waterDepthMetres,
    double waterAboveTopMetres) {

  public BackPressure {
    Require.between(coefficient, 0, 1, "earth pressure coefficient", "");
    Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
    Require.notNegative(surchargeKilopascals, "surcharge", "kPa");
    Require.notNegative(waterDepthMetres, "depth of the water", "m");
    Require.notNegative(waterAboveTopMetres, "water above the top", "m");
    double pore = Water.KILONEWTONS_PER_CUBIC_METRE * waterAboveTopMetres;
    if (waterAboveTopMetres > 0 && (waterDepthMetres > 0 || surchargeKilopascals < pore)) {
      throw new IllegalArgumentException(
          "water "
              + waterAboveTopMetres
              + " m above the top needs a water depth of 0 and a vertical stress of "
              + pore
              + " kPa or more");
    }
  }

  /** Water at or below the top. */
  public static BackPressure of(
      double coefficient,
      double unitWeightKilonewtonsPerCubicMetre,
      double surchargeKilopascals,
      double waterDepthMetres) {
    return new BackPressure(
        coefficient, unitWeightKilonewtonsPerCubicMetre, surchargeKilopascals, waterDepthMetres, 0);
  }

  /** The same with another vertical stress at the top. */
  public BackPressure withSurcharge(double kilopascals) {
    return new BackPressure(
        coefficient,
        unitWeightKilonewtonsPerCubicMetre,
        kilopascals,
        waterDepthMetres,
        waterAboveTopMetres);
  }

  /** a = K q + c w0 [kPa]. */
  public double atTopKilopascals() {
    return coefficient * surchargeKilopascals + perMetreBelowWater() * waterAboveTopMetres;
  }

  /** b = K g [kPa per metre]. */
  public double perMetre() {
    return coefficient * unitWeightKilonewtonsPerCubicMetre;
  }

  /** c = (1 - K) gw [kPa per metre below the water]. */
  public double perMetreBelowWater() {
    return (1 - coefficient) * Water.KILONEWTONS_PER_CUBIC_METRE;
  }

  /** Water over a depth, 0 where it stands lower [m]. */
  public double headAt(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    return waterAboveTopMetres + wet(depthMetres);
  }

  /** Horizontal pressure p(z) [kPa]. */
  public double atDepthKilopascals(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    return atTopKilopascals() + perMetre() * depthMetres + perMetreBelowWater() * wet(depthMetres);
  }

  /** Force above a depth, F(z) [kN per metre]. */
  public double forceAbove(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    return atTopKilopascals() * depthMetres
        + perMetre() * depthMetres * depthMetres / 2
        + perMetreBelowWater() * Math.pow(wet(depthMetres), 2) / 2;
  }

  /** Moment about a depth of the pressure above it, M(z) [kN m per metre]. */
  public double momentAbove(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    return atTopKilopascals() * depthMetres * depthMetres / 2
        + perMetre() * Math.pow(depthMetres, 3) / 6
        + perMetreBelowWater() * Math.pow(wet(depthMetres), 3) / 6;
  }

  /** Force between two depths [kN per metre]. */
  public double forceBetween(double upperMetres, double lowerMetres) {
    Require.between(lowerMetres, upperMetres, Require.LARGEST, "lower depth", "m");
    return forceAbove(lowerMetres) - forceAbove(upperMetres);
  }

  /** Moment about the lower of two depths of the pressure between them [kN m per metre]. */
  public double momentAboutLower(double upperMetres, double lowerMetres) {
    Require.between(lowerMetres, upperMetres, Require.LARGEST, "lower depth", "m");
    return momentAbove(lowerMetres)
        - momentAbove(upperMetres)
        - forceAbove(upperMetres) * (lowerMetres - upperMetres);
  }

  /**
   * Depth above which the force has a given size, at least 0 [m]: above the water z = 2 F/(a +
   * sqrt(a^2 + 2 b F)), below it the same with a - c zw, b + c and F - c zw^2/2.
   */
  public double depthOfForce(double kilonewtonsPerMetre) {
    double force = Require.notNegative(kilonewtonsPerMetre, "force", "kN/m");
    if (force <= forceAbove(waterDepthMetres)) {
      return root(atTopKilopascals(), perMetre(), force);
    }
    double c = perMetreBelowWater();
    double below = force - c * waterDepthMetres * waterDepthMetres / 2;
    double a = atTopKilopascals() - c * waterDepthMetres;
    double b = perMetre() + c;
    return (Math.sqrt(a * a + 2 * b * below) - a) / b;
  }

  /** Root of a z + b z^2/2 = F, in the form that does not cancel. */
  private static double root(double a, double b, double force) {
    double sum = a + Math.sqrt(a * a + 2 * b * force);
    return sum > 0 ? 2 * force / sum : 0;
  }

  private double wet(double depthMetres) {
    return Math.max(0, depthMetres - waterDepthMetres);
  }
}
