package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Coefficient of earth pressure at rest.
 *
 * <p>Formula: K0 = (1 - sin f) OCR^(sin f). Symbols: f angle of shearing resistance [degrees], OCR
 * overconsolidation ratio. Assumptions: level ground, no wall movement, stress history of one
 * unloading. Valid range: OCR of 1 and above, K0 not above the passive coefficient of Rankine.
 * Accuracy: 0.3 to 0.8 for normally consolidated soil; 0.5 is often used. Source: UFC 3-220-20 (16
 * January 2025), 4-2.1; basis: cited, secondary digest (the limit at Kp is a derived bound).
 */
public final class AtRestPressure {

  private AtRestPressure() {}

  /** K0 for a normally consolidated soil. */
  public static double normallyConsolidated(double frictionAngleDegrees) {
    return 1 - Math.sin(Math.toRadians(Require.frictionAngle(frictionAngleDegrees)));
  }

  /** K0 with stress history; out of range when it would pass the passive coefficient. */
  public static Outcome<Double> coefficient(
      double frictionAngleDegrees, double overconsolidationRatio) {
    Require.between(overconsolidationRatio, 1, Require.LARGEST, "overconsolidation ratio", "");
    double sine = Math.sin(Math.toRadians(Require.frictionAngle(frictionAngleDegrees)));
    double coefficient = (1 - sine) * Math.pow(overconsolidationRatio, sine);
    return coefficient <= RankinePressure.passiveCoefficient(frictionAngleDegrees)
        ? Outcome.of(coefficient)
        : Outcome.outOfRange("K0 would pass the passive coefficient: the soil would have failed");
  }
}
