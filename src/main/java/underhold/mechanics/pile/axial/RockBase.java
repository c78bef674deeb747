package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Unit base resistance of a socket in massive rock: qb = 2.5 qu.
 *
 * <p>Symbols: qu unconfined compressive strength [kPa]. Assumptions: massive or tightly jointed
 * rock, sound for two diameters below the base, no voids, base cleaned and inspected. A socket
 * drilled blind, as under low headroom, has no inspected base: count none (judgement). Source: FHWA
 * GEC 10, 2010, 13.3.5.3.2; AASHTO LRFD 10.8.3.5.4c; basis: from memory, verify.
 */
public final class RockBase {
  private static final double FACTOR = 2.5;

  private RockBase() {}

  /** qb, kPa, of the weaker of rock and concrete (judgement). */
  public static double baseKilopascals(double rockKilopascals, double concreteKilopascals) {
    return FACTOR
        * Math.min(
            Require.positive(rockKilopascals, "strength of rock", "kPa"),
            Require.positive(concreteKilopascals, "strength of concrete", "kPa"));
  }
}
