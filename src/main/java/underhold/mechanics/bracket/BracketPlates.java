package underhold.mechanics.bracket;

/**
 * Plates side by side that cantilever from the pile and carry the load by bending in their plane.
 *
 * <pre>
 * S = n t d^2 / 6     Z = n t d^2 / 4
 * Mn = Fy Z (at most 1.6 Fy S)                    Lb d/t^2 up to 0.08 E/Fy
 * Mn = [1.52 - 0.274 (Lb d/t^2) Fy/E] Fy S        up to 1.9 E/Fy
 * Mn = 1.9 E S / (Lb d/t^2)                       above
 * M allowable = Mn / 1.67     V allowable = 0.6 Fy n t d / 1.50
 * </pre>
 *
 * <p>Lb length of the compressed edge that nothing holds. Cb 1. Sources: AISC 360 F11 and J4.2.
 * Basis: from memory, verify.
 *
 * @param count n
 * @param thicknessMetres t of one plate
 * @param depthMetres d
 * @param yieldKilopascals Fy
 * @param unbracedMetres Lb
 */
public record BracketPlates(
    int count,
    double thicknessMetres,
    double depthMetres,
    double yieldKilopascals,
    double unbracedMetres) {
  /** Safety factor of bending. */
  public static final double BENDING_SAFETY = 1.67;

  /** Safety factor of shear yielding. */
  public static final double SHEAR_SAFETY = 1.50;

  /** Shear yield as a share of Fy. */
  public static final double SHEAR_SHARE = 0.6;

  private static final double STEEL_MODULUS = 29_000 * Units.KSI;
  private static final double PLASTIC_LIMIT = 0.08;
  private static final double ELASTIC_LIMIT = 1.9;
  private static final double GREATEST_SHAPE = 1.6;

  public BracketPlates {
    if (count < 1) {
      throw new IllegalArgumentException("there is at least one plate");
    }
    Require.positive("thickness", thicknessMetres);
    Require.positive("depth", depthMetres);
    Require.positive("yield", yieldKilopascals);
    Require.notNegative("unbraced length", unbracedMetres);
  }

  /** Area, m2. */
  public double area() {
    return count * thicknessMetres * depthMetres;
  }

  /** S, m3. */
  public double sectionModulus() {
    return area() * depthMetres / 6;
  }

  /** Z, m3. */
  public double plasticModulus() {
    return area() * depthMetres / 4;
  }

  /** Lb d / t^2. */
  public double slenderness() {
    return unbracedMetres * depthMetres / (thicknessMetres * thicknessMetres);
  }

  /** Nominal moment, kN m. */
  public double nominalMoment() {
    double first = yieldKilopascals * sectionModulus();
    double plastic = Math.min(yieldKilopascals * plasticModulus(), GREATEST_SHAPE * first);
    double scale = STEEL_MODULUS / yieldKilopascals;
    if (slenderness() <= PLASTIC_LIMIT * scale) {
      return plastic;
    }
    if (slenderness() <= ELASTIC_LIMIT * scale) {
      return Math.min(plastic, (1.52 - 0.274 * slenderness() / scale) * first);
    }
    return Math.min(plastic, ELASTIC_LIMIT * STEEL_MODULUS * sectionModulus() / slenderness());
  }

  /** Allowable moment, kN m. */
  public double allowableMoment() {
    return nominalMoment() / BENDING_SAFETY;
  }

  /** Allowable shear, kN. */
  public double allowableShear() {
    return SHEAR_SHARE * yieldKilopascals * area() / SHEAR_SAFETY;
  }

  /** Bending stress M/S, kPa. */
  public double bendingStress(double momentKilonewtonMetres) {
    Require.notNegative("moment", momentKilonewtonMetres);
    return momentKilonewtonMetres / sectionModulus();
  }
}
