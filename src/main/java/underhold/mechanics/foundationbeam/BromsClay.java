package underhold.mechanics.foundationbeam;

/**
 * Ultimate lateral resistance of a free-headed pile in clay: resistance 9 su b below 1.5 b.
 *
 * <pre>
 * f = H / (9 su b)      Mmax = M + H (1.5 b + 0.5 f)
 * g = sqrt(Mmax / (2.25 su b))     L = 1.5 b + f + g
 * </pre>
 *
 * <p>M head moment at ground level, H head force, both already factored (by 2 on live and 1.5 on
 * dead load, or su by 0.75). Valid while Mmax stays below the pile's own yield moment; beyond it
 * the pile is long and breaks first. Constant su. Source: B. B. Broms, Lateral resistance of piles
 * in cohesive soils, 1964. Basis: from memory, verify.
 *
 * @param undrainedStrengthKilopascals su
 * @param widthMetres b, width or diameter
 */
public record BromsClay(double undrainedStrengthKilopascals, double widthMetres) {
  private static final double BEARING_FACTOR = 9;
  private static final double DEAD_ZONE_WIDTHS = 1.5;

  public BromsClay {
    Require.positive("undrained strength", undrainedStrengthKilopascals);
    Require.positive("width", widthMetres);
  }

  /** Depth f of the point of greatest moment below 1.5 b, m. */
  public double depthOfGreatestMoment(double forceKilonewtons) {
    Require.notNegative("force", forceKilonewtons);
    return forceKilonewtons / resistance();
  }

  /** Greatest moment in the pile, kN m. */
  public double greatestMoment(double momentKilonewtonMetres, double forceKilonewtons) {
    Require.notNegative("moment", momentKilonewtonMetres);
    return momentKilonewtonMetres
        + forceKilonewtons
            * (DEAD_ZONE_WIDTHS * widthMetres + depthOfGreatestMoment(forceKilonewtons) / 2);
  }

  /** Length g below the point of greatest moment that resists it, m. */
  public double resistingLength(double momentKilonewtonMetres, double forceKilonewtons) {
    return Math.sqrt(greatestMoment(momentKilonewtonMetres, forceKilonewtons) / (resistance() / 4));
  }

  /** Least length in the ground L, m. */
  public double leastLength(double momentKilonewtonMetres, double forceKilonewtons) {
    return DEAD_ZONE_WIDTHS * widthMetres
        + depthOfGreatestMoment(forceKilonewtons)
        + resistingLength(momentKilonewtonMetres, forceKilonewtons);
  }

  private double resistance() {
    return BEARING_FACTOR * undrainedStrengthKilopascals * widthMetres;
  }
}
