package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;

/**
 * Pressure of a point load behind a rigid wall.
 *
 * <p>Formula, m = x/H, n = z/H: m up to 0.4: sh = 0.28 (Q/H^2) n^2/(0.16 + n^2)^3; above: sh = 1.77
 * (Q/H^2) m^2 n^2/(m^2 + n^2)^3; at a place offset along the wall times cos^2(1.1 t).
 *
 * <p>Symbols: Q load [kN], x distance from the wall [m], z depth [m], H wall height [m], t angle in
 * plan between the line from the load square to the wall and the line to the place [degrees], sh
 * [kPa]. Assumptions: elastic half-space, rigid wall (doubled), load at the level of the wall top.
 * Valid range: z from 0 to H; 1.1 t up to 90 degrees, beyond that 0. Accuracy: fitted to tests.
 * Source: Caltrans, Trenching and Shoring Manual (June 2011, revision 2, July 2025), 5-1-5 to
 * 5-1-7; basis: cited, secondary digest; thrust derived.
 *
 * @param loadKilonewtons point load Q
 * @param distanceMetres distance x from the wall
 */
public record PointSurcharge(double loadKilonewtons, double distanceMetres) {

  public PointSurcharge {
    Require.notNegative(loadKilonewtons, "point load", "kN");
    Require.notNegative(distanceMetres, "distance from the wall", "m");
  }

  /** Horizontal pressure straight in front of the load [kPa]. */
  public double atDepthKilopascals(double depthMetres, double wallHeightMetres) {
    Require.positive(wallHeightMetres, "wall height", "m");
    Require.between(depthMetres, 0, wallHeightMetres, "depth", "m");
    double n = depthMetres / wallHeightMetres;
    double a = LineSurcharge.ratio(distanceMetres, wallHeightMetres);
    double below = a * a + n * n;
    return scale(wallHeightMetres) * n * n / (below * below * below);
  }

  /** Horizontal pressure at a place offset along the wall by an angle seen from the load [kPa]. */
  public double atDepthKilopascals(
      double depthMetres, double wallHeightMetres, double offsetDegrees) {
    Require.between(offsetDegrees, 0, 90, "angle along the wall", "degrees");
    double cosine = Math.max(0, Math.cos(Math.toRadians(1.1 * offsetDegrees)));
    return atDepthKilopascals(depthMetres, wallHeightMetres) * cosine * cosine;
  }

  /**
   * Thrust per metre straight in front of the load: the peak, to be used only over the width that
   * it acts on.
   */
  public Resultant peakThrust(double wallHeightMetres) {
    Require.positive(wallHeightMetres, "wall height", "m");
    double a = LineSurcharge.ratio(distanceMetres, wallHeightMetres);
    double square = a * a;
    double sum = square + 1;
    double unit = // integral of n^2/(a^2 + n^2)^3 from 0 to 1
        (1 - square) / (8 * square * sum * sum) + Math.atan2(1, a) / (8 * square * a);
    double unitMoment = 1 / (4 * square * sum * sum); // of n^3/(a^2 + n^2)^3
    double scale = scale(wallHeightMetres) * wallHeightMetres;
    return Resultant.fromTop(
        Math.max(0, scale * unit), scale * unitMoment * wallHeightMetres, wallHeightMetres);
  }

  private double scale(double height) {
    double m = distanceMetres / height;
    double numerator = m <= LineSurcharge.NEAR_RATIO ? 0.28 : 1.77 * m * m;
    return numerator * loadKilonewtons / (height * height);
  }
}
