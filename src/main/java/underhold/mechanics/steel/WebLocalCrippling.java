package underhold.mechanics.steel;

/**
 * Crippling of the web under a force, AISC 360-16 J10.3, Qf = 1; phi 0.75, Omega 2.00.
 *
 * <p>At least d/2 from the end: 0.80 tw^2 [1 + 3 (lb/d)(tw/tf)^1.5] sqrt(E Fyw tf/tw). Nearer: 0.40
 * tw^2 [...] sqrt(...) with the same bracket where lb/d is at most 0.2, else [1 + (4 lb/d -
 * 0.2)(tw/tf)^1.5].
 *
 * <p>From memory, verify; the inside case reproduces AISC Design Examples v15.1, II.B-1.
 */
public final class WebLocalCrippling {
  private WebLocalCrippling() {}

  /** Rn, kN. */
  public static NominalStrength of(RolledSection section, Steel steel, ConcentratedForce force) {
    RolledSection.Plates plates = section.plates();
    double depth = plates.depthMetres();
    double web = plates.webThicknessMetres();
    double flange = plates.flangeThicknessMetres();
    double length = force.bearingMetres() / depth;
    boolean inside = force.fromEndMetres() >= depth / 2;
    double spread = inside || length <= 0.2 ? 3 * length : 4 * length - 0.2;
    double nominal =
        (inside ? 0.80 : 0.40)
            * web
            * web
            * (1 + spread * Math.pow(web / flange, 1.5))
            * Math.sqrt(
                steel.elasticModulusKilopascals() * steel.yieldKilopascals() * flange / web);
    return new NominalStrength(nominal, 0.75, 2.00);
  }
}
