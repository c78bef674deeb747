package underhold.mechanics.steel;

/**
 * A doubly symmetric rolled I section as tabulated.
 *
 * @param name designation
 * @param massKilogramsPerMetre mass per length
 * @param areaSquareMetres A
 * @param plates its dimensions
 * @param strong about the axis across the web
 * @param weak about the axis along the web
 * @param torsion torsion and warping
 */
public record RolledSection(
    String name,
    double massKilogramsPerMetre,
    double areaSquareMetres,
    Plates plates,
    Axis strong,
    Axis weak,
    Torsion torsion) {
  /** Standard gravity in kN per kg. */
  private static final double KILONEWTONS_PER_KILOGRAM = 9.80665e-3;

  public RolledSection {
    Require.positive("mass per length", massKilogramsPerMetre);
    Require.positive("area", areaSquareMetres);
  }

  /** Weight per length, kN/m. */
  public double weightKilonewtonsPerMetre() {
    return massKilogramsPerMetre * KILONEWTONS_PER_KILOGRAM;
  }

  /**
   * Dimensions.
   *
   * @param depthMetres d or h
   * @param flangeWidthMetres bf or b
   * @param webThicknessMetres tw
   * @param flangeThicknessMetres tf
   * @param toeDistanceMetres k, from the flange's outer face to the web toe of the fillet
   * @param flangeSlenderness bf / (2 tf)
   * @param webSlenderness h / tw, h clear between the fillets
   */
  public record Plates(
      double depthMetres,
      double flangeWidthMetres,
      double webThicknessMetres,
      double flangeThicknessMetres,
      double toeDistanceMetres,
      double flangeSlenderness,
      double webSlenderness) {
    public Plates {
      Require.positive("depth", depthMetres);
      Require.positive("flange width", flangeWidthMetres);
      Require.positive("web thickness", webThicknessMetres);
      Require.positive("flange thickness", flangeThicknessMetres);
      Require.positive("toe distance k", toeDistanceMetres);
      Require.positive("flange slenderness", flangeSlenderness);
      Require.positive("web slenderness", webSlenderness);
      if (depthMetres <= 2 * flangeThicknessMetres || toeDistanceMetres < flangeThicknessMetres) {
        throw new IllegalArgumentException("the flanges leave no web");
      }
    }

    /** h, clear between the fillets, m. */
    public double clearWebMetres() {
      return webSlenderness * webThicknessMetres;
    }

    /** hw, clear between the flanges, m. */
    public double webBetweenFlangesMetres() {
      return depthMetres - 2 * flangeThicknessMetres;
    }

    /** r, fillet radius from k, m. */
    public double filletMetres() {
      return toeDistanceMetres - flangeThicknessMetres;
    }
  }

  /**
   * Properties about one axis.
   *
   * @param secondMoment I, m4
   * @param elasticModulus S or Wel, m3
   * @param plasticModulus Z or Wpl, m3
   * @param radiusMetres r or i
   */
  public record Axis(
      double secondMoment, double elasticModulus, double plasticModulus, double radiusMetres) {
    public Axis {
      Require.positive("second moment of area", secondMoment);
      Require.positive("elastic modulus of section", elasticModulus);
      Require.positive("plastic modulus of section", plasticModulus);
      Require.positive("radius of gyration", radiusMetres);
    }
  }

  /**
   * Properties in torsion.
   *
   * @param constant J or It, m4
   * @param warping Cw or Iw, m6
   * @param effectiveRadiusMetres rts = sqrt(sqrt(Iy Cw) / Sx)
   * @param flangeDistanceMetres ho, between the flange centres
   */
  public record Torsion(
      double constant, double warping, double effectiveRadiusMetres, double flangeDistanceMetres) {
    public Torsion {
      Require.positive("torsion constant", constant);
      Require.positive("warping constant", warping);
      Require.positive("effective radius", effectiveRadiusMetres);
      Require.positive("distance of the flange centres", flangeDistanceMetres);
    }
  }
}
