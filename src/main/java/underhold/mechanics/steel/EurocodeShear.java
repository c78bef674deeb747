package underhold.mechanics.steel;

/**
 * Plastic shear resistance of a rolled I section along its web, EN 1993-1-1 6.2.6: Vpl = Av fy /
 * sqrt(3), Av = A - 2 b tf + (tw + 2r) tf, at least eta hw tw with eta = 1.0; gamma M0 = 1.0.
 *
 * <p>From memory, verify. Valid where hw/tw is at most 72 epsilon; slenderer webs are refused.
 */
public final class EurocodeShear {
  private EurocodeShear() {}

  /** Av, m2. */
  public static double area(RolledSection section) {
    RolledSection.Plates plates = section.plates();
    double flange = plates.flangeThicknessMetres();
    double rolled =
        section.areaSquareMetres()
            - 2 * plates.flangeWidthMetres() * flange
            + (plates.webThicknessMetres() + 2 * plates.filletMetres()) * flange;
    return Math.max(rolled, plates.webBetweenFlangesMetres() * plates.webThicknessMetres());
  }

  /** Whether the web is stocky enough to yield before it buckles. */
  public static boolean applies(RolledSection section, Steel steel) {
    RolledSection.Plates plates = section.plates();
    return plates.webBetweenFlangesMetres() / plates.webThicknessMetres() <= 72 * steel.epsilon();
  }

  /** Vpl,Rd, kN. */
  public static double resistance(RolledSection section, Steel steel) {
    if (!applies(section, steel)) {
      throw new IllegalArgumentException(section.name() + ": the web buckles in shear");
    }
    return area(section) * steel.yieldKilopascals() / Math.sqrt(3);
  }
}
