package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * An excavation beside a footing, in section.
 *
 * @param gapMetres from the edge of the footing to the face of the excavation
 * @param belowFootingMetres base of the excavation below the underside of the footing; negative
 *     where it stays above
 * @param depthMetres base of the excavation below the ground
 * @param historic whether the structure is protected
 */
public record ExcavationBeside(
    double gapMetres, double belowFootingMetres, double depthMetres, boolean historic) {
  public ExcavationBeside {
    Require.notNegative(gapMetres, "gap to the excavation", "m");
    Require.finite(belowFootingMetres, "excavation below the footing", "m");
    Require.notNegative(depthMetres, "depth of the excavation", "m");
  }

  /** Depth below the footing, 0 where the excavation stays above it, m. */
  double below() {
    return Math.max(0, belowFootingMetres);
  }
}
