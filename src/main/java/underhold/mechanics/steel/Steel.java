package underhold.mechanics.steel;

/**
 * A structural steel.
 *
 * @param name grade
 * @param yieldKilopascals Fy or fy
 * @param ultimateKilopascals Fu
 * @param elasticModulusKilopascals E
 * @param shearModulusKilopascals G
 */
public record Steel(
    String name,
    double yieldKilopascals,
    double ultimateKilopascals,
    double elasticModulusKilopascals,
    double shearModulusKilopascals) {
  /** 1 kip/in2 in kPa. */
  static final double KILOPASCALS_PER_KSI = 6894.757293168361;

  /** E of AISC 360, 29,000 ksi, kPa. */
  public static final double AISC_MODULUS_KILOPASCALS = 29_000 * KILOPASCALS_PER_KSI;

  /** G of AISC 360, 11,200 ksi, kPa (from memory). */
  public static final double AISC_SHEAR_MODULUS_KILOPASCALS = 11_200 * KILOPASCALS_PER_KSI;

  /** E of EN 1993-1-1, 3.2.6, kPa (from memory). */
  public static final double EUROCODE_MODULUS_KILOPASCALS = 210e6;

  /** G = E / (2 (1 + 0.3)) of EN 1993-1-1, 3.2.6, kPa (from memory). */
  public static final double EUROCODE_SHEAR_MODULUS_KILOPASCALS =
      EUROCODE_MODULUS_KILOPASCALS / 2.6;

  /** ASTM A992: 50 and 65 ksi (AISC Design Examples v15.1, F.1). */
  public static final Steel A992 = aisc("ASTM A992", 50, 65);

  /** ASTM A36: 36 and 58 ksi (AISC Design Examples v15.1). */
  public static final Steel A36 = aisc("ASTM A36", 36, 58);

  /** S235 to 40 mm: 235 and 360 MPa (EN 1993-1-1 Table 3.1, from memory). */
  public static final Steel S235 = eurocode("S235", 235, 360);

  /** S355 to 40 mm: 355 and 490 MPa (EN 1993-1-1 Table 3.1, from memory). */
  public static final Steel S355 = eurocode("S355", 355, 490);

  public Steel {
    Require.positive("yield strength", yieldKilopascals);
    Require.positive("ultimate strength", ultimateKilopascals);
    Require.positive("elastic modulus", elasticModulusKilopascals);
    Require.positive("shear modulus", shearModulusKilopascals);
    if (ultimateKilopascals < yieldKilopascals) {
      throw new IllegalArgumentException("the ultimate strength is below the yield strength");
    }
  }

  /** The same steel with another yield strength; the ultimate follows where it would be lower. */
  public Steel withYield(double otherKilopascals) {
    return new Steel(
        name,
        otherKilopascals,
        Math.max(otherKilopascals, ultimateKilopascals),
        elasticModulusKilopascals,
        shearModulusKilopascals);
  }

  /** sqrt(E / Fy), the root in every limit of AISC 360. */
  public double rootModulusOverYield() {
    return Math.sqrt(elasticModulusKilopascals / yieldKilopascals);
  }

  /** epsilon = sqrt(235 MPa / fy) of EN 1993-1-1. */
  public double epsilon() {
    return Math.sqrt(235_000 / yieldKilopascals);
  }

  private static Steel aisc(String name, double yieldKsi, double ultimateKsi) {
    return new Steel(
        name,
        yieldKsi * KILOPASCALS_PER_KSI,
        ultimateKsi * KILOPASCALS_PER_KSI,
        AISC_MODULUS_KILOPASCALS,
        AISC_SHEAR_MODULUS_KILOPASCALS);
  }

  private static Steel eurocode(String name, double yieldMegapascals, double ultimateMegapascals) {
    return new Steel(
        name,
        yieldMegapascals * 1000,
        ultimateMegapascals * 1000,
        EUROCODE_MODULUS_KILOPASCALS,
        EUROCODE_SHEAR_MODULUS_KILOPASCALS);
  }
}
