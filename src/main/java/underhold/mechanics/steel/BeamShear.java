package underhold.mechanics.steel;

/**
 * Shear of a rolled I section, AISC 360-16.
 *
 * <p>Along the web (G2.1): Vn = 0.6 Fy d tw Cv1; phi 1.00, Omega 1.50 where h/tw is at most 2.24
 * sqrt(E/Fy) with Cv1 = 1; else phi 0.90, Omega 1.67 with Cv1 = 1 up to h/tw = 1.10 sqrt(kv E/Fy)
 * (kv 5.34, no stiffeners) and 1.10 sqrt(kv E/Fy) / (h/tw) beyond. Across the web (G6): Vn = 0.6 Fy
 * bf tf Cv2 for each of the two flanges; phi 0.90, Omega 1.67; Cv2 = 1 for the W shapes of ASTM A6
 * at Fy up to 70 ksi, which is the valid range here.
 *
 * <p>Source: AISC 360-16 G2.1 and G6, read in AISC Design Examples v15.1 (G.1A, G.6); the web
 * limits from memory.
 *
 * @param section the section
 * @param steel its steel
 */
public record BeamShear(RolledSection section, Steel steel) {
  private static final double STOCKY_WEB = 2.24;
  private static final double PLATE_BUCKLING = 5.34;

  /** Whether h/tw is at most 2.24 sqrt(E/Fy). */
  public boolean stockyWeb() {
    return section.plates().webSlenderness() <= STOCKY_WEB * steel.rootModulusOverYield();
  }

  /** Along the web, kN. */
  public NominalStrength alongWeb() {
    RolledSection.Plates plates = section.plates();
    double yield =
        0.6 * steel.yieldKilopascals() * plates.depthMetres() * plates.webThicknessMetres();
    double limit = 1.10 * Math.sqrt(PLATE_BUCKLING) * steel.rootModulusOverYield();
    double coefficient = Math.min(1, limit / plates.webSlenderness());
    return stockyWeb()
        ? new NominalStrength(yield, 1.00, 1.50)
        : new NominalStrength(yield * coefficient, 0.90, 1.67);
  }

  /** Across the web, both flanges, kN. */
  public NominalStrength acrossWeb() {
    RolledSection.Plates plates = section.plates();
    double nominal =
        2
            * 0.6
            * steel.yieldKilopascals()
            * plates.flangeWidthMetres()
            * plates.flangeThicknessMetres();
    return new NominalStrength(nominal, 0.90, 1.67);
  }
}
