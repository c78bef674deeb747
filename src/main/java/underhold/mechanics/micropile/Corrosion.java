package underhold.mechanics.micropile;

import java.util.List;

/**
 * Loss of casing wall by corrosion.
 *
 * <p>FHWA NHI-05-039: 1/16 in off the outside of a casing in compression in aggressive ground.
 * Tables by years: FHWA-SA-97-070, and EN 1993-5 Table 4-1 for undisturbed natural soil. Between
 * printed years linear, beyond 100 years not given. A job of less than two years gets no deduction
 * (common practice). Basis of the tables: from memory, verify.
 */
@SuppressWarnings("ImmutableEnumChecker") // the lists are those of List.of
public enum Corrosion {
  /** FHWA-SA-97-070, not aggressive. */
  NOT_AGGRESSIVE(List.of(0.25, 0.60, 0.70, 0.80)),
  /** FHWA-SA-97-070, barely aggressive. */
  BARELY_AGGRESSIVE(List.of(0.60, 1.00, 1.50, 2.00)),
  /** FHWA-SA-97-070, very aggressive. */
  VERY_AGGRESSIVE(List.of(2.00, 4.00, 5.00, 6.00)),
  /** EN 1993-5 Table 4-1, undisturbed natural soil. */
  EUROCODE_NATURAL_SOIL(List.of(0.30, 0.60, 0.90, 1.20));

  /** FHWA deduction in aggressive ground, 1/16 in, m. */
  public static final double FHWA_DEDUCTION_METRES = Units.INCH / 16;

  private static final double[] YEARS = {0, 25, 50, 75, 100};
  private static final double METRES_PER_MILLIMETRE = 1e-3;

  private final List<Double> lossMillimetres;

  Corrosion(List<Double> lossMillimetres) {
    this.lossMillimetres = lossMillimetres;
  }

  /** Loss off the outside after a number of years up to 100, m. */
  public double lossMetres(double years) {
    if (!(years >= 0 && years <= YEARS[YEARS.length - 1])) {
      throw new IllegalArgumentException("years are " + years + ", the tables give 0 to 100");
    }
    int i = 1;
    while (YEARS[i] < years) {
      i++;
    }
    double before = i == 1 ? 0 : lossMillimetres.get(i - 2);
    double share = (years - YEARS[i - 1]) / (YEARS[i] - YEARS[i - 1]);
    return METRES_PER_MILLIMETRE * (before + share * (lossMillimetres.get(i - 1) - before));
  }

  /**
   * Whether ground counts as aggressive: pH below 4.5 or above 10, resistivity below 2,000 ohm cm,
   * sulfate above 200 ppm, chloride above 100 ppm. FHWA NHI-05-039, from memory, verify.
   */
  public static boolean aggressive(
      double acidity, double resistivityOhmCentimetres, double sulfatePpm, double chloridePpm) {
    return acidity < 4.5
        || acidity > 10
        || resistivityOhmCentimetres < 2000
        || sulfatePpm > 200
        || chloridePpm > 100;
  }
}
