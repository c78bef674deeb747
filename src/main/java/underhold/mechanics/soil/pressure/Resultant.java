package underhold.mechanics.soil.pressure;

/**
 * A horizontal thrust on a wall, per metre run.
 *
 * @param forceKilonewtonsPerMetre size of the thrust
 * @param heightAboveBaseMetres height of its line of action above the foot of the wall
 */
public record Resultant(double forceKilonewtonsPerMetre, double heightAboveBaseMetres) {

  /** Moment about the foot of the wall [kN m per metre]. */
  public double momentAboutBaseKilonewtonMetresPerMetre() {
    return forceKilonewtonsPerMetre * heightAboveBaseMetres;
  }

  /** From a force and its moment about the top of a wall; a zero force acts at mid-height. */
  static Resultant fromTop(double force, double momentAboutTop, double wallHeight) {
    double depth = force > 0 ? momentAboutTop / force : wallHeight / 2;
    return new Resultant(force, wallHeight - Math.min(wallHeight, Math.max(0, depth)));
  }
}
