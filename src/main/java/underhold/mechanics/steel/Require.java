package underhold.mechanics.steel;

/** Refuses what no steel member can have; the bounds keep every result finite (judgement). */
final class Require {
  private static final double LARGEST = 1e12;
  private static final double SMALLEST = 1e-12;

  private Require() {}

  static double positive(String name, double value) {
    if (!(value >= SMALLEST && value <= LARGEST)) { // written so that NaN fails as well
      throw new IllegalArgumentException(name + " is " + value + ", it must be above 0");
    }
    return value;
  }

  static double notNegative(String name, double value) {
    if (!(value >= 0 && value <= LARGEST)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must not be below 0");
    }
    return value;
  }
}
