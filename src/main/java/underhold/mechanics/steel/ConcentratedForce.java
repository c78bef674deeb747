package underhold.mechanics.steel;

/**
 * A force on one flange of a rolled beam, in the plane of its web.
 *
 * @param bearingMetres lb, length of bearing along the beam
 * @param fromEndMetres from the end of the beam to the middle of the bearing
 */
public record ConcentratedForce(double bearingMetres, double fromEndMetres) {
  public ConcentratedForce {
    Require.positive("length of bearing", bearingMetres);
    Require.notNegative("distance from the end", fromEndMetres);
  }
}
