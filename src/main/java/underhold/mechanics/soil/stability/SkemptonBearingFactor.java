package underhold.mechanics.soil.stability;

/**
 * Skempton's approximation of the bearing factor Nc in clay, for base heave.
 *
 * <p>Formula: Nc = 5 (1 + 0.2 B/L)(1 + 0.2 H/B), H/B counted up to 2.5, so that Nc ends at 9 for a
 * square and 7.5 for a strip. Symbols: H depth, B width, L length [m]. Accuracy: within a few per
 * cent of the Bjerrum-Eide chart. Source: A. W. Skempton, The Bearing Capacity of Clays, 1951;
 * basis: from memory, verify (the chart is cited by Caltrans, Trenching and Shoring Manual, 10-3,
 * secondary digest).
 */
public final class SkemptonBearingFactor {

  /** Depth ratio beyond which depth no longer helps, dimensionless; from memory, verify. */
  private static final double MOST_DEPTH_RATIO = 2.5;

  private SkemptonBearingFactor() {}

  /** Nc of a cut. */
  public static double of(ClayCut cut) {
    return of(cut.depthToWidth(), cut.widthMetres() / cut.lengthMetres());
  }

  /** Nc for a depth ratio H/B and a plan ratio B/L (0 for a strip, 1 for a square). */
  public static double of(double depthToWidth, double widthToLength) {
    if (!(depthToWidth >= 0) || !(widthToLength >= 0 && widthToLength <= 1)) {
      throw new IllegalArgumentException(
          "H/B is " + depthToWidth + ", B/L is " + widthToLength + "; need H/B >= 0, B/L 0 to 1");
    }
    return 5 * (1 + 0.2 * widthToLength) * (1 + 0.2 * Math.min(depthToWidth, MOST_DEPTH_RATIO));
  }
}
