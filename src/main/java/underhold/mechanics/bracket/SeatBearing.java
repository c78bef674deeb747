package underhold.mechanics.bracket;

import java.util.OptionalDouble;

/**
 * Pressure of a rectangular seat plate under a load off its centre.
 *
 * <pre>
 * e up to B/6   q = P/(B L) (1 + 6 e/B), least P/(B L) (1 - 6 e/B)
 * beyond        q = 2 P / [3 L (B/2 - e)]
 * </pre>
 *
 * <p>By statics. What concrete bears: 0.85 f'c sqrt(A2/A1) with phi 0.65, the root at most 2; by
 * allowable stress that over 2.31 = 1.5/0.65 (ACI 318-19 14.5.6 or 22.8 and 21.2, from memory,
 * verify). Plate: t = sqrt(2 q n^2 1.67 / Fy) for an overhang n (AISC, from memory).
 *
 * @param depthMetres B, in the direction of the eccentricity
 * @param lengthMetres L, along the edge
 */
public record SeatBearing(double depthMetres, double lengthMetres) {
  /** Resistance factor of bearing. */
  public static final double PHI = 0.65;

  /** Bearing strength as a share of f'c. */
  public static final double STRENGTH_SHARE = 0.85;

  /** Divisor of the nominal strength by allowable stress. */
  public static final double SAFETY_FACTOR = 2.31;

  /** Safety factor of plate bending. */
  public static final double PLATE_SAFETY = 1.67;

  private static final double GREATEST_SPREAD = 2;

  public SeatBearing {
    Require.positive("depth", depthMetres);
    Require.positive("length", lengthMetres);
  }

  /** Greatest pressure, kPa; empty where the load falls off the plate. */
  public OptionalDouble greatest(double loadKilonewtons, double eccentricityMetres) {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("eccentricity", eccentricityMetres);
    if (eccentricityMetres >= depthMetres / 2) {
      return OptionalDouble.empty();
    }
    double mean = loadKilonewtons / (depthMetres * lengthMetres);
    return OptionalDouble.of(
        eccentricityMetres <= depthMetres / 6
            ? mean * (1 + 6 * eccentricityMetres / depthMetres)
            : 2 * loadKilonewtons / (3 * lengthMetres * (depthMetres / 2 - eccentricityMetres)));
  }

  /** Least pressure, kPa; 0 where part of the plate lifts. */
  public double least(double loadKilonewtons, double eccentricityMetres) {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("eccentricity", eccentricityMetres);
    double mean = loadKilonewtons / (depthMetres * lengthMetres);
    return Math.max(0, mean * (1 - 6 * eccentricityMetres / depthMetres));
  }

  /** Allowable bearing of concrete, kPa; A2/A1 the spread of the support over the plate. */
  public static double allowable(double concreteKilopascals, double spread) {
    Require.positive("concrete strength", concreteKilopascals);
    return STRENGTH_SHARE * concreteKilopascals * spreadFactor(spread) / SAFETY_FACTOR;
  }

  /** Factored bearing resistance of concrete, kPa. */
  public static double factored(double concreteKilopascals, double spread) {
    Require.positive("concrete strength", concreteKilopascals);
    return PHI * STRENGTH_SHARE * concreteKilopascals * spreadFactor(spread);
  }

  /** Plate area that a load needs at an allowable pressure, m2. */
  public static double leastArea(double loadKilonewtons, double allowableKilopascals) {
    Require.notNegative("load", loadKilonewtons);
    Require.positive("allowable pressure", allowableKilopascals);
    return loadKilonewtons / allowableKilopascals;
  }

  /** Thickness of plate or shim for an overhang, m. */
  public static double plateThickness(
      double pressureKilopascals, double overhangMetres, double yieldKilopascals) {
    Require.notNegative("pressure", pressureKilopascals);
    Require.notNegative("overhang", overhangMetres);
    Require.positive("yield", yieldKilopascals);
    return overhangMetres * Math.sqrt(2 * pressureKilopascals * PLATE_SAFETY / yieldKilopascals);
  }

  private static double spreadFactor(double spread) {
    if (!(spread >= 1) || Double.isInfinite(spread)) {
      throw new IllegalArgumentException("A2/A1 is " + spread + ", it must be 1 or more");
    }
    return Math.min(GREATEST_SPREAD, Math.sqrt(spread));
  }
}
