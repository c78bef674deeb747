package underhold.mechanics.micropile;

/**
 * Spacing and groups of micropiles. Source: FHWA NHI-05-039 ch. 5, AASHTO LRFD 10.9.1.2. Basis:
 * from memory, verify.
 */
public final class PileSpacing {
  /** Least centre spacing whatever the diameter, 30 in, m. */
  public static final double LEAST_METRES = 30 * Units.INCH;

  /** Least centre spacing in diameters. */
  public static final double LEAST_DIAMETERS = 3;

  /** Undrained strength above which a clay group counts in full, 2 ksf, kPa. */
  public static final double FIRM_CLAY_KILOPASCALS = 2000 * Units.PSI / 144;

  private static final double[] DIAMETERS = {2.5, 3, 6};
  private static final double[] EFFICIENCY = {0.65, 0.70, 1.0};

  private PileSpacing() {}

  /** Least centre spacing, the greater of 30 in and 3 D, m. */
  public static double least(double diameterMetres) {
    Require.positive("diameter", diameterMetres);
    return Math.max(LEAST_METRES, LEAST_DIAMETERS * diameterMetres);
  }

  /**
   * Group efficiency in clay with the cap clear of soft ground: 0.65 at 2.5 D, 0.70 at 3 D, 1.0 at
   * 6 D, linear between; 1.0 where su exceeds 2 ksf or the cap bears.
   */
  public static double clayEfficiency(
      double spacingMetres,
      double diameterMetres,
      double undrainedStrengthKilopascals,
      boolean capBears) {
    Require.positive("spacing", spacingMetres);
    Require.positive("diameter", diameterMetres);
    Require.positive("undrained strength", undrainedStrengthKilopascals);
    double diameters = spacingMetres / diameterMetres;
    if (diameters < DIAMETERS[0]) {
      throw new IllegalArgumentException("spacing below 2.5 diameters is not covered");
    }
    if (capBears || undrainedStrengthKilopascals > FIRM_CLAY_KILOPASCALS || diameters >= 6) {
      return 1;
    }
    int i = diameters < DIAMETERS[1] ? 1 : 2;
    double share = (diameters - DIAMETERS[i - 1]) / (DIAMETERS[i] - DIAMETERS[i - 1]);
    return EFFICIENCY[i - 1] + share * (EFFICIENCY[i] - EFFICIENCY[i - 1]);
  }
}
