package underhold.mechanics.soil.bearing;

import java.util.List;
import underhold.mechanics.soil.Outcome;

/**
 * Ultimate bearing capacity after Vesic.
 *
 * <p>Formula: q = c Nc sc dc ic + s Nq sq dq iq + 0.5 g B' Ng sg dg ig, with Ng = 2 (Nq + 1) tan f;
 * sc = 1 + (B'/L')(Nq/Nc), sq = 1 + (B'/L') tan f, sg = 1 - 0.4 B'/L'; depth as {@link
 * CohesionDepthFactor}; inclination of the power form, and ic = 1 - m H/(A' su Nc) at f = 0.
 *
 * <p>Symbols: c cohesion [kPa], s overburden at the base [kPa], g unit weight below the base
 * [kN/m3], B', L' effective sides [m], A' effective area [m2], f angle of shearing resistance
 * [degrees], H, V load [kN], m inclination exponent.
 *
 * <p>Assumptions: general shear, uniform ground to a depth of about B below the base, level ground
 * and base. Valid range: f = 0 or 1 to 50 degrees, resultant inside the base. Accuracy: ultimate
 * values of different authors differ by 10 to 50 %; use a factor of safety. Source: A. S. Vesic,
 * Analysis of Ultimate Loads of Shallow Foundations, ASCE 1973; basis: from memory, verify (the
 * shape factors reproduce published test values).
 */
public final class VesicBearing {

  /** The depth factor of the cohesion term: books differ. */
  public enum CohesionDepthFactor {
    /** dc = 1 + 0.4 k, as in Bowles; from memory, verify. */
    LINEAR,
    /**
     * dc = dq - (1 - dq)/(Nc tan f), as in Das; from memory, verify. At f = 0 both are 1 + 0.4 k.
     */
    FROM_SURCHARGE_FACTOR
  }

  private VesicBearing() {}

  /** Factors for an angle of shearing resistance in degrees. */
  public static BearingFactors factors(double frictionAngleDegrees) {
    double friction = Math.toRadians(frictionAngleDegrees);
    double nq = PrandtlReissner.nq(friction);
    return new BearingFactors(PrandtlReissner.nc(friction), nq, 2 * (nq + 1) * Math.tan(friction));
  }

  /**
   * Ultimate capacity of a case; out of range when the base slides or overturns or the angle is
   * outside 0, 1 to 50.
   */
  public static Outcome<BearingCapacity> ultimate(
      BearingCase question, CohesionDepthFactor depthRule) {
    return BearingRange.check(question)
        .flatMap(
            base ->
                inclination(question, base)
                    .map(inclination -> sum(question, base, depthRule, inclination)));
  }

  private static BearingCapacity sum(
      BearingCase question,
      EffectiveBase base,
      CohesionDepthFactor depthRule,
      CorrectionFactors inclination) {
    BearingGround ground = question.ground();
    BearingFactors factors = factors(ground.frictionAngleDegrees());
    double ratio = base.widthToLength();
    CorrectionFactors shape =
        new CorrectionFactors(
            1 + ratio * factors.surcharge() / factors.cohesion(),
            1 + ratio * Math.tan(ground.frictionAngleRadians()),
            1 - 0.4 * ratio);
    boolean linear = depthRule == CohesionDepthFactor.LINEAR || ground.isUndrained();
    CorrectionFactors depth =
        linear ? DepthFactors.hansen(question) : DepthFactors.cohesionFromSurcharge(question);
    return BearingCapacity.sum(question, base, factors, shape, depth, inclination, List.of());
  }

  private static Outcome<CorrectionFactors> inclination(BearingCase question, EffectiveBase base) {
    double horizontal = question.load().horizontalKilonewtons();
    BearingGround ground = question.ground();
    if (!ground.isUndrained() || horizontal == 0) {
      return LoadInclination.power(question, base);
    }
    double holding = base.areaSquareMetres() * ground.cohesionKilopascals();
    if (horizontal > holding) {
      return Outcome.outOfRange("the horizontal load is above A' su: the base slides");
    }
    double reduction = base.inclinationExponent() * horizontal / (holding * PrandtlReissner.nc(0));
    return LoadInclination.withCohesion(question, 1 - reduction, 1, 1);
  }
}
