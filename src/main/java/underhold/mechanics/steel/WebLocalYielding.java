package underhold.mechanics.steel;

/**
 * Yielding of the web under a force, AISC 360-16 J10.2: Rn = Fyw tw (5 k + lb) where the force acts
 * more than d from the end, else Fyw tw (2.5 k + lb); phi 1.00, Omega 1.50.
 *
 * <p>Lengths of spread read, factors from memory; together they reproduce AISC Design Examples
 * v15.1, II.B-1.
 */
public final class WebLocalYielding {
  private WebLocalYielding() {}

  /** Whether the force counts as inside the beam: more than d from its end. */
  public static boolean inside(RolledSection section, ConcentratedForce force) {
    return force.fromEndMetres() > section.plates().depthMetres();
  }

  /** Rn, kN. */
  public static NominalStrength of(RolledSection section, Steel steel, ConcentratedForce force) {
    RolledSection.Plates plates = section.plates();
    double spread = (inside(section, force) ? 5 : 2.5) * plates.toeDistanceMetres();
    double nominal =
        steel.yieldKilopascals() * plates.webThicknessMetres() * (spread + force.bearingMetres());
    return new NominalStrength(nominal, 1.00, 1.50);
  }
}
