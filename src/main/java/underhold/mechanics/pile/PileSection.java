package underhold.mechanics.pile;

import underhold.mechanics.soil.Require;

/**
 * A round pile: steel casing filled with concrete or grout, or concrete alone.
 *
 * <p>Steel area As = pi (D^2 - d^2)/4, inertia Is = pi (D^4 - d^4)/64 with d = D - 2 t; the fill
 * has the circle of diameter d. Loss of thickness (rust, threads) is taken off t by the caller.
 * Geometry only.
 *
 * @param diameterMetres outer diameter D
 * @param wallMetres wall t of the casing, 0 for concrete alone, below D/2
 */
public record PileSection(double diameterMetres, double wallMetres) {
  public PileSection {
    Require.positive(diameterMetres, "diameter", "m");
    Require.notNegative(wallMetres, "wall of the casing", "m");
    if (wallMetres >= diameterMetres / 2) {
      throw new IllegalArgumentException(
          "wall of the casing is " + wallMetres + " m, it must be below half the diameter");
    }
  }

  /** A pile without casing. */
  public static PileSection uncased(double diameterMetres) {
    return new PileSection(diameterMetres, 0);
  }

  /** Area of the whole circle, m2. */
  public double grossAreaSquareMetres() {
    return Math.PI * diameterMetres * diameterMetres / 4;
  }

  /** Perimeter, m. */
  public double perimeterMetres() {
    return Math.PI * diameterMetres;
  }

  /** Inner diameter of the casing, m. */
  public double innerDiameterMetres() {
    return diameterMetres - 2 * wallMetres;
  }

  /** Area of the fill, m2. */
  public double fillAreaSquareMetres() {
    return Math.PI * innerDiameterMetres() * innerDiameterMetres() / 4;
  }

  /** Area of the casing, m2. */
  public double casingAreaSquareMetres() {
    return Math.PI * wallMetres * (diameterMetres - wallMetres);
  }

  /** Second moment of area of the casing, m4. */
  public double casingInertia() {
    double inner = innerDiameterMetres();
    return casingAreaSquareMetres() * (diameterMetres * diameterMetres + inner * inner) / 16;
  }

  /** Second moment of area of the whole circle, m4. */
  public double grossInertia() {
    return Math.PI * Math.pow(diameterMetres, 4) / 64;
  }

  /**
   * Axial stiffness E A of casing and fill together, kN.
   *
   * @param steelKilopascals modulus of steel
   * @param fillKilopascals modulus of concrete or grout
   */
  public double axialStiffnessKilonewtons(double steelKilopascals, double fillKilopascals) {
    Require.positive(steelKilopascals, "modulus of steel", "kPa");
    Require.positive(fillKilopascals, "modulus of the fill", "kPa");
    return steelKilopascals * casingAreaSquareMetres() + fillKilopascals * fillAreaSquareMetres();
  }
}
