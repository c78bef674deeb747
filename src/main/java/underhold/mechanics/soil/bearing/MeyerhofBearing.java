package underhold.mechanics.soil.bearing;

import java.util.List;
import underhold.mechanics.soil.Outcome;

/**
 * Ultimate bearing capacity after Meyerhof.
 *
 * <p>Formula: q = c Nc sc dc ic + s Nq sq dq iq + 0.5 g B' Ng sg dg ig, with Ng = (Nq - 1) tan(1.4
 * f); Kp = tan^2(45 + f/2); sc = 1 + 0.2 Kp B'/L'; sq = sg = 1 + 0.1 Kp B'/L' for f of 10 degrees
 * and above; dc = 1 + 0.2 sqrt(Kp) D/B; dq = dg = 1 + 0.1 sqrt(Kp) D/B for f of 10 degrees and
 * above; ic = iq = (1 - t/90)^2, ig = (1 - t/f)^2 with t = atan(H/V) in degrees.
 *
 * <p>Symbols: as in {@link VesicBearing}. Assumptions: general shear, uniform level ground. Below
 * 10 degrees sq, sg, dq, dg are taken as 1, on the safe side. D/B is credited up to 1 only
 * (judgement: the linear growth has no stated end). ig is 0 when the load is steeper than f. Valid
 * range: f = 0 or 1 to 50 degrees, resultant inside the base; sliding is a separate check.
 * Accuracy: see {@link VesicBearing}. Source: G. G. Meyerhof, Some Recent Research on the Bearing
 * Capacity of Foundations, Canadian Geotechnical Journal, 1963; basis: from memory, verify.
 */
public final class MeyerhofBearing {

  /** Angle from which the surcharge and weight factors are used [degrees]; from memory, verify. */
  private static final double FACTORS_FROM_DEGREES = 10;

  /** Greatest D/B credited, dimensionless (judgement). */
  private static final double MOST_DEPTH_RATIO = 1;

  private MeyerhofBearing() {}

  /** Factors for an angle of shearing resistance in degrees. */
  public static BearingFactors factors(double frictionAngleDegrees) {
    double friction = Math.toRadians(frictionAngleDegrees);
    double nq = PrandtlReissner.nq(friction);
    return new BearingFactors(
        PrandtlReissner.nc(friction), nq, (nq - 1) * Math.tan(1.4 * friction));
  }

  /**
   * Ultimate capacity of a case; out of range when the base overturns or the angle is outside 0, 1
   * to 50.
   */
  public static Outcome<BearingCapacity> ultimate(BearingCase question) {
    return BearingRange.check(question).map(base -> sum(question, base));
  }

  private static BearingCapacity sum(BearingCase question, EffectiveBase base) {
    BearingGround ground = question.ground();
    double tangent = Math.tan(Math.PI / 4 + ground.frictionAngleRadians() / 2);
    double passive = tangent * tangent;
    boolean frictional = ground.frictionAngleDegrees() >= FACTORS_FROM_DEGREES;
    double depthRatio = question.footing().depthRatio();
    double credited =
        question.depthEffect() == DepthEffect.CREDITED ? Math.min(depthRatio, MOST_DEPTH_RATIO) : 0;
    List<String> remarks =
        credited > 0 && credited < depthRatio
            ? List.of("depth credited to D/B = 1 although D/B is larger (judgement)")
            : List.of();
    return BearingCapacity.sum(
        question,
        base,
        factors(ground.frictionAngleDegrees()),
        pair(passive * base.widthToLength(), frictional),
        pair(tangent * credited, frictional),
        inclination(question),
        remarks);
  }

  private static CorrectionFactors pair(double measure, boolean frictional) {
    double other = frictional ? 1 + 0.1 * measure : 1;
    return new CorrectionFactors(1 + 0.2 * measure, other, other);
  }

  private static CorrectionFactors inclination(BearingCase question) {
    FootingLoad load = question.load();
    if (load.horizontalKilonewtons() == 0) {
      return CorrectionFactors.NONE;
    }
    double tilt =
        Math.toDegrees(Math.atan2(load.horizontalKilonewtons(), load.verticalKilonewtons()));
    double common = (1 - tilt / 90) * (1 - tilt / 90);
    double friction = question.ground().frictionAngleDegrees();
    double left = tilt < friction ? 1 - tilt / friction : 0;
    return new CorrectionFactors(common, common, left * left);
  }
}
