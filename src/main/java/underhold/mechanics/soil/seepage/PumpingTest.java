package underhold.mechanics.soil.seepage;

import underhold.mechanics.soil.Require;

/**
 * Permeability from a steady pumping test in an unconfined layer.
 *
 * <p>Formula: k = Q ln(r2 / r1) / (pi (h2^2 - h1^2)); Q flow [m3/s], r1 and r2 distances of two
 * observation wells from the pumped one [m], h1 and h2 heights of water in them above the base of
 * the layer [m]. Assumptions: steady flow to a well that reaches the base, level base, flow along
 * the layer (Dupuit). Valid range: r2 above r1, h2 above h1. Accuracy: exact under the assumptions;
 * in the field a factor of two is good. Source: G. Thiem 1906 after J. Dupuit; form from memory,
 * verify, confirmed by a published example.
 */
public final class PumpingTest {
  private PumpingTest() {}

  /**
   * An observation well.
   *
   * @param distanceMetres from the pumped well
   * @param waterMetres water above the base of the layer
   */
  public record Well(double distanceMetres, double waterMetres) {
    public Well {
      Require.positive(distanceMetres, "distance from the pumped well", "m");
      Require.positive(waterMetres, "water above the base", "m");
    }
  }

  /** k, m/s. */
  public static double permeability(double flowCubicMetresPerSecond, Well near, Well far) {
    Require.positive(flowCubicMetresPerSecond, "flow", "m3/s");
    Require.positive(far.distanceMetres() - near.distanceMetres(), "distance between wells", "m");
    Require.positive(far.waterMetres() - near.waterMetres(), "rise of water between wells", "m");
    return flowCubicMetresPerSecond
        * Math.log(far.distanceMetres() / near.distanceMetres())
        / (Math.PI
            * (far.waterMetres() * far.waterMetres() - near.waterMetres() * near.waterMetres()));
  }
}
