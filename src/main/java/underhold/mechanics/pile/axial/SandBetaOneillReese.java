package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Depth-dependent beta of bored piles in sand and in gravelly sand: fs = beta sv'.
 *
 * <p>Sand: beta = 1.5 - 0.245 sqrt(z), from 0.25 to 1.2, times N60/15 where N60 is below 15 (in
 * feet 1.5 - 0.135 sqrt(z)). Gravelly sand: beta = 2.0 - 0.15 z^0.75, from 0.25 to 1.8. fs at most
 * 200 kPa (4 ksf). Symbols: z depth to the middle of the layer [m], sv' effective vertical stress
 * there [kPa], N60 blow count at 60 % energy. Assumptions: drained, hole without collapse.
 * Accuracy: regression of load tests. Source: O'Neill and Reese, FHWA drilled shafts manual, 1999;
 * basis: from memory, verify; the form for gravelly sand was seen in B. M. Das, Principles of
 * Foundation Engineering, example 12.3, its limits are from memory.
 */
public final class SandBetaOneillReese {
  /** Largest unit side resistance, kPa (4 ksf rounded by the metric edition). */
  public static final double LARGEST_SIDE_KILOPASCALS = 200;

  private static final double LEAST = 0.25;
  private static final double SAND_MOST = 1.2;
  private static final double SAND_TOP = 1.5;
  private static final double SAND_SLOPE = 0.245;
  private static final double GRAVEL_MOST = 1.8;
  private static final double GRAVEL_TOP = 2.0;
  private static final double GRAVEL_SLOPE = 0.15;
  private static final double GRAVEL_POWER = 0.75;
  private static final double FULL_BLOW_COUNT = 15;

  private SandBetaOneillReese() {}

  /** beta of sand at a depth, with its blow count. */
  public static double sand(double depthMetres, double blowCount) {
    Require.notNegative(depthMetres, "depth", "m");
    Require.notNegative(blowCount, "N60", "");
    double beta =
        Math.min(Math.max(SAND_TOP - SAND_SLOPE * Math.sqrt(depthMetres), LEAST), SAND_MOST);
    return beta * Math.min(blowCount / FULL_BLOW_COUNT, 1);
  }

  /** beta of gravelly sand at a depth. */
  public static double gravellySand(double depthMetres) {
    Require.notNegative(depthMetres, "depth", "m");
    return Math.min(
        Math.max(GRAVEL_TOP - GRAVEL_SLOPE * Math.pow(depthMetres, GRAVEL_POWER), LEAST),
        GRAVEL_MOST);
  }

  /** Unit side resistance, kPa. */
  public static double sideKilopascals(double beta, double effectiveStressKilopascals) {
    Require.notNegative(beta, "beta", "");
    Require.notNegative(effectiveStressKilopascals, "effective stress", "kPa");
    return Math.min(beta * effectiveStressKilopascals, LARGEST_SIDE_KILOPASCALS);
  }
}
