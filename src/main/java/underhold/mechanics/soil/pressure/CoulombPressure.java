package underhold.mechanics.soil.pressure;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Earth pressure coefficients after Coulomb.
 *
 * <p>Formula: Ka = cos^2(f - t)/[cos^2 t cos(d + t) (1 + sqrt(sin(f + d) sin(f - b)/(cos(d + t)
 * cos(t - b))))^2]; Kp = cos^2(f + t)/[cos^2 t cos(d - t) (1 - sqrt(sin(f + d) sin(f + b)/(cos(d -
 * t) cos(t - b))))^2].
 *
 * <p>Symbols: f angle of shearing resistance, d wall friction, b slope of the ground, t wall lean
 * [all degrees]. Assumptions: plane slip surface, no cohesion, dry uniform soil. Valid range: d
 * from 0 to f; b up to f for Ka (no wedge stands steeper); the passive bracket above 0. Accuracy:
 * Ka good; Kp on the unsafe side when d passes about f/3, because the true slip surface is curved
 * (from memory, verify). Source: C. A. Coulomb, 1776, in the form of the soil mechanics textbooks;
 * basis: from memory, verify; reproduces published tables.
 */
public final class CoulombPressure {

  /** Below this the root of the passive formula makes Kp grow without bound (judgement). */
  private static final double LEAST_BRACKET = 0.02;

  /**
   * Largest wall lean accepted [degrees] (judgement). With the other limits no sum of angles passes
   * 90 degrees, so that every cosine of the formulas stays above 0.
   */
  private static final double MOST_LEAN_DEGREES = 30;

  private CoulombPressure() {}

  /**
   * The wall and the ground behind it.
   *
   * @param frictionAngleDegrees angle of shearing resistance f
   * @param wallFrictionDegrees wall friction d
   * @param groundSlopeDegrees slope b of the ground, positive rising from the wall
   * @param wallLeanDegrees lean t of the back of the wall, positive when the soil rests on it (the
   *     foot lies behind the top)
   */
  public record Wall(
      double frictionAngleDegrees,
      double wallFrictionDegrees,
      double groundSlopeDegrees,
      double wallLeanDegrees) {
    public Wall {
      Require.between(frictionAngleDegrees, 1, 60, "angle of shearing resistance", "degrees");
      Require.between(wallFrictionDegrees, 0, frictionAngleDegrees, "wall friction", "degrees");
      Require.between(groundSlopeDegrees, -45, 45, "ground slope", "degrees");
      Require.between(
          wallLeanDegrees, -MOST_LEAN_DEGREES, MOST_LEAN_DEGREES, "wall lean", "degrees");
    }

    /** A vertical wall. */
    public static Wall vertical(
        double frictionAngleDegrees, double wallFrictionDegrees, double groundSlopeDegrees) {
      return new Wall(frictionAngleDegrees, wallFrictionDegrees, groundSlopeDegrees, 0);
    }
  }

  /** Ka; out of range when the ground slopes more steeply than its angle of shearing resistance. */
  public static Outcome<Double> active(Wall wall) {
    if (wall.groundSlopeDegrees() > wall.frictionAngleDegrees()) {
      return Outcome.outOfRange("the ground slope is above the angle of shearing resistance");
    }
    double f = Math.toRadians(wall.frictionAngleDegrees());
    double d = Math.toRadians(wall.wallFrictionDegrees());
    double b = Math.toRadians(wall.groundSlopeDegrees());
    double t = Math.toRadians(wall.wallLeanDegrees());
    double root =
        Math.sqrt(Math.sin(f + d) * Math.sin(f - b) / (Math.cos(d + t) * Math.cos(t - b)));
    return Outcome.of(
        square(Math.cos(f - t)) / (square(Math.cos(t)) * Math.cos(d + t) * square(1 + root)));
  }

  /** Kp; out of range when ground slope and wall friction leave no plane wedge. */
  public static Outcome<Double> passive(Wall wall) {
    double f = Math.toRadians(wall.frictionAngleDegrees());
    double d = Math.toRadians(wall.wallFrictionDegrees());
    double b = Math.toRadians(wall.groundSlopeDegrees());
    double t = Math.toRadians(wall.wallLeanDegrees());
    if (f + b < 0) {
      return Outcome.outOfRange("the ground falls away more steeply than it can stand");
    }
    double bracket =
        1 - Math.sqrt(Math.sin(f + d) * Math.sin(f + b) / (Math.cos(d - t) * Math.cos(t - b)));
    if (bracket < LEAST_BRACKET) {
      return Outcome.outOfRange("wall friction and ground slope leave no plane passive wedge");
    }
    return Outcome.of(
        square(Math.cos(f + t)) / (square(Math.cos(t)) * Math.cos(d - t) * square(bracket)));
  }

  private static double square(double value) {
    return value * value;
  }
}
