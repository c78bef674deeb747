package underhold.mechanics.steel;

/**
 * Compression by flexural buckling, AISC 360-16 E3: Fe = pi^2 E / (Lc/r)^2; Fcr = 0.658^(Fy/Fe) Fy
 * where Lc/r is at most 4.71 sqrt(E/Fy), else 0.877 Fe; Pn = Fcr A; phi 0.90, Omega 1.67.
 *
 * <p>Read in a university's column notes and in AISC Design Examples v15.1 (E.1A). Valid for
 * elements that are not slender in compression.
 *
 * @param areaSquareMetres A
 * @param radiusMetres r about the buckling axis
 * @param effectiveLengthMetres Lc = K L
 * @param steel the steel
 */
public record FlexuralBuckling(
    double areaSquareMetres, double radiusMetres, double effectiveLengthMetres, Steel steel) {
  private static final double LIMIT = 4.71;

  public FlexuralBuckling {
    Require.positive("area", areaSquareMetres);
    Require.positive("radius of gyration", radiusMetres);
    Require.positive("effective length", effectiveLengthMetres);
  }

  /** Lc / r. */
  public double slenderness() {
    return effectiveLengthMetres / radiusMetres;
  }

  /** Fe, kPa. */
  public double elasticStressKilopascals() {
    return Math.PI * Math.PI * steel.elasticModulusKilopascals() / (slenderness() * slenderness());
  }

  /** Fcr, kPa. */
  public double criticalStressKilopascals() {
    double elastic = elasticStressKilopascals();
    return slenderness() <= LIMIT * steel.rootModulusOverYield()
        ? Math.pow(0.658, steel.yieldKilopascals() / elastic) * steel.yieldKilopascals()
        : 0.877 * elastic;
  }

  /** Pn, kN. */
  public NominalStrength compression() {
    return new NominalStrength(criticalStressKilopascals() * areaSquareMetres, 0.90, 1.67);
  }
}
