package underhold.mechanics.micropile;

final class Require {
  private Require() {}

  static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must be above 0");
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must not be below 0");
    }
  }
}
