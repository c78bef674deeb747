package underhold.mechanics.foundationbeam;

/**
 * A curve a A(x) + b B(x) + c C(x) + d D(x) along a semi-infinite beam on an elastic foundation, x
 * = lambda z:
 *
 * <pre>
 * A = e^-x (cos x + sin x)   B = e^-x sin x   C = e^-x (cos x - sin x)   D = e^-x cos x
 * A' = -2 lambda B   B' = lambda C   C' = -2 lambda D   D' = -lambda A
 * </pre>
 *
 * so every slope of such a curve is again such a curve. Source: M. Hetenyi, Beams on Elastic
 * Foundation, 1946. Basis: from memory, verify; the tests solve the pile on springs apart.
 *
 * @param a share of A
 * @param b share of B
 * @param c share of C
 * @param d share of D
 * @param lambda 1 / characteristic length, 1/m
 */
public record HetenyiCurve(double a, double b, double c, double d, double lambda) {
  public HetenyiCurve {
    Require.positive("lambda", lambda);
    if (!Double.isFinite(a + b + c + d)) {
      throw new IllegalArgumentException("the shares of a curve must be finite");
    }
  }

  /** A(x) = e^-x (cos x + sin x). */
  public static double functionA(double x) {
    return Math.exp(-x) * (Math.cos(x) + Math.sin(x));
  }

  /** B(x) = e^-x sin x. */
  public static double functionB(double x) {
    return Math.exp(-x) * Math.sin(x);
  }

  /** C(x) = e^-x (cos x - sin x). */
  public static double functionC(double x) {
    return Math.exp(-x) * (Math.cos(x) - Math.sin(x));
  }

  /** D(x) = e^-x cos x. */
  public static double functionD(double x) {
    return Math.exp(-x) * Math.cos(x);
  }

  /** The value at a depth z, m, below the head. */
  public double at(double depthMetres) {
    Require.notNegative("depth", depthMetres);
    double x = lambda * depthMetres;
    return a * functionA(x) + b * functionB(x) + c * functionC(x) + d * functionD(x);
  }

  /** The curve of slopes. */
  public HetenyiCurve slope() {
    return new HetenyiCurve(-lambda * d, -2 * lambda * a, lambda * b, -2 * lambda * c, lambda);
  }

  /** The curve with all values multiplied. */
  public HetenyiCurve times(double factor) {
    return new HetenyiCurve(factor * a, factor * b, factor * c, factor * d, lambda);
  }
}
