package underhold.mechanics.soil.bearing;

/**
 * Depth factors of Hansen, also used with Vesic.
 *
 * <p>Formula: dc = 1 + 0.4 k; dq = 1 + 2 tan f (1 - sin f)^2 k; dg = 1; k = D/B up to 1, else
 * atan(D/B) in radians. Symbols: D depth [m], B actual width [m] (not the effective one: UFC
 * 3-220-20, 5-3.3), f [degrees]. Source: J. Brinch Hansen, A Revised and Extended Formula for
 * Bearing Capacity, 1970; basis: from memory, verify.
 *
 * <p>Known limit: k falls from 1 to pi/4 as D/B passes 1; that step is in the published rule.
 */
final class DepthFactors {

  private DepthFactors() {}

  static CorrectionFactors hansen(BearingCase question) {
    if (question.depthEffect() == DepthEffect.IGNORED) {
      return CorrectionFactors.NONE;
    }
    double k = depthMeasure(question.footing());
    return new CorrectionFactors(1 + 0.4 * k, surcharge(question, k), 1);
  }

  /**
   * The same, with dc = dq + (dq - 1)/(Nq - 1), which is dq - (1 - dq)/(Nc tan f); for f above 0.
   */
  static CorrectionFactors cohesionFromSurcharge(BearingCase question) {
    if (question.depthEffect() == DepthEffect.IGNORED) {
      return CorrectionFactors.NONE;
    }
    double surcharge = surcharge(question, depthMeasure(question.footing()));
    double nq = PrandtlReissner.nq(question.ground().frictionAngleRadians());
    return new CorrectionFactors(surcharge + (surcharge - 1) / (nq - 1), surcharge, 1);
  }

  private static double depthMeasure(Footing footing) {
    double ratio = footing.depthRatio();
    return ratio <= 1 ? ratio : Math.atan(ratio);
  }

  private static double surcharge(BearingCase question, double k) {
    double friction = question.ground().frictionAngleRadians();
    double rest = 1 - Math.sin(friction);
    return 1 + 2 * Math.tan(friction) * rest * rest * k;
  }
}
