package underhold.mechanics.concrete;

/**
 * Structural plain concrete, ACI 318-19 chapter 14 (14.5.2.1 flexure, 14.5.5.1 shear, 14.5.6.1
 * bearing, 14.5.1.7 thickness cast against soil), strength design with phi = 0.60.
 *
 * <p>Mn = least of 5 lambda sqrt(f'c) Sm and 0.85 f'c Sm; Vn = (4/3) lambda sqrt(f'c) b h; Bn =
 * 0.85 f'c A1 sqrt(A2/A1) with the root at most 2 (f'c in psi). The metric edition prints 0.42 and
 * 0.11 (f'c in MPa) for 5 and 4/3, which convert to 0.415 and 0.111. Basis: from memory, verify.
 * Assumes uncracked sections and no tension credit elsewhere.
 *
 * @param strengthKilopascals f'c, specified compressive strength; ACI asks for at least 2,500 psi
 *     (17.2 MPa)
 * @param lightweightFactor lambda, 1.0 for normal weight concrete
 * @param edition which edition's coefficients
 */
public record PlainConcrete(double strengthKilopascals, double lightweightFactor, Edition edition) {
  /** Strength reduction factor of plain concrete, ACI 318-19 Table 21.2.1 (from memory). */
  public static final double PHI = 0.60;

  /** Least specified strength, 2,500 psi, kPa (from memory). */
  public static final double LEAST_STRENGTH_KILOPASCALS = 2500 * 6.894757293168361;

  /** Thickness not counted where concrete is cast against soil, 2 in, m (14.5.1.7, from memory). */
  public static final double LOST_AGAINST_SOIL_METRES = 0.0508;

  /** Coefficients as printed. */
  public enum Edition {
    /** ACI 318-19, f'c in psi: 5 and 4/3. */
    INCH_POUND(5 * Math.sqrt(6.894757293168361), 4.0 / 3 * Math.sqrt(6.894757293168361)),
    /** ACI 318M-19, f'c in MPa: 0.42 and 0.11. */
    METRIC(0.42 * Math.sqrt(1000), 0.11 * Math.sqrt(1000));

    private final double flexure;
    private final double shear;

    Edition(double flexure, double shear) {
      this.flexure = flexure;
      this.shear = shear;
    }
  }

  public PlainConcrete {
    Require.positive("concrete strength", strengthKilopascals);
    Require.positive("lightweight factor", lightweightFactor);
  }

  /** Normal weight concrete, inch-pound coefficients. */
  public static PlainConcrete normalWeight(double strengthKilopascals) {
    return new PlainConcrete(strengthKilopascals, 1.0, Edition.INCH_POUND);
  }

  /** Modulus of a strip one metre long, h^2 / 6, m3/m. */
  public static double sectionModulus(double thicknessMetres) {
    Require.positive("thickness", thicknessMetres);
    return thicknessMetres * thicknessMetres / 6;
  }

  /**
   * Thickness that counts for strength where the concrete is cast against soil; 0 where nothing is
   * left.
   */
  public static double effectiveThickness(double thicknessMetres) {
    Require.positive("thickness", thicknessMetres);
    return Math.max(0, thicknessMetres - LOST_AGAINST_SOIL_METRES);
  }

  /** Flexural tensile stress at nominal strength, kPa. */
  public double flexuralTension() {
    return edition.flexure * lightweightFactor * Math.sqrt(strengthKilopascals);
  }

  /** Nominal one-way shear stress, kPa. */
  public double shearStress() {
    return edition.shear * lightweightFactor * Math.sqrt(strengthKilopascals);
  }

  /** phi Mn of a section of that modulus, kN m (per metre if the modulus is per metre). */
  public double designMoment(double sectionModulus) {
    Require.positive("section modulus", sectionModulus);
    return PHI * Math.min(flexuralTension(), 0.85 * strengthKilopascals) * sectionModulus;
  }

  /** phi Vn of a section of that area, kN (per metre if the area is per metre). */
  public double designShear(double areaSquareMetres) {
    Require.positive("shear area", areaSquareMetres);
    return PHI * shearStress() * areaSquareMetres;
  }

  /** phi Bn of a loaded area A1 on a support A2 of the same centre, kN. */
  public double designBearing(double loadedAreaSquareMetres, double supportAreaSquareMetres) {
    Require.positive("loaded area", loadedAreaSquareMetres);
    if (!(supportAreaSquareMetres >= loadedAreaSquareMetres)) {
      throw new IllegalArgumentException("the support is smaller than the loaded area");
    }
    double spread = Math.min(2, Math.sqrt(supportAreaSquareMetres / loadedAreaSquareMetres));
    return PHI * 0.85 * strengthKilopascals * loadedAreaSquareMetres * spread;
  }
}
