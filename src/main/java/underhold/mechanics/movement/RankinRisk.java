package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Risk to buildings by settlement and slope, the worse of the two.
 *
 * <p>Source: Rankin, Ground movements resulting from urban tunnelling, 1988. Basis: from memory,
 * verify. A first sieve before strains are reckoned. Bounds belong to the lower category.
 */
public enum RankinRisk {
  /** Below 10 mm and 1 in 500: superficial damage unlikely. */
  NEGLIGIBLE(0.010, 1.0 / 500),
  /** To 50 mm and 1 in 200. */
  SLIGHT(0.050, 1.0 / 200),
  /** To 75 mm and 1 in 50. */
  MODERATE(0.075, 1.0 / 50),
  /** Above. */
  HIGH(Double.MAX_VALUE, Double.MAX_VALUE);

  /** Where the table stands. */
  public static final Citation CITATION =
      new Citation(
          "Rankin, Ground movements resulting from urban tunnelling, 1988", Provenance.FROM_MEMORY);

  private final double mostSettlement;
  private final double mostSlope;

  RankinRisk(double mostSettlement, double mostSlope) {
    this.mostSettlement = mostSettlement;
    this.mostSlope = mostSlope;
  }

  /**
   * The category.
   *
   * @param settlementMetres largest settlement, m
   * @param slope steepest slope between neighbouring points
   */
  public static RankinRisk of(double settlementMetres, double slope) {
    Require.notNegative(settlementMetres, "settlement", "m");
    Require.notNegative(slope, "slope", "");
    for (RankinRisk risk : values()) {
      if (settlementMetres <= risk.mostSettlement && slope <= risk.mostSlope) {
        return risk;
      }
    }
    return HIGH;
  }

  /** Whether the category has an upper bound. */
  public boolean bounded() {
    return this != HIGH;
  }

  /** Largest settlement of a bounded category, m. */
  public double mostSettlementMetres() {
    requireBounded();
    return mostSettlement;
  }

  /** Steepest slope of a bounded category. */
  public double mostSlope() {
    requireBounded();
    return mostSlope;
  }

  private void requireBounded() {
    if (!bounded()) {
      throw new IllegalStateException("the highest risk has no upper bound");
    }
  }
}
