package underhold.mechanics.beam;

/**
 * Two equal loads at the same distance from their supports, as under a wall that sits on two packs:
 * M = P c, V = P, mid-span deflection P c (3 L^2 - 4 c^2) / (24 E I). Statics.
 *
 * @param eachKilonewtons P, each load
 * @param fromSupportMetres c, at most half the span
 * @param spanMetres L
 */
public record TwoLoadBeam(double eachKilonewtons, double fromSupportMetres, double spanMetres) {
  public TwoLoadBeam {
    Require.notNegative("load", eachKilonewtons);
    Require.positive("distance from the support", fromSupportMetres);
    Require.positive("span", spanMetres);
    if (fromSupportMetres > spanMetres / 2) {
      throw new IllegalArgumentException("the loads are nearer to the far support");
    }
  }

  /** M between the loads, kN m. */
  public double moment() {
    return eachKilonewtons * fromSupportMetres;
  }

  /** Each reaction, kN. */
  public double reaction() {
    return eachKilonewtons;
  }

  /** Mid-span deflection, m. */
  public double midspanDeflection(double stiffness) {
    Require.positive("E I", stiffness);
    return eachKilonewtons
        * fromSupportMetres
        * (3 * spanMetres * spanMetres - 4 * fromSupportMetres * fromSupportMetres)
        / (24 * stiffness);
  }
}
