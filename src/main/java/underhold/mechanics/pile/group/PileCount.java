package underhold.mechanics.pile.group;

import underhold.mechanics.soil.Require;

/** How many piles a load needs: the least whole n with n eta Qall at least P. Arithmetic. */
public final class PileCount {
  private static final double ROUNDING = 1e-9;

  private PileCount() {}

  /**
   * The number, 1 at least.
   *
   * @param loadKilonewtons P
   * @param efficiency eta, above 0
   * @param allowableKilonewtons Qall of one pile
   */
  public static int needed(double loadKilonewtons, double efficiency, double allowableKilonewtons) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    Require.between(efficiency, 1e-3, 10, "group factor", "");
    Require.positive(allowableKilonewtons, "allowable load of a pile", "kN");
    double number = loadKilonewtons / (efficiency * allowableKilonewtons);
    return (int) Math.max(Math.ceil(number - ROUNDING), 1);
  }
}
