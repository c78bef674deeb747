package underhold.sizing.needles;

/**
 * The pad under one seat: a square, or its share of one mat where squares would touch.
 *
 * @param side side of the square, or of the mat along the needles, m
 * @param spacing from needle to needle, m
 * @param needles how many needles stand side by side
 */
record Pad(double side, double spacing, int needles) {
  /** Whether squares would touch, so that they join in one mat. */
  boolean joined() {
    return side > spacing;
  }

  /** Area for one needle, m2. */
  double area() {
    return side * (joined() ? spacing : side);
  }

  /** Shorter side of what bears as one, m. */
  double width() {
    return joined() ? Math.min(side, needles * spacing) : side;
  }

  /** Longer side of what bears as one, m. */
  double length() {
    return joined() ? Math.max(side, needles * spacing) : side;
  }
}
