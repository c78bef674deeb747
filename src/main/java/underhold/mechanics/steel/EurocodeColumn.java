package underhold.mechanics.steel;

/**
 * Compression by flexural buckling, EN 1993-1-1 6.3.1, gamma M1 = 1.0: lambda = sqrt(A fy / Ncr);
 * phi = 0.5 (1 + a (lambda - 0.2) + lambda^2); chi = 1 / (phi + sqrt(phi^2 - lambda^2)) at most 1;
 * Nb = chi A fy.
 *
 * <p>From memory, verify. Classes 1 to 3 only.
 *
 * @param areaSquareMetres A
 * @param radiusMetres i about the buckling axis
 * @param lengthMetres buckling length
 * @param steel the steel
 * @param curve buckling curve
 */
public record EurocodeColumn(
    double areaSquareMetres, double radiusMetres, double lengthMetres, Steel steel, Curve curve) {

  /** Buckling curves of EN 1993-1-1 Table 6.1. */
  public enum Curve {
    /** a0. */
    A0(0.13),
    /** a. */
    A(0.21),
    /** b. */
    B(0.34),
    /** c, that of bearing stiffeners. */
    C(0.49),
    /** d. */
    D(0.76);

    private final double imperfection;

    Curve(double imperfection) {
      this.imperfection = imperfection;
    }

    /** alpha. */
    public double imperfection() {
      return imperfection;
    }
  }

  public EurocodeColumn {
    Require.positive("area", areaSquareMetres);
    Require.positive("radius of gyration", radiusMetres);
    Require.positive("buckling length", lengthMetres);
  }

  /** Relative slenderness. */
  public double slenderness() {
    return lengthMetres / (Math.PI * radiusMetres) / steel.rootModulusOverYield();
  }

  /** chi. */
  public double reduction() {
    double lambda = slenderness();
    double phi = 0.5 * (1 + curve.imperfection() * (lambda - 0.2) + lambda * lambda);
    double inRoot = Math.max(0, phi * phi - lambda * lambda);
    return Math.min(1, 1 / (phi + Math.sqrt(inRoot)));
  }

  /** Nb,Rd, kN. */
  public double resistance() {
    return reduction() * areaSquareMetres * steel.yieldKilopascals();
  }
}
