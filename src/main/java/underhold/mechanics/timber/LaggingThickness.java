package underhold.mechanics.timber;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Recommended rough-cut lagging thickness by ground, depth and clear span.
 *
 * <p>Source: Goldberg, Jaworski and Gordon, Lateral Support Systems and Underpinning,
 * FHWA-RD-75-130 (1976), repeated in later manuals. Basis: numbers from memory, verify. Built on
 * Douglas fir boards and on arching of the soil, so beside a loaded footing it is a floor only.
 * Spans below 5 ft use the 5 ft column; nothing is extrapolated above 10 ft.
 */
public final class LaggingThickness {
  private static final int[] SPANS_FEET = {5, 6, 7, 8, 9, 10};
  private static final int FIRST_COLUMN = 3;
  private static final double TOLERANCE_FEET = 1e-6;
  private static final List<String[]> ROWS = TableRows.read("lagging-thickness.csv");

  private LaggingThickness() {}

  /** How the ground behaves behind boards. */
  public enum Ground {
    /** Medium dense or denser sand and gravel, stiff intact clay, silt above the water table. */
    COMPETENT,
    /** Loose sand, clayey sand below water, fissured clay, silt below water. */
    DIFFICULT,
    /**
     * Soft clay with unit weight x depth over 5 su, slightly plastic silt or loose clayey sand
     * below water.
     */
    DANGEROUS
  }

  /** Thickness, m; empty where the table recommends none. */
  public static OptionalDouble recommended(Ground ground, double depthMetres, double spanMetres) {
    TableRows.requireNotNegative("depth", depthMetres);
    TableRows.requirePositive("clear span", spanMetres);
    double depthFeet = depthMetres / TableRows.METRES_PER_FOOT;
    double spanFeet = spanMetres / TableRows.METRES_PER_FOOT;
    for (String[] row : ROWS) {
      if (row[0].equals(ground.name())
          && depthFeet <= Double.parseDouble(row[2]) + TOLERANCE_FEET) {
        return column(row, spanFeet);
      }
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble column(String[] row, double spanFeet) {
    for (int i = 0; i < SPANS_FEET.length; i++) {
      if (spanFeet <= SPANS_FEET[i] + TOLERANCE_FEET) {
        double inches = Double.parseDouble(row[FIRST_COLUMN + i]);
        return inches > 0
            ? OptionalDouble.of(inches * TableRows.METRES_PER_INCH)
            : OptionalDouble.empty();
      }
    }
    return OptionalDouble.empty();
  }
}
