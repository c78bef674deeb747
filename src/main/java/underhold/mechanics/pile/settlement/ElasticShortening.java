package underhold.mechanics.pile.settlement;

import underhold.mechanics.soil.Require;

/**
 * Shortening of a pile that sheds no load on the way: P L/(E A).
 *
 * <p>Symbols: P [kN], L [m], E A axial stiffness [kN]. Exact for a free-standing length or a column
 * through soft ground to a socket. Statics.
 */
public final class ElasticShortening {
  private ElasticShortening() {}

  /** The shortening, m. */
  public static double metres(
      double loadKilonewtons, double lengthMetres, double axialStiffnessKilonewtons) {
    return Require.notNegative(loadKilonewtons, "load", "kN")
        * Require.notNegative(lengthMetres, "length", "m")
        / Require.positive(axialStiffnessKilonewtons, "axial stiffness", "kN");
  }
}
