package underhold.mechanics.soil.stress;

import underhold.mechanics.soil.Require;

/**
 * Stress in an elastic half-space below a uniformly loaded endless strip.
 *
 * <p>Formula, t1 and t2 the angles from the vertical at the point to the two edges: sz = (q/pi)(t2
 * - t1 + sin(t2 - t1) cos(t1 + t2)); sx = (q/pi)(t2 - t1 - sin(t2 - t1) cos(t1 + t2)); t = (q/pi)
 * sin(t2 - t1) sin(t1 + t2).
 *
 * <p>Symbols: q pressure, sz, sx, t stresses [kPa]; x, z position [m]. Assumptions: elastic,
 * isotropic, uniform half-space; plane strain; load at the surface. Valid range: z above 0.
 * Accuracy: exact under the assumptions. Source: elastic theory after Boussinesq, as in the soil
 * mechanics textbooks; basis: from memory, verify; reproduces a published value.
 *
 * @param verticalKilopascals vertical stress increase
 * @param horizontalKilopascals horizontal stress increase across the strip
 * @param shearKilopascals shear stress, positive on the side of growing x
 */
public record StripStress(
    double verticalKilopascals, double horizontalKilopascals, double shearKilopascals) {

  /**
   * Stress at a point.
   *
   * @param pressureKilopascals pressure on the strip
   * @param widthMetres width of the strip
   * @param offsetMetres horizontal distance of the point from the centre line, either side
   * @param depthMetres depth of the point
   */
  public static StripStress at(
      double pressureKilopascals, double widthMetres, double offsetMetres, double depthMetres) {
    Require.notNegative(pressureKilopascals, "strip pressure", "kPa");
    Require.positive(widthMetres, "strip width", "m");
    Require.finite(offsetMetres, "offset", "m");
    Require.positive(depthMetres, "depth", "m");
    double near = Math.atan2(offsetMetres - widthMetres / 2, depthMetres);
    double far = Math.atan2(offsetMetres + widthMetres / 2, depthMetres);
    double scale = pressureKilopascals / Math.PI;
    double opening = far - near;
    double swing = Math.sin(opening) * Math.cos(near + far);
    return new StripStress(
        scale * (opening + swing),
        scale * (opening - swing),
        scale * Math.sin(opening) * Math.sin(near + far));
  }
}
