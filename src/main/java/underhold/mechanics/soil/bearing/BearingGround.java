package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * The ground as a bearing calculation sees it.
 *
 * @param frictionAngleDegrees angle of shearing resistance; 0 for a saturated undrained analysis
 * @param cohesionKilopascals effective cohesion c', or undrained shear strength su when the angle
 *     is 0
 * @param overburdenKilopascals vertical stress beside the base at its level: effective for a
 *     drained, total for an undrained analysis; take the lower ground level
 * @param unitWeightBelowKilonewtonsPerCubicMetre unit weight below the base, already corrected for
 *     groundwater (see {@link GroundwaterCorrection})
 */
public record BearingGround(
    double frictionAngleDegrees,
    double cohesionKilopascals,
    double overburdenKilopascals,
    double unitWeightBelowKilonewtonsPerCubicMetre) {

  public BearingGround {
    Require.frictionAngle(frictionAngleDegrees);
    Require.notNegative(cohesionKilopascals, "cohesion", "kPa");
    Require.notNegative(overburdenKilopascals, "overburden", "kPa");
    Require.notNegative(unitWeightBelowKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
  }

  /**
   * Saturated clay loaded undrained: angle 0, total overburden; the weight term vanishes with its
   * factor.
   */
  public static BearingGround undrained(
      double undrainedStrengthKilopascals, double totalOverburdenKilopascals) {
    return new BearingGround(0, undrainedStrengthKilopascals, totalOverburdenKilopascals, 0);
  }

  /** Whether the angle is 0, that is an undrained analysis. */
  public boolean isUndrained() {
    return frictionAngleDegrees == 0;
  }

  double frictionAngleRadians() {
    return Math.toRadians(frictionAngleDegrees);
  }
}
