package underhold.mechanics.soil.settlement;

import underhold.mechanics.soil.Require;

/**
 * Progress of one-dimensional consolidation.
 *
 * <p>Formula: Tv = cv t/d^2; U up to 60 %: U = sqrt(4 Tv/pi); above: Tv = 1.781 - 0.933 log10(100 -
 * U%).
 *
 * <p>Symbols: cv coefficient of consolidation [m2/year], t time [years], d longest drainage path
 * [m], U degree of consolidation, 0 to 1. Assumptions: uniform initial excess pressure, constant
 * cv. Accuracy: within about 1 % of Terzaghi's series; the two branches miss each other by 0.004 in
 * Tv at 60 %, and U is held at 60 % across the gap. Source: K. Terzaghi's theory, approximation
 * usual in the textbooks; basis: from memory, verify.
 */
public final class ConsolidationTime {

  /** Degree at which the branches meet, dimensionless; from memory, verify. */
  private static final double BRANCH_DEGREE = 0.6;

  /** Tv of the parabola at 60 %, dimensionless (derived). */
  private static final double BRANCH_TIME_FACTOR = Math.PI / 4 * BRANCH_DEGREE * BRANCH_DEGREE;

  private ConsolidationTime() {}

  /** Tv for a time, dimensionless. */
  public static double timeFactor(
      double coefficientSquareMetresPerYear, double years, double drainagePathMetres) {
    Require.notNegative(coefficientSquareMetresPerYear, "coefficient of consolidation", "m2/year");
    Require.notNegative(years, "time", "years");
    Require.positive(drainagePathMetres, "drainage path", "m");
    return coefficientSquareMetresPerYear * years / (drainagePathMetres * drainagePathMetres);
  }

  /** Degree of consolidation U, 0 to 1, for a time factor. */
  public static double degree(double timeFactor) {
    if (!(timeFactor >= 0)) {
      throw new IllegalArgumentException(
          "time factor is " + timeFactor + ", it must be 0 or above");
    }
    if (timeFactor <= BRANCH_TIME_FACTOR) {
      return Math.sqrt(4 * timeFactor / Math.PI);
    }
    double remaining = Math.pow(10, (1.781 - timeFactor) / 0.933) / 100;
    return Math.max(BRANCH_DEGREE, 1 - remaining);
  }

  /** Time factor at which a degree of consolidation (0 to 0.9999) is reached, dimensionless. */
  public static double timeFactorAt(double degree) {
    Require.between(degree, 0, 0.9999, "degree of consolidation", "");
    return degree <= BRANCH_DEGREE
        ? Math.PI / 4 * degree * degree
        : 1.781 - 0.933 * Math.log10(100 * (1 - degree));
  }
}
