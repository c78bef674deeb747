package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * The stretch of shaft that counts for side resistance, after the ends that do not.
 *
 * <p>The upper end leaves out the top 1.5 m (5 ft) or the depth of seasonal change; the lower end
 * leaves out one diameter above the base (rule of 1999), and above a bell one diameter more of the
 * shaft (two in another source). Source: O'Neill and Reese 1999, AASHTO LRFD 10.8.3.5.1b; basis:
 * from memory, verify. The lengths of B. M. Das, example 12.5 (12 ft and 8 ft counted as 7.0 and
 * 5.5 ft), agree by inference.
 *
 * @param fromMetres depth where the shaft begins to count, at least 0
 * @param toMetres depth where it ends, not above {@code fromMetres}
 */
public record ExcludedLength(double fromMetres, double toMetres) {
  /** 5 ft in metres: the top that never counts in clay. */
  public static final double TOP_METRES = 1.524;

  public ExcludedLength {
    Require.notNegative(fromMetres, "top of the counted shaft", "m");
    Require.between(toMetres, fromMetres, Require.LARGEST, "bottom of the counted shaft", "m");
  }

  /**
   * The counted part of a shaft.
   *
   * @param topMetres depth of its top
   * @param baseMetres depth of its base
   * @param topExcludedMetres left out at the top
   * @param baseExcludedMetres left out above the base
   */
  public static ExcludedLength of(
      double topMetres, double baseMetres, double topExcludedMetres, double baseExcludedMetres) {
    Require.notNegative(topExcludedMetres, "length left out at the top", "m");
    Require.notNegative(baseExcludedMetres, "length left out at the base", "m");
    double from = topMetres + topExcludedMetres;
    return new ExcludedLength(from, Math.max(from, baseMetres - baseExcludedMetres));
  }

  /** Counted length, m. */
  public double lengthMetres() {
    return toMetres - fromMetres;
  }

  /** Counted length within a layer, m. */
  public double withinMetres(double layerTopMetres, double layerBottomMetres) {
    return Math.max(
        0, Math.min(toMetres, layerBottomMetres) - Math.max(fromMetres, layerTopMetres));
  }
}
