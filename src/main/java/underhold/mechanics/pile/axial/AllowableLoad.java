package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Working load of a pile by one factor of safety on the sum of side and base.
 *
 * <p>Factors by what has been tested: 2.0 static load test, 2.5 dynamic test, 3.0 none (usual
 * load); 1.5, 1.9, 2.25 for unusual and 1.15, 1.4, 1.7 for extreme loads. Source: USACE EM
 * 1110-2-2906, 1991, chapter 4; basis: from memory, verify. Side and base are added only where they
 * are compatible at the working settlement.
 */
public final class AllowableLoad {
  private AllowableLoad() {}

  /** What has been tested on the site. */
  public enum TestRegime {
    /** Static load test on the site. */
    STATIC(2.0, 1.5, 1.15),
    /** Dynamic test. */
    DYNAMIC(2.5, 1.9, 1.4),
    /** No test: by theory alone. */
    NONE(3.0, 2.25, 1.7);

    private final double usual;
    private final double unusual;
    private final double extreme;

    TestRegime(double usual, double unusual, double extreme) {
      this.usual = usual;
      this.unusual = unusual;
      this.extreme = extreme;
    }

    /** Factor for the usual load. */
    public double usual() {
      return usual;
    }

    /** Factor for an unusual load. */
    public double unusual() {
      return unusual;
    }

    /** Factor for an extreme load. */
    public double extreme() {
      return extreme;
    }
  }

  /** (side + base)/factor, kN. */
  public static double kilonewtons(
      double sideKilonewtons, double baseKilonewtons, double safetyFactor) {
    Require.notNegative(sideKilonewtons, "side resistance", "kN");
    Require.notNegative(baseKilonewtons, "base resistance", "kN");
    Require.between(safetyFactor, 1, 10, "factor of safety", "");
    return (sideKilonewtons + baseKilonewtons) / safetyFactor;
  }
}
