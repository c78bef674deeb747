package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Outcome;

/** The range in which the general bearing equation is used here, the same for all authors. */
final class BearingRange {

  /**
   * Below this a friction angle other than 0 makes the cohesion terms ill-conditioned (judgement)
   * [degrees].
   */
  static final double LEAST_FRICTION_DEGREES = 1;

  /** Above this the factors grow faster than any test supports (judgement) [degrees]. */
  static final double MOST_FRICTION_DEGREES = 50;

  private BearingRange() {}

  /** The effective base when the case is in range. */
  static Outcome<EffectiveBase> check(BearingCase question) {
    double friction = question.ground().frictionAngleDegrees();
    if (friction > 0 && friction < LEAST_FRICTION_DEGREES) {
      return Outcome.outOfRange(
          "an angle of shearing resistance of "
              + friction
              + " degrees: use 0 (undrained) or at least "
              + LEAST_FRICTION_DEGREES);
    }
    if (friction > MOST_FRICTION_DEGREES) {
      return Outcome.outOfRange(
          "an angle of shearing resistance of "
              + friction
              + " degrees is above the "
              + MOST_FRICTION_DEGREES
              + " degrees to which the factors are used");
    }
    FootingLoad load = question.load();
    if (load.horizontalKilonewtons() > 0 && load.verticalKilonewtons() == 0) {
      return Outcome.outOfRange("a horizontal load needs the vertical load that goes with it");
    }
    return EffectiveBase.of(question.footing(), load);
  }
}
