package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Pressure under a rigid base with a resultant off centre in one direction, per metre across.
 *
 * <p>Formula: e up to B/6: q = (N/B)(1 +- 6 e/B); beyond, partial contact over 3 x with x = B/2 -
 * e: qmax = 2 N/(3 x). Symbols: N normal force [kN/m], B base width [m], e eccentricity [m], x
 * distance of the resultant from the nearer edge [m]. Assumptions: rigid base, linear pressure, no
 * tension. Valid range: N above 0 and the resultant inside the base (e below B/2). Accuracy: exact
 * under the assumptions. Source: UFC 3-220-20 (16 January 2025), chapter 5, equations 5-4 to 5-9;
 * basis: cited, secondary digest (partial contact derived by statics).
 *
 * @param largestKilopascals pressure at the loaded edge
 * @param smallestKilopascals pressure at the other edge, 0 in partial contact
 * @param contactWidthMetres width in contact
 * @param eccentricityMetres distance of the resultant from the centre
 * @param withinMiddleThird whether the whole base is in contact
 */
public record ContactPressure(
    double largestKilopascals,
    double smallestKilopascals,
    double contactWidthMetres,
    double eccentricityMetres,
    boolean withinMiddleThird) {

  /**
   * Share of the base within which the resultant counts as lying at the edge (judgement, guards the
   * arithmetic).
   */
  private static final double EDGE = 1e-6;

  /**
   * Contact pressure; out of range without a downward force or when the resultant leaves the base.
   */
  public static Outcome<ContactPressure> of(
      double normalKilonewtonsPerMetre, double widthMetres, double eccentricityMetres) {
    Require.finite(normalKilonewtonsPerMetre, "normal force", "kN/m");
    Require.positive(widthMetres, "base width", "m");
    double offset = Math.abs(Require.finite(eccentricityMetres, "eccentricity", "m"));
    if (normalKilonewtonsPerMetre <= 0) {
      return Outcome.outOfRange("no downward force: the base is not in contact");
    }
    double fromEdge = widthMetres / 2 - offset;
    if (fromEdge <= EDGE * widthMetres) {
      return Outcome.outOfRange(
          "the resultant lies at or beyond the edge of the base: it overturns");
    }
    double mean = normalKilonewtonsPerMetre / widthMetres;
    if (offset <= widthMetres / 6) {
      double swing = 6 * offset / widthMetres;
      return Outcome.of(
          new ContactPressure(
              mean * (1 + swing), Math.max(0, mean * (1 - swing)), widthMetres, offset, true));
    }
    double contact = 3 * fromEdge;
    return Outcome.of(
        new ContactPressure(2 * normalKilonewtonsPerMetre / contact, 0, contact, offset, false));
  }
}
