package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Guideline values of peak particle velocity for short-term vibration, below which no damage to the
 * serviceability of a building is expected.
 *
 * <p>At the foundation, largest of three directions: constant to 10 Hz, rising in straight lines to
 * 50 Hz and to 100 Hz; above 100 Hz the value of 100 Hz is used. At the topmost floor, horizontal,
 * one value. Source: DIN 4150-3. The three lines and their dependence on frequency are cited
 * (secondary); the numbers are from memory, verify.
 */
public enum DinVibration {
  /** Commercial and industrial buildings. */
  COMMERCIAL("commercial and industrial buildings", 0.020, 0.040, 0.050, 0.040),
  /** Dwellings. */
  DWELLING("dwellings", 0.005, 0.015, 0.020, 0.015),
  /** Sensitive and protected buildings. */
  SENSITIVE("sensitive and protected buildings", 0.003, 0.008, 0.010, 0.008);

  /** Where the lines stand. */
  public static final Citation CITATION =
      new Citation(
          "DIN 4150-3, Vibration in buildings, effects on structures, short-term values",
          Provenance.FROM_MEMORY);

  /** Floors, vertical, no loss of serviceability below it, m/s (DIN 4150-3, secondary copy). */
  public static final double FLOOR_VERTICAL_METRES_PER_SECOND = 0.020;

  private static final double LOW_HERTZ = 10;
  private static final double MIDDLE_HERTZ = 50;
  private static final double HIGH_HERTZ = 100;

  private final String label;
  private final double low;
  private final double middle;
  private final double high;
  private final double topFloor;

  DinVibration(String label, double low, double middle, double high, double topFloor) {
    this.label = label;
    this.low = low;
    this.middle = middle;
    this.high = high;
    this.topFloor = topFloor;
  }

  /** Kind of building. */
  public String label() {
    return label;
  }

  /** Value at the foundation at a frequency, m/s. */
  public double foundationMetresPerSecond(double frequencyHertz) {
    Require.positive(frequencyHertz, "frequency", "Hz");
    if (frequencyHertz <= LOW_HERTZ) {
      return low;
    }
    return frequencyHertz <= MIDDLE_HERTZ
        ? low + (middle - low) * (frequencyHertz - LOW_HERTZ) / (MIDDLE_HERTZ - LOW_HERTZ)
        : middle
            + (high - middle)
                * (Math.min(frequencyHertz, HIGH_HERTZ) - MIDDLE_HERTZ)
                / (HIGH_HERTZ - MIDDLE_HERTZ);
  }

  /** Value at the topmost floor, horizontal, all frequencies, m/s. */
  public double topFloorMetresPerSecond() {
    return topFloor;
  }

  /** Material of a buried pipe. */
  public enum Pipe {
    /** Steel, welded. */
    STEEL(0.100),
    /** Concrete, stoneware, metal. */
    CONCRETE_STONEWARE_METAL(0.080),
    /** Masonry, plastic. */
    MASONRY_PLASTIC(0.050);

    private final double limit;

    Pipe(double limit) {
      this.limit = limit;
    }

    /** Short-term value on the pipe, m/s (DIN 4150-3, secondary copy). */
    public double metresPerSecond() {
      return limit;
    }
  }
}
