package underhold.mechanics.steel;

/**
 * Bending of a flange that is pulled, AISC 360-16 J10.1: Rn = 6.25 Fyf tf^2, halved within 10 tf of
 * the end; phi 0.90, Omega 1.67. Does not apply to a force that presses on the flange.
 *
 * <p>From memory, verify; reproduces AISC Design Examples v15.1, II.B-1.
 */
public final class FlangeLocalBending {
  private FlangeLocalBending() {}

  /** Rn, kN. */
  public static NominalStrength pull(RolledSection section, Steel steel, double fromEndMetres) {
    Require.notNegative("distance from the end", fromEndMetres);
    double thickness = section.plates().flangeThicknessMetres();
    double full = 6.25 * steel.yieldKilopascals() * thickness * thickness;
    double nominal = fromEndMetres < 10 * thickness ? full / 2 : full;
    return new NominalStrength(nominal, 0.90, 1.67);
  }
}
