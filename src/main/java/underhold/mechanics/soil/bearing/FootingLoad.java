package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * The resultant load at the base; for a strip all forces are per metre of run.
 *
 * @param verticalKilonewtons vertical force V, downward
 * @param horizontalKilonewtons horizontal force H parallel to the width, either sense
 * @param eccentricityWidthMetres distance of V from the centre, parallel to the width
 * @param eccentricityLengthMetres distance of V from the centre, parallel to the length
 */
public record FootingLoad(
    double verticalKilonewtons,
    double horizontalKilonewtons,
    double eccentricityWidthMetres,
    double eccentricityLengthMetres) {

  public FootingLoad {
    Require.notNegative(verticalKilonewtons, "vertical load", "kN");
    horizontalKilonewtons =
        Math.abs(Require.finite(horizontalKilonewtons, "horizontal load", "kN"));
    eccentricityWidthMetres =
        Math.abs(Require.finite(eccentricityWidthMetres, "eccentricity along the width", "m"));
    eccentricityLengthMetres =
        Math.abs(Require.finite(eccentricityLengthMetres, "eccentricity along the length", "m"));
  }

  /**
   * A central vertical load: no inclination, no eccentricity; its size does not change the ultimate
   * pressure.
   */
  public static FootingLoad centred() {
    return new FootingLoad(0, 0, 0, 0);
  }

  /** A central load with a horizontal part. */
  public static FootingLoad inclined(double verticalKilonewtons, double horizontalKilonewtons) {
    return new FootingLoad(verticalKilonewtons, horizontalKilonewtons, 0, 0);
  }
}
