package underhold.mechanics.soil.stress;

import underhold.mechanics.soil.Require;

/**
 * Vertical stress in an elastic half-space below a uniformly loaded rectangle.
 *
 * <p>Formula, below a corner: sz = (q/2 pi)(atan(a b/(z r3)) + (a b z/r3)(1/r1^2 + 1/r2^2)), r1^2 =
 * a^2 + z^2, r2^2 = b^2 + z^2, r3^2 = a^2 + b^2 + z^2; elsewhere by adding and subtracting corners.
 *
 * <p>Symbols: a, b sides, z depth [m], q pressure [kPa], sz [kPa]. Assumptions: elastic, isotropic,
 * uniform half-space; load at the surface. Valid range: z above 0. Accuracy: exact under the
 * assumptions. Source: Boussinesq's solution integrated by Newmark and by Steinbrenner; basis: from
 * memory, verify; reproduces published values.
 */
public final class RectangleStress {

  private RectangleStress() {}

  /** Stress below a corner [kPa]. */
  public static double belowCornerKilopascals(
      double pressureKilopascals, double widthMetres, double lengthMetres, double depthMetres) {
    Require.notNegative(pressureKilopascals, "pressure", "kPa");
    Require.positive(widthMetres, "width", "m");
    Require.positive(lengthMetres, "length", "m");
    Require.positive(depthMetres, "depth", "m");
    return pressureKilopascals * influence(widthMetres, lengthMetres, depthMetres);
  }

  /** Stress below the centre [kPa]. */
  public static double belowCentreKilopascals(
      double pressureKilopascals, double widthMetres, double lengthMetres, double depthMetres) {
    return 4
        * belowCornerKilopascals(
            pressureKilopascals, widthMetres / 2, lengthMetres / 2, depthMetres);
  }

  /** Stress below any point, its place measured from the centre along width and length [kPa]. */
  public static double belowPointKilopascals(
      double pressureKilopascals,
      double widthMetres,
      double lengthMetres,
      double alongWidthMetres,
      double alongLengthMetres,
      double depthMetres) {
    Require.notNegative(pressureKilopascals, "pressure", "kPa");
    Require.positive(depthMetres, "depth", "m");
    double left =
        Require.finite(alongWidthMetres, "place along the width", "m") - half(widthMetres);
    double right = left + widthMetres;
    double low =
        Require.finite(alongLengthMetres, "place along the length", "m") - half(lengthMetres);
    double high = low + lengthMetres;
    double sum =
        influence(right, high, depthMetres)
            - influence(left, high, depthMetres)
            - influence(right, low, depthMetres)
            + influence(left, low, depthMetres);
    return pressureKilopascals * Math.max(0, sum);
  }

  private static double half(double side) {
    return Require.positive(side, "side", "m") / 2;
  }

  /** Influence value; odd in both sides, so that corners may be added with their signs. */
  private static double influence(double a, double b, double z) {
    double first = a * a + z * z;
    double second = b * b + z * z;
    double diagonal = Math.sqrt(first + b * b);
    double product = a * b;
    return (Math.atan(product / (z * diagonal)) + product * z / diagonal * (1 / first + 1 / second))
        / (2 * Math.PI);
  }
}
