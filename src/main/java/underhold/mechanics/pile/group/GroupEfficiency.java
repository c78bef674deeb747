package underhold.mechanics.pile.group;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Capacity of a group over the sum of its piles.
 *
 * <p>Block: Eg = [2 (B L + W L) fs + B W g]/(n Qu), at most 1 in use; B, W plan sides of the block,
 * L its depth [m], fs unit side, g unit base resistance [kPa], Qu of one pile [kN] (Civil
 * Engineering Formulas, ch. 4, eq. 4.11, p. 108; seen; given for conventional piles). By spacing:
 * straight from 0.65 at 2.5 D to 1.0 at 4 D in sand (older edition), 0.65 at 2.5 D to 1.0 at 6 D in
 * clay with the cap clear of the ground (AASHTO LRFD 10.8.3.6, from memory, verify). Out of range
 * closer than 2.5 D.
 */
public final class GroupEfficiency {
  /** Closest spacing over diameter for which factors are given. */
  public static final double CLOSEST = 2.5;

  /** Factor at that spacing. */
  public static final double AT_CLOSEST = 0.65;

  private static final double FREE_IN_SAND = 4;
  private static final double FREE_IN_CLAY = 6;

  private GroupEfficiency() {}

  /** Factor in sand by spacing over diameter. */
  public static Outcome<Double> sand(double spacingRatio) {
    return bySpacing(spacingRatio, FREE_IN_SAND);
  }

  /** Factor in clay by spacing over diameter, cap clear of the ground. */
  public static Outcome<Double> clay(double spacingRatio) {
    return bySpacing(spacingRatio, FREE_IN_CLAY);
  }

  private static Outcome<Double> bySpacing(double ratio, double free) {
    Require.positive(ratio, "spacing over diameter", "");
    if (ratio < CLOSEST) {
      return Outcome.outOfRange("piles stand closer than 2.5 diameters");
    }
    double share = Math.min((ratio - CLOSEST) / (free - CLOSEST), 1);
    return Outcome.of(AT_CLOSEST + share * (1 - AT_CLOSEST));
  }

  /**
   * Capacity of the block, kN.
   *
   * @param breadthMetres B
   * @param widthMetres W
   * @param depthMetres L
   * @param sideKilopascals fs
   * @param baseKilopascals g
   */
  public static double blockKilonewtons(
      double breadthMetres,
      double widthMetres,
      double depthMetres,
      double sideKilopascals,
      double baseKilopascals) {
    Require.notNegative(breadthMetres, "breadth", "m");
    Require.notNegative(widthMetres, "width", "m");
    Require.notNegative(depthMetres, "depth", "m");
    Require.notNegative(sideKilopascals, "unit side resistance", "kPa");
    Require.notNegative(baseKilopascals, "unit base resistance", "kPa");
    return 2 * (breadthMetres + widthMetres) * depthMetres * sideKilopascals
        + breadthMetres * widthMetres * baseKilopascals;
  }

  /** Eg of a block, not limited. */
  public static double block(double blockKilonewtons, int piles, double pileKilonewtons) {
    Require.notNegative(blockKilonewtons, "block", "kN");
    Require.between(piles, 1, 1e6, "number of piles", "");
    return blockKilonewtons / (piles * Require.positive(pileKilonewtons, "pile", "kN"));
  }
}
