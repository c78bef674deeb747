package underhold.mechanics.soil.bearing;

import java.util.List;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Bearing resistance after EN 1997-1:2004, Annex D (informative).
 *
 * <p>Undrained: R/A' = (pi + 2) cu bc sc ic + q, bc = 1 - 2 a/(pi + 2), sc = 1 + 0.2 B'/L', ic =
 * 0.5 (1 + sqrt(1 - H/(A' cu))). Drained: R/A' = c' Nc bc sc ic + q' Nq bq sq iq + 0.5 g' B' Ng bg
 * sg ig, Ng = 2 (Nq - 1) tan f (rough base), sq = 1 + (B'/L') sin f, sg = 1 - 0.3 B'/L', sc = (sq
 * Nq - 1)/(Nq - 1), bq = bg = (1 - a tan f)^2, bc = bq - (1 - bq)/(Nc tan f), inclination of the
 * power form.
 *
 * <p>Symbols: as in {@link VesicBearing}; a inclination of the base to the horizontal [radians in
 * the formulas, degrees in the call]. There are no depth factors: depth enters through q only. No
 * partial factors are applied here; give design or characteristic values as the design approach
 * asks.
 *
 * <p>Valid range: undrained H up to A' cu; drained f from 1 to 50 degrees; a from 0 to 30 degrees
 * (judgement); resultant inside the base. Accuracy: see {@link VesicBearing}. Source: EN
 * 1997-1:2004, Annex D.3 and D.4; basis: cited, secondary digest (bc for drained conditions from
 * memory, verify).
 */
public final class EurocodeBearing {

  private static final double MOST_BASE_INCLINATION_DEGREES = 30;

  private EurocodeBearing() {}

  /** Factors for an angle of shearing resistance in degrees. */
  public static BearingFactors factors(double frictionAngleDegrees) {
    double friction = Math.toRadians(frictionAngleDegrees);
    double nq = PrandtlReissner.nq(friction);
    return new BearingFactors(PrandtlReissner.nc(friction), nq, 2 * (nq - 1) * Math.tan(friction));
  }

  /**
   * Resistance per effective area for a level base; undrained when the angle is 0, else drained.
   */
  public static Outcome<BearingCapacity> ultimate(BearingCase question) {
    return ultimate(question, 0);
  }

  /** Resistance per effective area for a base inclined by some degrees. */
  public static Outcome<BearingCapacity> ultimate(
      BearingCase question, double baseInclinationDegrees) {
    Require.between(
        baseInclinationDegrees, 0, MOST_BASE_INCLINATION_DEGREES, "base inclination", "degrees");
    double tilt = Math.toRadians(baseInclinationDegrees);
    return BearingRange.check(question)
        .flatMap(
            base ->
                question.ground().isUndrained()
                    ? undrained(question, base, tilt)
                    : drained(question, base, tilt));
  }

  private static Outcome<BearingCapacity> undrained(
      BearingCase question, EffectiveBase base, double tilt) {
    CorrectionFactors shape = new CorrectionFactors(1 + 0.2 * base.widthToLength(), 1, 1);
    CorrectionFactors slope = new CorrectionFactors(1 - 2 * tilt / (Math.PI + 2), 1, 1);
    return LoadInclination.undrainedRoot(question, base)
        .map(load -> sum(question, base, shape, load.times(slope)));
  }

  private static Outcome<BearingCapacity> drained(
      BearingCase question, EffectiveBase base, double tilt) {
    double friction = question.ground().frictionAngleRadians();
    double nq = PrandtlReissner.nq(friction);
    double sq = 1 + base.widthToLength() * Math.sin(friction);
    CorrectionFactors shape =
        new CorrectionFactors((sq * nq - 1) / (nq - 1), sq, 1 - 0.3 * base.widthToLength());
    double lean = 1 - tilt * Math.tan(friction);
    double bq = lean * lean;
    double bc = bq - (1 - bq) / (nq - 1);
    if (bc < 0 && question.ground().cohesionKilopascals() > 0) {
      return Outcome.outOfRange("the base is so inclined that its cohesion factor falls below 0");
    }
    CorrectionFactors slope = new CorrectionFactors(Math.max(0, bc), bq, bq);
    return LoadInclination.power(question, base)
        .map(load -> sum(question, base, shape, load.times(slope)));
  }

  private static BearingCapacity sum(
      BearingCase question,
      EffectiveBase base,
      CorrectionFactors shape,
      CorrectionFactors inclination) {
    List<String> remarks =
        question.depthEffect() == DepthEffect.CREDITED
            ? List.of("EN 1997-1 Annex D has no depth factors: none were credited")
            : List.of();
    BearingFactors factors = factors(question.ground().frictionAngleDegrees());
    return BearingCapacity.sum(
        question, base, factors, shape, CorrectionFactors.NONE, inclination, remarks);
  }
}
