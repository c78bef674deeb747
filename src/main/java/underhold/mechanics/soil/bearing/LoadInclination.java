package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Outcome;

/**
 * Load inclination factors of the power form, shared by Vesic and EN 1997-1 Annex D.
 *
 * <p>Formula: iq = b^m, ig = b^(m+1), ic = iq - (1 - iq)/(Nc tan f), with b = 1 - H/(V + A' c' cot
 * f). Symbols: H, V load [kN]; A' effective area [m2]; c' [kPa]; f [degrees]; m = (2 + B'/L')/(1 +
 * B'/L') for H along B'. Valid range: b above 0 (else the base slides) and f above 0. Source: EN
 * 1997-1:2004, Annex D.4; basis: cited, secondary digest.
 */
final class LoadInclination {

  private LoadInclination() {}

  static Outcome<CorrectionFactors> power(BearingCase question, EffectiveBase base) {
    FootingLoad load = question.load();
    if (load.horizontalKilonewtons() == 0) {
      return Outcome.of(CorrectionFactors.NONE);
    }
    double friction = question.ground().frictionAngleRadians();
    double bracket = 1 - load.horizontalKilonewtons() / resisting(question, base);
    if (bracket <= 0) {
      return Outcome.outOfRange("the horizontal load is above what the base can hold: it slides");
    }
    double exponent = base.inclinationExponent();
    double surcharge = Math.pow(bracket, exponent);
    return withCohesion(
        question,
        surcharge - (1 - surcharge) / (PrandtlReissner.nq(friction) - 1),
        surcharge,
        Math.pow(bracket, exponent + 1));
  }

  /** V + A' c' cot f [kN]. */
  static double resisting(BearingCase question, EffectiveBase base) {
    BearingGround ground = question.ground();
    return question.load().verticalKilonewtons()
        + base.areaSquareMetres()
            * ground.cohesionKilopascals()
            / Math.tan(ground.frictionAngleRadians());
  }

  /** A cohesion factor below 0 is harmless without cohesion and out of range with it. */
  static Outcome<CorrectionFactors> withCohesion(
      BearingCase question, double cohesion, double surcharge, double weight) {
    if (cohesion < 0 && question.ground().cohesionKilopascals() > 0) {
      return Outcome.outOfRange(
          "the load is so inclined that the factor on the cohesion term falls below 0");
    }
    return Outcome.of(new CorrectionFactors(Math.max(0, cohesion), surcharge, weight));
  }

  /**
   * Undrained: ic = 0.5 (1 + sqrt(1 - H/(A' su))), H at most A' su. Source: EN 1997-1:2004, Annex
   * D.3 (the digest seen gives it under the undrained clause); Brinch Hansen 1961 uses the same
   * form.
   */
  static Outcome<CorrectionFactors> undrainedRoot(BearingCase question, EffectiveBase base) {
    double horizontal = question.load().horizontalKilonewtons();
    if (horizontal == 0) {
      return Outcome.of(CorrectionFactors.NONE);
    }
    double holding = base.areaSquareMetres() * question.ground().cohesionKilopascals();
    if (horizontal > holding) {
      return Outcome.outOfRange("the horizontal load is above A' su: the base slides");
    }
    return Outcome.of(new CorrectionFactors(0.5 * (1 + Math.sqrt(1 - horizontal / holding)), 1, 1));
  }
}
