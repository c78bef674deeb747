package underhold.mechanics.concrete;

final class Require {
  private Require() {}

  static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must be above 0");
    }
  }
}
