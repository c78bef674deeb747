package underhold.mechanics.pile.structure;

import underhold.mechanics.soil.Require;

/** Bending stress at the edge of a round pile: M (D/2)/I; M [kN m], D [m], I [m4]. Statics. */
public final class BendingStress {
  private BendingStress() {}

  /** The stress, kPa. */
  public static double kilopascals(
      double momentKilonewtonMetres, double diameterMetres, double inertia) {
    return Require.finite(momentKilonewtonMetres, "moment", "kN m")
        * Require.positive(diameterMetres, "diameter", "m")
        / 2
        / Require.positive(inertia, "second moment of area", "m4");
  }
}
