package underhold.mechanics.soil;

/**
 * Refuses inputs that no ground, footing or load can have.
 *
 * <p>Besides NaN and infinity it refuses magnitudes beyond {@value #LARGEST} and positive values
 * below {@value #SMALLEST} of the SI unit in use: such a number is a unit mistake, and keeping it
 * out keeps every result finite (judgement).
 */
public final class Require {

  /** Largest accepted magnitude of any input, in its own SI unit (judgement). */
  public static final double LARGEST = 1e9;

  /** Smallest accepted value of an input that must be positive, in its own SI unit (judgement). */
  public static final double SMALLEST = 1e-9;

  private Require() {}

  /**
   * A finite number of believable size.
   *
   * @throws IllegalArgumentException naming the quantity, its value and its unit
   */
  public static double finite(double value, String name, String unit) {
    return require(Math.abs(value) <= LARGEST, value, name, unit, "finite and below 1e9");
  }

  /**
   * A number above zero.
   *
   * @throws IllegalArgumentException naming the quantity, its value and its unit
   */
  public static double positive(double value, String name, String unit) {
    return require(
        value >= SMALLEST && value <= LARGEST, value, name, unit, "above 0 (1e-9 to 1e9)");
  }

  /**
   * Zero or a positive number.
   *
   * @throws IllegalArgumentException naming the quantity, its value and its unit
   */
  public static double notNegative(double value, String name, String unit) {
    return require(value >= 0 && value <= LARGEST, value, name, unit, "0 or above (to 1e9)");
  }

  /**
   * A number from {@code low} to {@code high}, both included.
   *
   * @throws IllegalArgumentException naming the quantity, its value and its unit
   */
  public static double between(double value, double low, double high, String name, String unit) {
    boolean holds = value >= low && value <= high;
    return holds ? value : require(false, value, name, unit, "from " + low + " to " + high);
  }

  /** An angle of shearing resistance, 0 to 60 degrees. */
  public static double frictionAngle(double degrees) {
    return between(degrees, 0, 60, "angle of shearing resistance", "degrees");
  }

  private static double require(
      boolean holds, double value, String name, String unit, String limit) {
    if (!holds) { // written so that NaN fails as well
      throw new IllegalArgumentException(
          name + " is " + value + " " + unit + ", it must be " + limit);
    }
    return value;
  }
}
