package underhold.mechanics.pile.axial;

/**
 * Resistance factors of bored piles by load and resistance factor design.
 *
 * <p>Compression side and base, and uplift, by ground; a shaft that stands alone keeps 80 %.
 * Source: AASHTO LRFD Bridge Design Specifications, Table 10.5.5.2.4-1 and 10.5.5.2.4; basis: from
 * memory, verify.
 */
public enum LrfdFactor {
  /** Clay. */
  CLAY(0.45, 0.40, 0.35),
  /** Sand. */
  SAND(0.55, 0.50, 0.45),
  /** Intermediate ground; uplift not given, that of sand is used (judgement). */
  INTERMEDIATE(0.60, 0.55, 0.45),
  /** Rock. */
  ROCK(0.55, 0.50, 0.40),
  /** By static load test, the most that may be used. */
  STATIC_TEST(0.70, 0.70, 0.60);

  /** Share kept where no second shaft helps. */
  public static final double NOT_REDUNDANT = 0.8;

  private final double side;
  private final double base;
  private final double uplift;

  LrfdFactor(double side, double base, double uplift) {
    this.side = side;
    this.base = base;
    this.uplift = uplift;
  }

  /** Factor on side resistance in compression. */
  public double side() {
    return side;
  }

  /** Factor on base resistance. */
  public double base() {
    return base;
  }

  /** Factor on side resistance in uplift. */
  public double uplift() {
    return uplift;
  }
}
