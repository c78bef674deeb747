package underhold.mechanics.pile.group;

import underhold.mechanics.soil.Require;

/**
 * Load hung on piles by ground that settles past them.
 *
 * <p>One pile, piece by piece above the neutral plane: alpha su p dz in clay, K tan(delta) sv' p dz
 * in sand. A group at most Qgd = AF gF HF + P H cu. The load is added to the structural load of the
 * pile; it is not taken off the ground's resistance. Symbols: p perimeter of a pile, AF area, P
 * perimeter of the group, HF, gF height and unit weight of fill, H thickness and cu strength of the
 * settling clay. Sources: B. M. Das (single pile, from memory, verify); Civil Engineering Formulas,
 * ch. 4, eq. 4.12, p. 108 (group; seen). It acts only where the ground settles after the piles are
 * made: lowered water, new fill.
 */
public final class Downdrag {
  private Downdrag() {}

  /** Of a piece in clay, kN. */
  public static double clayKilonewtons(
      double alpha,
      double undrainedStrengthKilopascals,
      double perimeterMetres,
      double thicknessMetres) {
    return Require.between(alpha, 0, 1, "alpha", "")
        * Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa")
        * Require.notNegative(perimeterMetres, "perimeter", "m")
        * Require.notNegative(thicknessMetres, "thickness", "m");
  }

  /** Of a piece in sand, kN; sv' at its middle. */
  public static double sandKilonewtons(
      double pressureCoefficient,
      double wallFrictionDegrees,
      double effectiveStressKilopascals,
      double perimeterMetres,
      double thicknessMetres) {
    return Require.between(pressureCoefficient, 0, 5, "K", "")
        * Math.tan(Math.toRadians(Require.frictionAngle(wallFrictionDegrees)))
        * Require.notNegative(effectiveStressKilopascals, "effective stress", "kPa")
        * Require.notNegative(perimeterMetres, "perimeter", "m")
        * Require.notNegative(thicknessMetres, "thickness", "m");
  }

  /** Most that a group can be given, kN. */
  public static double groupKilonewtons(
      double areaSquareMetres,
      double fillUnitWeightKilonewtonsPerCubicMetre,
      double fillMetres,
      double perimeterMetres,
      double clayMetres,
      double undrainedStrengthKilopascals) {
    return Require.notNegative(areaSquareMetres, "area", "m2")
            * Require.notNegative(fillUnitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3")
            * Require.notNegative(fillMetres, "fill", "m")
        + Require.notNegative(perimeterMetres, "perimeter", "m")
            * Require.notNegative(clayMetres, "clay", "m")
            * Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa");
  }
}
