package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;

/**
 * Pressure of a line load parallel to a rigid wall.
 *
 * <p>Formula, m = x/H, n = z/H: m up to 0.4: sh = (Q/H) 0.2 n/(0.16 + n^2)^2; above: sh = (1.28
 * Q/H) m^2 n/(m^2 + n^2)^2. Thrust: 0.539 Q for m up to 0.4, 0.64 Q/(m^2 + 1) above.
 *
 * <p>Symbols: Q load [kN/m], x distance from the wall [m], z depth [m], H wall height [m], sh
 * [kPa]. Assumptions: elastic half-space, rigid wall (doubled), load at the level of the wall top.
 * Valid range: z from 0 to H. Accuracy: exact integrals of the formulas; the design chart prints
 * 0.55 Q for m up to 0.4, rounded from 0.539. Source: Caltrans, Trenching and Shoring Manual (June
 * 2011, revision 2, July 2025), 5-1-3 and 5-1-4; basis: cited, secondary digest; thrust derived.
 *
 * @param loadKilonewtonsPerMetre line load Q
 * @param distanceMetres distance x from the wall
 */
public record LineSurcharge(double loadKilonewtonsPerMetre, double distanceMetres) {

  /** Distance ratio up to which the near form holds, dimensionless; Caltrans 5-1-3. */
  static final double NEAR_RATIO = 0.4;

  public LineSurcharge {
    Require.notNegative(loadKilonewtonsPerMetre, "line load", "kN/m");
    Require.notNegative(distanceMetres, "distance from the wall", "m");
  }

  /** Horizontal pressure at a depth, not beyond the foot of the wall [kPa]. */
  public double atDepthKilopascals(double depthMetres, double wallHeightMetres) {
    Require.positive(wallHeightMetres, "wall height", "m");
    Require.between(depthMetres, 0, wallHeightMetres, "depth", "m");
    double n = depthMetres / wallHeightMetres;
    double a = ratio(distanceMetres, wallHeightMetres);
    double below = a * a + n * n;
    return scale(wallHeightMetres) * n / (below * below);
  }

  /** Thrust on the wall and its height above the foot. */
  public Resultant thrust(double wallHeightMetres) {
    Require.positive(wallHeightMetres, "wall height", "m");
    double a = ratio(distanceMetres, wallHeightMetres);
    double unit = 1 / (2 * a * a * (a * a + 1)); // integral of n/(a^2 + n^2)^2 from 0 to 1
    double unitMoment = 0.5 * (Math.atan2(1, a) / a - 1 / (a * a + 1)); // of n^2/(a^2 + n^2)^2
    double scale = scale(wallHeightMetres) * wallHeightMetres;
    return Resultant.fromTop(scale * unit, scale * unitMoment * wallHeightMetres, wallHeightMetres);
  }

  private double scale(double height) {
    double m = distanceMetres / height;
    double numerator = m <= NEAR_RATIO ? 0.2 : 1.28 * m * m;
    return numerator * loadKilonewtonsPerMetre / height;
  }

  static double ratio(double distance, double height) {
    return Math.max(distance / height, NEAR_RATIO);
  }
}
