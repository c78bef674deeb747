package underhold.mechanics.soil.settlement;

import underhold.mechanics.soil.Require;

/**
 * Immediate settlement of a flexible rectangle on an elastic layer, after Steinbrenner.
 *
 * <p>Formula: S = q (a B')((1 - v^2)/Es) Is If; Is = F1 + ((1 - 2 v)/(1 - v)) F2; F1 = (A0 +
 * A1)/pi; F2 = (n/2 pi) atan A2; A0 = m ln[(1 + sqrt(m^2 + 1)) sqrt(m^2 + n^2)/(m (1 + sqrt(m^2 +
 * n^2 + 1)))]; A1 = ln[(m + sqrt(m^2 + 1)) sqrt(1 + n^2)/(m + sqrt(m^2 + n^2 + 1))]; A2 = m/(n
 * sqrt(m^2 + n^2 + 1)). Centre: a = 4, B' = B/2, m = L/B, n = H/(B/2); corner: a = 1, B' = B, n =
 * H/B. A rigid footing settles 0.93 times the centre.
 *
 * <p>Symbols: q net pressure [kPa], B, L sides [m], H depth of the layer below the base [m], Es
 * modulus [kPa], v Poisson's ratio, If depth factor (Fox), S [m]. Assumptions: uniform elastic
 * layer on a rigid stratum, smooth base. Valid range: v from 0 to 0.5, L at least B. Accuracy:
 * exact under the assumptions; the modulus decides, often within a factor of 2 only (judgement).
 * Source: W. Steinbrenner, 1934, in the form of J. E. Bowles, Foundation Analysis and Design;
 * basis: from memory, verify.
 */
public final class SteinbrennerSettlement {

  /**
   * Settlement of a rigid footing over that of the centre of a flexible one, dimensionless; from
   * memory, verify.
   */
  private static final double RIGID_SHARE = 0.93;

  private SteinbrennerSettlement() {}

  /**
   * Influence factors.
   *
   * @param first F1
   * @param second F2
   */
  public record Influence(double first, double second) {

    /** Is for a Poisson's ratio from 0 to 0.5. */
    public double combined(double poissonRatio) {
      Require.between(poissonRatio, 0, 0.5, "Poisson's ratio", "");
      return first + (1 - 2 * poissonRatio) / (1 - poissonRatio) * second;
    }
  }

  /**
   * The footing and the layer.
   *
   * @param pressureKilopascals net pressure q
   * @param widthMetres shorter side B
   * @param lengthMetres longer side L
   * @param layerMetres depth H of the compressible layer below the base
   * @param modulusKilopascals Es
   * @param poissonRatio v
   * @param depthFactor If, 1 when no credit is taken for the depth of the base
   */
  public record Case(
      double pressureKilopascals,
      double widthMetres,
      double lengthMetres,
      double layerMetres,
      double modulusKilopascals,
      double poissonRatio,
      double depthFactor) {
    public Case {
      Require.notNegative(pressureKilopascals, "net pressure", "kPa");
      Require.positive(widthMetres, "width", "m");
      Require.between(lengthMetres, widthMetres, Require.LARGEST, "length", "m");
      Require.positive(layerMetres, "layer depth", "m");
      Require.positive(modulusKilopascals, "modulus", "kPa");
      Require.between(poissonRatio, 0, 0.5, "Poisson's ratio", "");
      Require.between(depthFactor, 0, 1, "depth factor", "");
    }
  }

  /** F1 and F2 for m = L/B of 1 or more and n = H/B' above 0. */
  public static Influence influence(double m, double n) {
    Require.positive(m, "m", "");
    Require.positive(n, "n", "");
    double edge = Math.sqrt(m * m + 1);
    double corner = Math.sqrt(m * m + n * n + 1);
    double a0 = m * Math.log((1 + edge) * Math.sqrt(m * m + n * n) / (m * (1 + corner)));
    double a1 = Math.log((m + edge) * Math.sqrt(1 + n * n) / (m + corner));
    double a2 = m / (n * corner);
    return new Influence(Math.max(0, (a0 + a1) / Math.PI), n / (2 * Math.PI) * Math.atan(a2));
  }

  /** Settlement at the centre of a flexible footing [m]. */
  public static double centreMetres(Case footing) {
    return 4 * cornerMetres(footing, footing.widthMetres() / 2);
  }

  /** Settlement at a corner of a flexible footing [m]. */
  public static double cornerMetres(Case footing) {
    return cornerMetres(footing, footing.widthMetres());
  }

  /** Settlement of a rigid footing [m]. */
  public static double rigidMetres(Case footing) {
    return RIGID_SHARE * centreMetres(footing);
  }

  private static double cornerMetres(Case footing, double side) {
    double ratio = footing.lengthMetres() / footing.widthMetres();
    double poisson = footing.poissonRatio();
    return footing.pressureKilopascals()
        * side
        * (1 - poisson * poisson)
        / footing.modulusKilopascals()
        * influence(ratio, footing.layerMetres() / side).combined(poisson)
        * footing.depthFactor();
  }
}
