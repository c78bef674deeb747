package underhold.mechanics.micropile;

/** Geometry of a circle. */
final class Circle {
  private Circle() {}

  /** pi d^2 / 4. */
  static double area(double diameterMetres) {
    return Math.PI * diameterMetres * diameterMetres / 4;
  }

  /** pi d^4 / 64. */
  static double secondMoment(double diameterMetres) {
    return Math.PI * Math.pow(diameterMetres, 4) / 64;
  }
}
