package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * Reduced strength for local shear in loose or soft ground.
 *
 * <p>Formula: c* = 0.67 c', tan f* = 0.67 tan f'. Symbols: c' [kPa], f' [degrees]. Valid range:
 * loose sand, soft clay. Accuracy: rough; the source warns that it may be too low for sand. Source:
 * UFC 3-220-20 (16 January 2025), 5-3.1.3; basis: cited, secondary digest.
 *
 * @param cohesionKilopascals reduced cohesion c*
 * @param frictionAngleDegrees reduced angle f*
 */
public record LocalShear(double cohesionKilopascals, double frictionAngleDegrees) {

  /** Share of the strength that is used, dimensionless; UFC 3-220-20, 5-3.1.3. */
  private static final double SHARE = 0.67;

  /** The reduced strength. */
  public static LocalShear reduce(double cohesionKilopascals, double frictionAngleDegrees) {
    Require.notNegative(cohesionKilopascals, "cohesion", "kPa");
    Require.frictionAngle(frictionAngleDegrees);
    double tangent = SHARE * Math.tan(Math.toRadians(frictionAngleDegrees));
    return new LocalShear(SHARE * cohesionKilopascals, Math.toDegrees(Math.atan(tangent)));
  }
}
