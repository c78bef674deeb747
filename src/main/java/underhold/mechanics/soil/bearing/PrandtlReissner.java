package underhold.mechanics.soil.bearing;

/**
 * The factors Nq and Nc that Meyerhof, Hansen, Vesic and EN 1997-1 share.
 *
 * <p>Formula: Nq = exp(pi tan f) tan^2(45 + f/2); Nc = (Nq - 1) cot f, and 2 + pi at f = 0.
 * Symbols: f angle of shearing resistance [degrees]. Assumptions: weightless rigid-plastic soil,
 * strip. Valid range: 0 or 1 to 50 degrees, see {@link BearingRange}. Accuracy: exact under the
 * assumptions. Source: EN 1997-1:2004, Annex D, D.2 and D.4; basis: cited, secondary digest.
 */
final class PrandtlReissner {

  private PrandtlReissner() {}

  static double nq(double frictionRadians) {
    double tangent = Math.tan(Math.PI / 4 + frictionRadians / 2);
    return Math.exp(Math.PI * Math.tan(frictionRadians)) * tangent * tangent;
  }

  static double nc(double frictionRadians) {
    return frictionRadians == 0
        ? Math.PI + 2
        : (nq(frictionRadians) - 1) / Math.tan(frictionRadians);
  }
}
