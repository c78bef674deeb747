package underhold.mechanics.steel;

/**
 * Steel bearing on concrete, AISC 360-16 J8: Pp = 0.85 f'c A1 sqrt(A2/A1), the root at most 2; phi
 * 0.65, Omega 2.31; and the plate between, in bending beyond the web.
 *
 * <p>0.65 and 0.85 f'c A1 read in AISC Design Examples v15.1; the plate t = n sqrt(2 R / (0.90 Fy
 * A1)) with a factored R reproduces a handbook's bearing plate (p. 1.165).
 */
public final class BearingOnConcrete {
  /** Resistance factor. */
  public static final double PHI = 0.65;

  /** Safety factor. */
  public static final double OMEGA = 2.31;

  private BearingOnConcrete() {}

  /**
   * Pp, kN.
   *
   * @param loadedSquareMetres A1
   * @param supportSquareMetres A2, alike and concentric, at least A1
   */
  public static NominalStrength of(
      double strengthKilopascals, double loadedSquareMetres, double supportSquareMetres) {
    Require.positive("concrete strength", strengthKilopascals);
    Require.positive("loaded area", loadedSquareMetres);
    Require.positive("area of the support", supportSquareMetres);
    if (supportSquareMetres < loadedSquareMetres) {
      throw new IllegalArgumentException("the support is smaller than the loaded area");
    }
    double spread = Math.min(2, Math.sqrt(supportSquareMetres / loadedSquareMetres));
    return new NominalStrength(
        0.85 * strengthKilopascals * loadedSquareMetres * spread, PHI, OMEGA);
  }

  /**
   * Least thickness of a plate, m.
   *
   * @param forceKilonewtons R, factored
   * @param overhangMetres n, from the web's fillet to the plate's edge
   * @param areaSquareMetres A1
   */
  public static double plateThickness(
      double forceKilonewtons, double overhangMetres, double areaSquareMetres, Steel steel) {
    Require.notNegative("force", forceKilonewtons);
    Require.positive("overhang", overhangMetres);
    Require.positive("area of the plate", areaSquareMetres);
    return overhangMetres
        * Math.sqrt(
            2
                * forceKilonewtons
                / (StrongAxisFlexure.PHI * steel.yieldKilopascals() * areaSquareMetres));
  }
}
