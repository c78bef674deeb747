package underhold.mechanics.beam;

/**
 * A load on two needles side by side: the nearer takes P/2 (1 + 2 e/s), at most all of it, and is
 * designed for at least a stated share of P.
 *
 * <p>Shares by statics of a stiff collar. The least share (0.55 to 0.60 in practice) is from
 * memory, verify.
 *
 * @param loadKilonewtons P, of the pair
 * @param eccentricityMetres e, from the mid-line of the needles
 * @param spacingMetres s, between the needles
 */
public record NeedlePair(double loadKilonewtons, double eccentricityMetres, double spacingMetres) {
  public NeedlePair {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("eccentricity", eccentricityMetres);
    Require.positive("spacing of the needles", spacingMetres);
    if (eccentricityMetres > spacingMetres / 2) {
      throw new IllegalArgumentException(
          "the load lies outside the pair: the far needle would be lifted");
    }
  }

  /** Share of the nearer needle, 0.5 to 1. */
  public double share() {
    return 0.5 + eccentricityMetres / spacingMetres;
  }

  /** Load on the nearer needle, kN, at least that share of P. */
  public double nearer(double leastShare) {
    if (!(leastShare >= 0.5 && leastShare <= 1)) {
      throw new IllegalArgumentException("the least share of one needle is from 0.5 to 1");
    }
    return loadKilonewtons * Math.max(leastShare, share());
  }
}
