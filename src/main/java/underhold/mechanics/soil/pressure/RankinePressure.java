package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Require;

/**
 * Earth pressure after Rankine.
 *
 * <p>Formula: Ka = tan^2(45 - f/2), Kp = 1/Ka; active sh = Ka s - 2 c sqrt(Ka), passive sh = Kp s +
 * 2 c sqrt(Kp). Tension crack z0 = (2 c/sqrt(Ka) - q)/g, at least 0.
 *
 * <p>Symbols: f angle of shearing resistance [degrees], c cohesion [kPa], s effective vertical
 * stress [kPa], q uniform surcharge [kPa], g unit weight [kN/m3], sh horizontal stress [kPa].
 * Assumptions: vertical smooth wall, level ground, enough movement: the passive state needs 5 to 10
 * times the movement of the active one. Neglect c' in long-term clay. Valid range: f 0 to 60
 * degrees. Accuracy: exact under the assumptions; active pressure is on the safe side for a rough
 * wall. A wall under a building that may not move is nearer to {@link AtRestPressure}. Source: UFC
 * 3-220-20 (16 January 2025), 4-2.2 and 4-2.3; basis: cited, secondary digest.
 */
public final class RankinePressure {

  private RankinePressure() {}

  /** Ka, dimensionless. */
  public static double activeCoefficient(double frictionAngleDegrees) {
    Require.frictionAngle(frictionAngleDegrees);
    double root = Math.tan(Math.PI / 4 - Math.toRadians(frictionAngleDegrees) / 2);
    return root * root;
  }

  /** Kp, dimensionless. */
  public static double passiveCoefficient(double frictionAngleDegrees) {
    return 1 / activeCoefficient(frictionAngleDegrees);
  }

  /** Active pressure in kPa; negative where cohesion would put the soil in tension. */
  public static double activeKilopascals(
      double frictionAngleDegrees, double cohesionKilopascals, double verticalStressKilopascals) {
    double coefficient = activeCoefficient(frictionAngleDegrees);
    Require.notNegative(cohesionKilopascals, "cohesion", "kPa");
    Require.notNegative(verticalStressKilopascals, "vertical stress", "kPa");
    return coefficient * verticalStressKilopascals
        - 2 * cohesionKilopascals * Math.sqrt(coefficient);
  }

  /** Passive pressure in kPa. */
  public static double passiveKilopascals(
      double frictionAngleDegrees, double cohesionKilopascals, double verticalStressKilopascals) {
    double coefficient = passiveCoefficient(frictionAngleDegrees);
    Require.notNegative(cohesionKilopascals, "cohesion", "kPa");
    Require.notNegative(verticalStressKilopascals, "vertical stress", "kPa");
    return coefficient * verticalStressKilopascals
        + 2 * cohesionKilopascals * Math.sqrt(coefficient);
  }

  /**
   * A uniform layer behind a wall, without water.
   *
   * @param heightMetres height of the wall
   * @param unitWeightKilonewtonsPerCubicMetre unit weight
   * @param frictionAngleDegrees angle of shearing resistance
   * @param cohesionKilopascals cohesion
   * @param surchargeKilopascals uniform surcharge on the ground
   */
  public record Backfill(
      double heightMetres,
      double unitWeightKilonewtonsPerCubicMetre,
      double frictionAngleDegrees,
      double cohesionKilopascals,
      double surchargeKilopascals) {
    public Backfill {
      Require.positive(heightMetres, "wall height", "m");
      Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
      Require.frictionAngle(frictionAngleDegrees);
      Require.notNegative(cohesionKilopascals, "cohesion", "kPa");
      Require.notNegative(surchargeKilopascals, "surcharge", "kPa");
    }
  }

  /**
   * Active pressure over the height of a wall.
   *
   * @param coefficient Ka
   * @param topKilopascals pressure at the top, negative in tension
   * @param baseKilopascals pressure at the foot, negative in tension
   * @param tensionCrackMetres depth over which the soil would be in tension, up to the wall height
   * @param thrust resultant of the compression alone; water that may fill the crack is not in it
   */
  public record Active(
      double coefficient,
      double topKilopascals,
      double baseKilopascals,
      double tensionCrackMetres,
      Resultant thrust) {}

  /** Active pressure and thrust; tension is left out of the thrust, on the safe side. */
  public static Active active(Backfill soil) {
    double coefficient = activeCoefficient(soil.frictionAngleDegrees());
    double cohesion = soil.cohesionKilopascals();
    double height = soil.heightMetres();
    double weight = soil.unitWeightKilonewtonsPerCubicMetre();
    double top =
        activeKilopascals(soil.frictionAngleDegrees(), cohesion, soil.surchargeKilopascals());
    double base = top + coefficient * weight * height;
    double crack = Math.min(height, Math.max(0, -top / (coefficient * weight)));
    double pressed = height - crack;
    double first = Math.max(0, top);
    double last = Math.max(0, base);
    double force = 0.5 * (first + last) * pressed;
    double momentAboutBase = pressed * pressed * (2 * first + last) / 6;
    Resultant thrust =
        new Resultant(force, force > 0 ? Math.min(height, momentAboutBase / force) : height / 2);
    return new Active(coefficient, top, base, crack, thrust);
  }
}
