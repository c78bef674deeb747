package underhold.mechanics.soil.bearing;

import java.util.List;
import underhold.mechanics.soil.Outcome;

/**
 * Ultimate bearing capacity after Brinch Hansen.
 *
 * <p>Formula: q = c Nc sc dc ic + s Nq sq dq iq + 0.5 g B' Ng sg dg ig, with Ng = 1.5 (Nq - 1) tan
 * f; sc = 1 + (B'/L')(Nq/Nc), sq = 1 + (B'/L') sin f, sg = 1 - 0.4 B'/L'; iq = (1 - 0.5 H/(V + A' c
 * cot f))^5, ig = (1 - 0.7 H/(V + A' c cot f))^5, ic = iq - (1 - iq)/(Nq - 1). At f = 0: sc = 1 +
 * 0.2 B'/L', dc = 1 + 0.4 k, ic = 0.5 (1 + sqrt(1 - H/(A' su))), multiplied as in his 1961 paper
 * (the 1970 paper adds them instead).
 *
 * <p>Symbols: as in {@link VesicBearing}. Assumptions: general shear, uniform level ground, level
 * base. Valid range: f = 0 or 1 to 50 degrees, resultant inside the base, base not sliding. The
 * exponent 5 is the largest published (2 to 5) and the most careful. Accuracy: see {@link
 * VesicBearing}. Source: J. Brinch Hansen, 1961 and 1970; basis: depth, shape and inclination from
 * memory, verify; the undrained product reproduces the worked example of 1961.
 */
public final class HansenBearing {

  /** Exponent of both inclination factors, dimensionless; from memory, verify. */
  private static final double INCLINATION_EXPONENT = 5;

  private HansenBearing() {}

  /** Factors for an angle of shearing resistance in degrees. */
  public static BearingFactors factors(double frictionAngleDegrees) {
    double friction = Math.toRadians(frictionAngleDegrees);
    double nq = PrandtlReissner.nq(friction);
    return new BearingFactors(
        PrandtlReissner.nc(friction), nq, 1.5 * (nq - 1) * Math.tan(friction));
  }

  /**
   * Ultimate capacity of a case; out of range when the base slides or overturns or the angle is
   * outside 0, 1 to 50.
   */
  public static Outcome<BearingCapacity> ultimate(BearingCase question) {
    return BearingRange.check(question)
        .flatMap(
            base ->
                inclination(question, base).map(inclination -> sum(question, base, inclination)));
  }

  private static BearingCapacity sum(
      BearingCase question, EffectiveBase base, CorrectionFactors inclination) {
    BearingGround ground = question.ground();
    BearingFactors factors = factors(ground.frictionAngleDegrees());
    double ratio = base.widthToLength();
    double cohesionShape = ground.isUndrained() ? 0.2 : factors.surcharge() / factors.cohesion();
    CorrectionFactors shape =
        new CorrectionFactors(
            1 + cohesionShape * ratio,
            1 + ratio * Math.sin(ground.frictionAngleRadians()),
            1 - 0.4 * ratio);
    return BearingCapacity.sum(
        question, base, factors, shape, DepthFactors.hansen(question), inclination, List.of());
  }

  private static Outcome<CorrectionFactors> inclination(BearingCase question, EffectiveBase base) {
    double horizontal = question.load().horizontalKilonewtons();
    BearingGround ground = question.ground();
    if (horizontal == 0) {
      return Outcome.of(CorrectionFactors.NONE);
    }
    if (ground.isUndrained()) {
      return LoadInclination.undrainedRoot(question, base);
    }
    double share = horizontal / LoadInclination.resisting(question, base);
    if (share >= 1) {
      return Outcome.outOfRange("the horizontal load is above what the base can hold: it slides");
    }
    double surcharge = Math.pow(1 - 0.5 * share, INCLINATION_EXPONENT);
    double nq = PrandtlReissner.nq(ground.frictionAngleRadians());
    return LoadInclination.withCohesion(
        question,
        surcharge - (1 - surcharge) / (nq - 1),
        surcharge,
        Math.pow(1 - 0.7 * share, INCLINATION_EXPONENT));
  }
}
