package underhold.mechanics.bracket;

import java.util.List;

/**
 * Share of each anchor in an eccentric pull on a stiff plate: Ni = N/n + N e yi / sum(y^2), y from
 * the centroid. By statics. And how tension and shear go together: N + V ratios at most 1.2, or the
 * sum of their 5/3 powers at most 1 (ACI 318-19 17.8.3 and R17.8, read in a 2025 design guide).
 */
public final class AnchorGroup {
  /** Greatest sum of the two ratios. */
  public static final double GREATEST_SUM = 1.2;

  private static final double POWER = 5.0 / 3;

  private AnchorGroup() {}

  /**
   * Load on each anchor, kN.
   *
   * @param positionsMetres y of each anchor from any origin
   */
  public static List<Double> shares(
      List<Double> positionsMetres, double pullKilonewtons, double eccentricityMetres) {
    if (positionsMetres.isEmpty()) {
      throw new IllegalArgumentException("there is at least one anchor");
    }
    Require.finite("pull", pullKilonewtons);
    Require.finite("eccentricity", eccentricityMetres);
    double centre = positionsMetres.stream().mapToDouble(Double::doubleValue).sum();
    double mean = centre / positionsMetres.size();
    double squares = positionsMetres.stream().mapToDouble(y -> (y - mean) * (y - mean)).sum();
    if (squares == 0 && eccentricityMetres != 0) {
      throw new IllegalArgumentException("anchors on one line resist no eccentricity");
    }
    return positionsMetres.stream()
        .map(
            y ->
                pullKilonewtons / positionsMetres.size()
                    + (squares == 0
                        ? 0
                        : pullKilonewtons * eccentricityMetres * (y - mean) / squares))
        .toList();
  }

  /** Pry-out in shear as multiples of the breakout in tension: 1 below 2.5 in, else 2. */
  public static double pryOutFactor(double embedmentMetres) {
    Require.positive("embedment", embedmentMetres);
    return embedmentMetres < 2.5 * Units.INCH ? 1 : 2;
  }

  /** N + V, at most 1.2 (each at most 1). */
  public static double sum(double tensionRatio, double shearRatio) {
    Require.notNegative("tension ratio", tensionRatio);
    Require.notNegative("shear ratio", shearRatio);
    return tensionRatio + shearRatio;
  }

  /** N^(5/3) + V^(5/3), at most 1. */
  public static double powers(double tensionRatio, double shearRatio) {
    Require.notNegative("tension ratio", tensionRatio);
    Require.notNegative("shear ratio", shearRatio);
    return Math.pow(tensionRatio, POWER) + Math.pow(shearRatio, POWER);
  }
}
