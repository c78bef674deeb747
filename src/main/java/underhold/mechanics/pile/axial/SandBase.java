package underhold.mechanics.pile.axial;

import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Unit base resistance of bored piles in sand, at a settlement of 5 % of the diameter.
 *
 * <p>qb = 57.5 N60 [kPa], N60 at most 50, at most 2900 kPa (60 ksf); a base wider than 1.27 m (50
 * in) keeps q 1.27/D. Above N60 = 50: qb = 0.59 (N60 pa/sv')^0.8 sv'. Symbols: N60 within two
 * diameters below the base, sv' effective vertical stress at the base [kPa], D diameter of the base
 * [m]. Assumptions: clean base, no boiling in the hole. Source: B. M. Das, Principles of Foundation
 * Engineering, example 12.3 (57.5 N60 and the wide base, seen); limits: O'Neill and Reese 1999;
 * intermediate ground: AASHTO LRFD 10.8.3.5.2c; from memory, verify.
 */
public final class SandBase {
  /** Largest unit base resistance, kPa. */
  public static final double LARGEST_KILOPASCALS = 2900;

  /** Diameter above which the base is reduced, m. */
  public static final double WIDE_METRES = 1.27;

  private static final double PER_BLOW = 57.5;

  /** N60 at which sand ends and intermediate ground begins. */
  public static final double SAND_END = 50;

  private static final double INTERMEDIATE_FACTOR = 0.59;
  private static final double INTERMEDIATE_POWER = 0.8;

  private SandBase() {}

  /** qb of sand, kPa; out of range where N60 is above 50. */
  public static Outcome<Double> baseKilopascals(double blowCount) {
    Require.notNegative(blowCount, "N60", "");
    if (blowCount > SAND_END) {
      return Outcome.outOfRange("N60 is above 50: intermediate ground, another formula applies");
    }
    return Outcome.of(Math.min(PER_BLOW * blowCount, LARGEST_KILOPASCALS));
  }

  /** qb of granular ground of more than 50 blows, kPa; N60 counts to 100 (from memory, verify). */
  public static double intermediateKilopascals(
      double blowCount, double effectiveStressKilopascals) {
    Require.notNegative(blowCount, "N60", "");
    Require.positive(effectiveStressKilopascals, "effective stress", "kPa");
    double ratio =
        Math.min(blowCount, 2 * SAND_END) * Atmosphere.KILOPASCALS / effectiveStressKilopascals;
    return INTERMEDIATE_FACTOR * Math.pow(ratio, INTERMEDIATE_POWER) * effectiveStressKilopascals;
  }

  /** The share kept by a wide base: 1.27/D, at most 1. */
  public static double wideBaseFactor(double diameterMetres) {
    return Math.min(WIDE_METRES / Require.positive(diameterMetres, "diameter", "m"), 1);
  }
}
