package underhold.mechanics.steel;

/**
 * A pair of full-depth stiffeners at a force, AISC 360-16 J10.8, J4.4 and J7.
 *
 * <p>As a column: the two plates and a strip of web 25 tw long (12 tw at the end of the beam), Lc =
 * 0.75 h, by E3. In bearing on the flange: Rn = 1.8 Fy Apb, phi 0.75, Omega 2.00, on the plates'
 * width less the clip at the fillet. Least sizes: width + tw/2 at least bf/3; thickness at least
 * tf/2 and width/16. The welds are not covered here.
 *
 * <p>From memory, verify. E3 in place of Fy A for stocky stiffeners (J4.4) is on the safe side.
 *
 * @param section the beam
 * @param steel steel of beam and plates
 * @param widthMetres b, of one plate
 * @param thicknessMetres ts
 * @param clipMetres cut off each plate at the fillet, not bearing
 */
public record BearingStiffeners(
    RolledSection section,
    Steel steel,
    double widthMetres,
    double thicknessMetres,
    double clipMetres) {
  private static final double INSIDE_STRIP = 25;
  private static final double END_STRIP = 12;
  private static final double EFFECTIVE_LENGTH = 0.75;

  public BearingStiffeners {
    Require.positive("width of a stiffener", widthMetres);
    Require.positive("thickness of a stiffener", thicknessMetres);
    Require.notNegative("clip of a stiffener", clipMetres);
    if (clipMetres >= widthMetres) {
      throw new IllegalArgumentException("the clip takes the whole width of the stiffener");
    }
  }

  /** Plates as wide as the flange lets them be, clipped by the fillet's radius. */
  public static BearingStiffeners fullWidth(
      RolledSection section, Steel steel, double thicknessMetres) {
    return new BearingStiffeners(
        section, steel, fullWidthMetres(section), thicknessMetres, section.plates().filletMetres());
  }

  /** (bf - tw) / 2, m. */
  public static double fullWidthMetres(RolledSection section) {
    return (section.plates().flangeWidthMetres() - section.plates().webThicknessMetres()) / 2;
  }

  /** Least thickness of plates of that width: tf/2 and b/16, m. */
  public static double leastThicknessMetres(RolledSection section, double widthMetres) {
    return Math.max(section.plates().flangeThicknessMetres() / 2, widthMetres / 16);
  }

  /** Whether width and thickness reach the least sizes. */
  public boolean bigEnough() {
    double reach = widthMetres + section.plates().webThicknessMetres() / 2;
    return reach >= section.plates().flangeWidthMetres() / 3
        && thicknessMetres >= leastThicknessMetres(section, widthMetres);
  }

  /** Area of plates and web strip, m2. */
  public double columnArea(boolean inside) {
    double web = section.plates().webThicknessMetres();
    return 2 * widthMetres * thicknessMetres + strip(inside) * web;
  }

  /** Radius of gyration of plates and strip about the web, m. */
  public double columnRadius(boolean inside) {
    double web = section.plates().webThicknessMetres();
    double across = 2 * widthMetres + web;
    double bareStrip = Math.max(0, strip(inside) - thicknessMetres);
    double inertia = thicknessMetres * Math.pow(across, 3) / 12 + bareStrip * Math.pow(web, 3) / 12;
    return Math.sqrt(inertia / columnArea(inside));
  }

  /** Column strength, kN. */
  public NominalStrength column(boolean inside) {
    return new FlexuralBuckling(
            columnArea(inside),
            columnRadius(inside),
            EFFECTIVE_LENGTH * section.plates().clearWebMetres(),
            steel)
        .compression();
  }

  /** Bearing on the flange, kN. */
  public NominalStrength bearing() {
    double area = 2 * (widthMetres - clipMetres) * thicknessMetres;
    return new NominalStrength(1.8 * steel.yieldKilopascals() * area, 0.75, 2.00);
  }

  /** Mass of the pair, kg, at 7,850 kg/m3. */
  public double massKilograms() {
    return 7850 * 2 * widthMetres * thicknessMetres * section.plates().webBetweenFlangesMetres();
  }

  private double strip(boolean inside) {
    return (inside ? INSIDE_STRIP : END_STRIP) * section.plates().webThicknessMetres();
  }
}
