package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;

/**
 * Pressure of a strip load, parallel to a rigid wall, doubled for the wall that does not yield.
 *
 * <p>Formula: sh = (2 q/pi)(b - sin b cos 2a). Thrust P = (2 q/pi) H (t2 - t1), ti = atan(xi/H).
 * Moment about the top M = (2 q/pi)(m(x2) - m(x1)), m(x) = H^2/2 atan(x/H) - x/2 (H - x atan(H/x)).
 *
 * <p>Symbols: q pressure on the strip [kPa]; b angle between the lines to its edges, a angle from
 * the vertical to the line that halves b, both at the point on the wall [radians]; x1, x2 distances
 * of the edges from the wall [m]; H wall height [m]; sh [kPa]. Assumptions: elastic half-space,
 * image load behind a rigid wall, endless strip at the ground surface. Valid range: any depth from
 * 0; strip behind the wall. Accuracy: exact under the assumptions; the doubled form is on the safe
 * side for a wall that yields. Source: Caltrans, Trenching and Shoring Manual (June 2011, revision
 * 2, July 2025), 5-1-2; basis: cited, secondary digest; thrust and moment derived by integration.
 *
 * @param pressureKilopascals pressure q on the strip
 * @param nearMetres distance x1 of the near edge from the wall
 * @param farMetres distance x2 of the far edge from the wall
 */
public record StripSurcharge(double pressureKilopascals, double nearMetres, double farMetres) {

  public StripSurcharge {
    Require.notNegative(pressureKilopascals, "strip pressure", "kPa");
    Require.notNegative(nearMetres, "distance of the near edge", "m");
    Require.positive(farMetres, "distance of the far edge", "m");
    if (farMetres <= nearMetres) {
      throw new IllegalArgumentException(
          "the far edge at "
              + farMetres
              + " m is not beyond the near edge at "
              + nearMetres
              + " m");
    }
  }

  /**
   * Horizontal pressure on the wall at a depth below the strip [kPa]; 0 at depth 0 unless the strip
   * touches the wall.
   */
  public double atDepthKilopascals(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    double near = Math.atan2(nearMetres, depthMetres);
    double far = Math.atan2(farMetres, depthMetres);
    double opening = far - near;
    double pressure =
        2 * pressureKilopascals / Math.PI * (opening - Math.sin(opening) * Math.cos(near + far));
    return Math.max(0, pressure);
  }

  /** Thrust on a wall whose top is level with the strip. */
  public Resultant thrust(double wallHeightMetres) {
    Require.positive(wallHeightMetres, "wall height", "m");
    double scale = 2 * pressureKilopascals / Math.PI;
    double force =
        scale
            * wallHeightMetres
            * (Math.atan2(farMetres, wallHeightMetres) - Math.atan2(nearMetres, wallHeightMetres));
    double moment =
        scale * (moment(farMetres, wallHeightMetres) - moment(nearMetres, wallHeightMetres));
    return Resultant.fromTop(Math.max(0, force), moment, wallHeightMetres);
  }

  private static double moment(double x, double height) {
    return height * height / 2 * Math.atan2(x, height)
        - x / 2 * (height - x * Math.atan2(height, x));
  }
}
