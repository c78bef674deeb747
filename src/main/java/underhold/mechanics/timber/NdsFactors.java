package underhold.mechanics.timber;

/**
 * Adjustment factors for dimension lumber in allowable stress design.
 *
 * <p>Source: NDS 2018, 2.3.2 and Supplement Tables 4A/4B. Basis: from memory, verify. No factor
 * here is above the tabulated one; between tabulated values the lower applies.
 */
public final class NdsFactors {
  /**
   * Fb times the size factor up to which wet service takes nothing from bending, 1,150 psi, kPa.
   */
  public static final double WET_BENDING_LIMIT_KILOPASCALS = 1150 * TableRows.KILOPASCALS_PER_PSI;

  /** Wet service factor of bending above that limit. */
  public static final double WET_BENDING = 0.85;

  /** Wet service factor of shear. */
  public static final double WET_SHEAR = 0.97;

  /** Wet service factor of compression across the grain. */
  public static final double WET_ACROSS_GRAIN = 0.67;

  /** Wet service factor of compression along the grain. */
  public static final double WET_ALONG_GRAIN = 0.80;

  /** Wet service factor of the elastic modulus. */
  public static final double WET_MODULUS = 0.90;

  private static final double[][] DURATION = {
    {10.0 / 1440, 1.6}, {7, 1.25}, {60, 1.15}, {3650, 1.0},
  };

  /** Load duration of a permanent load. */
  private static final double PERMANENT = 0.9;

  /** Bearing factor adds 3/8 in to the bearing length (NDS 2018, 3.10.4). */
  private static final double BEARING_ADDITION_METRES = 0.375 * TableRows.METRES_PER_INCH;

  private static final double LONGEST_SHORT_BEARING_METRES = 6 * TableRows.METRES_PER_INCH;

  private NdsFactors() {}

  /**
   * Load duration factor C_D: 1.6 to ten minutes, 1.25 to seven days, 1.15 to two months, 1.0 to
   * ten years, else 0.9. Not for compression across the grain nor for the elastic modulus.
   *
   * @param days cumulative duration of the full load
   */
  public static double loadDuration(double days) {
    TableRows.requirePositive("load duration", days);
    for (double[] step : DURATION) {
      if (days <= step[0]) {
        return step[1];
      }
    }
    return PERMANENT;
  }

  /**
   * Wet service factor of bending: 1.0 where Fb C_F is at most 1,150 psi, else 0.85.
   *
   * @param bendingTimesSizeFactor Fb C_F, kPa
   */
  public static double wetBending(double bendingTimesSizeFactor) {
    return bendingTimesSizeFactor <= WET_BENDING_LIMIT_KILOPASCALS ? 1.0 : WET_BENDING;
  }

  /**
   * Flat use factor C_fu of boards 2 to 3 in (nominal) thick: 1.15 to 8 in wide, 1.2 from 10 in. 4
   * in thick boards: 1.05 to 8 in, 1.1 from 10 in (from memory).
   */
  public static double flatUse(double nominalWidthInches, double nominalThicknessInches) {
    boolean thick = nominalThicknessInches >= 4;
    if (nominalWidthInches >= 10) {
      return thick ? 1.1 : 1.2;
    }
    return thick ? 1.05 : 1.15;
  }

  /**
   * Size factor C_F of bending, No. 2: 1.3 to 6 in, 1.2 at 8 in, 1.1 at 10 in, 1.0 at 12 in, 0.9
   * above.
   */
  public static double size(double nominalWidthInches) {
    if (nominalWidthInches <= 6) {
      return 1.3;
    }
    if (nominalWidthInches <= 8) {
      return 1.2;
    }
    if (nominalWidthInches <= 10) {
      return 1.1;
    }
    return nominalWidthInches <= 12 ? 1.0 : 0.9;
  }

  /**
   * Bearing area factor C_b = (lb + 3/8 in) / lb for bearings shorter than 6 in that are at least 3
   * in from the end of the member; 1.0 otherwise (a board end in its corner is at the end).
   *
   * @param bearingLengthMetres length of bearing along the grain
   * @param atEnd whether the bearing lies within 3 in of the end
   */
  public static double bearingArea(double bearingLengthMetres, boolean atEnd) {
    TableRows.requirePositive("bearing length", bearingLengthMetres);
    boolean shortBearing = bearingLengthMetres < LONGEST_SHORT_BEARING_METRES;
    return !atEnd && shortBearing
        ? (bearingLengthMetres + BEARING_ADDITION_METRES) / bearingLengthMetres
        : 1.0;
  }
}
