package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * Allowable bearing pressure from an ultimate one.
 *
 * <p>Formula: gross = qult/F; net = qult/F - s. Symbols: qult gross ultimate pressure [kPa], F
 * factor of safety, s total vertical stress at the base before digging [kPa]. Valid range: F at
 * least 1. The net value may be negative: the ground then carries not even its own overburden with
 * that factor. Source: UFC 3-220-20 (16 January 2025), chapter 5, equations 5-13 and 5-14; basis:
 * cited, secondary digest. F: 3 customary in US practice, 2 to 2.5 with good data; from memory,
 * verify.
 *
 * @param grossKilopascals allowable gross pressure
 * @param netKilopascals allowable pressure above the overburden
 * @param factor factor of safety used
 */
public record AllowableBearing(double grossKilopascals, double netKilopascals, double factor) {

  /** Customary factor of safety on ultimate bearing, dimensionless; from memory, verify. */
  public static final double CUSTOMARY_FACTOR = 3;

  /**
   * Allowable pressures from a gross ultimate pressure, the overburden at the base and a factor of
   * 1 or more.
   */
  public static AllowableBearing of(
      double ultimateKilopascals, double overburdenKilopascals, double factor) {
    if (!(ultimateKilopascals >= 0) || Double.isInfinite(ultimateKilopascals)) {
      throw new IllegalArgumentException(
          "ultimate pressure is " + ultimateKilopascals + " kPa, it must be 0 or above");
    }
    Require.notNegative(overburdenKilopascals, "overburden", "kPa");
    Require.between(factor, 1, Require.LARGEST, "factor of safety", "");
    double gross = ultimateKilopascals / factor;
    return new AllowableBearing(gross, gross - overburdenKilopascals, factor);
  }
}
