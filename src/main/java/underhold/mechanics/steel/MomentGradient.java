package underhold.mechanics.steel;

import java.util.function.DoubleUnaryOperator;

/**
 * Lateral-torsional buckling modification factor Cb = 12.5 Mmax / (2.5 Mmax + 3 MA + 4 MB + 3 MC),
 * with A, B, C at the quarter points of the unbraced segment (AISC 360-16, F1-1).
 *
 * <p>Absolute moments. Assumes a doubly symmetric section and load at the shear centre: a load on
 * the top flange that moves with it destabilises, and Cb = 1.0 is then used here.
 */
public final class MomentGradient {
  /** Cb of uniform moment, the safe value for any moment diagram. */
  public static final double UNIFORM = 1.0;

  private static final int STATIONS = 4000;

  private MomentGradient() {}

  /** Cb from the largest moment and those at the quarter points; 1 where there is no moment. */
  public static double factor(double largest, double atA, double atB, double atC) {
    Require.notNegative("largest moment", largest);
    double max = largest;
    double a = Require.notNegative("moment at A", Math.abs(atA));
    double b = Require.notNegative("moment at B", Math.abs(atB));
    double c = Require.notNegative("moment at C", Math.abs(atC));
    if (max < Math.max(a, Math.max(b, c))) {
      throw new IllegalArgumentException("a quarter point has more than the largest moment");
    }
    return max == 0 ? UNIFORM : 12.5 * max / (2.5 * max + 3 * a + 4 * b + 3 * c);
  }

  /**
   * Cb of a segment of a moment diagram.
   *
   * @param moment moment at a station, kN m
   * @param fromMetres start of the segment
   * @param toMetres its end
   */
  public static double factor(DoubleUnaryOperator moment, double fromMetres, double toMetres) {
    double length = Require.positive("unbraced length", toMetres - fromMetres);
    double largest = 0;
    for (int i = 0; i <= STATIONS; i++) {
      largest =
          Math.max(largest, Math.abs(moment.applyAsDouble(fromMetres + length * i / STATIONS)));
    }
    return factor(
        largest,
        moment.applyAsDouble(fromMetres + length / 4),
        moment.applyAsDouble(fromMetres + length / 2),
        moment.applyAsDouble(fromMetres + 3 * length / 4));
  }
}
