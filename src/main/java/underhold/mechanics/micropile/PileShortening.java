package underhold.mechanics.micropile;

/**
 * Elastic shortening: P L / (EA) over the length that carries the whole load, a share of P Lb /
 * (EA) over the bond length.
 *
 * <p>The share is one half where bond is even along the length and one third where stiff ground
 * takes the load high up (by statics). EA = Es As + Ec Ag, Ec = 57,000 sqrt(f'c) psi (ACI 318, from
 * memory, verify). Slip at the wall of the hole is apart.
 */
public final class PileShortening {
  /** Share of the bond length with even transfer. */
  public static final double EVEN_TRANSFER = 0.5;

  private static final double CONCRETE_MODULUS_FACTOR = 57_000;

  private PileShortening() {}

  /** Ec of normal weight grout or concrete, kPa. */
  public static double concreteModulus(double strengthKilopascals) {
    Require.positive("strength", strengthKilopascals);
    return CONCRETE_MODULUS_FACTOR * Math.sqrt(strengthKilopascals / Units.PSI) * Units.PSI;
  }

  /** EA of steel and grout together, kN. */
  public static double axialStiffness(
      double steelAreaSquareMetres, double groutAreaSquareMetres, double groutKilopascals) {
    Require.notNegative("steel area", steelAreaSquareMetres);
    Require.notNegative("grout area", groutAreaSquareMetres);
    return FreeLength.STEEL_MODULUS_KILOPASCALS * steelAreaSquareMetres
        + concreteModulus(groutKilopascals) * groutAreaSquareMetres;
  }

  /** Shortening of a length that carries the load whole, m. */
  public static double whole(
      double loadKilonewtons, double lengthMetres, double axialStiffnessKilonewtons) {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("length", lengthMetres);
    Require.positive("axial stiffness", axialStiffnessKilonewtons);
    return loadKilonewtons * lengthMetres / axialStiffnessKilonewtons;
  }

  /** What is left after a share of it was preloaded out. */
  public static double residual(double shorteningMetres, double preloadShare) {
    Require.notNegative("shortening", shorteningMetres);
    Require.notNegative("preload share", preloadShare);
    return Math.max(0, 1 - preloadShare) * shorteningMetres;
  }
}
