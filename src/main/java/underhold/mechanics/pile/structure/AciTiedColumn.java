package underhold.mechanics.pile.structure;

import underhold.mechanics.soil.Require;

/**
 * Axial design strength of tied reinforced concrete.
 *
 * <p>phi Pn = 0.65 x 0.80 [0.85 f'c (Ag - As) + fy As]. Symbols: f'c, fy [kPa], areas [m2].
 * Assumptions: short, held sideways, small eccentricity only. Source: ACI 318 chapter 22; basis:
 * from memory, verify.
 */
public final class AciTiedColumn {
  /** phi, tied. */
  public static final double PHI = 0.65;

  private static final double ECCENTRICITY = 0.80;
  private static final double BLOCK = 0.85;

  private AciTiedColumn() {}

  /** phi Pn, kN. */
  public static double designKilonewtons(
      double grossAreaSquareMetres,
      double barAreaSquareMetres,
      double strengthKilopascals,
      double yieldKilopascals) {
    Require.positive(grossAreaSquareMetres, "area", "m2");
    Require.between(barAreaSquareMetres, 0, grossAreaSquareMetres, "area of bars", "m2");
    Require.positive(strengthKilopascals, "f'c", "kPa");
    Require.notNegative(yieldKilopascals, "yield stress", "kPa");
    return PHI
        * ECCENTRICITY
        * (BLOCK * strengthKilopascals * (grossAreaSquareMetres - barAreaSquareMetres)
            + yieldKilopascals * barAreaSquareMetres);
  }
}
