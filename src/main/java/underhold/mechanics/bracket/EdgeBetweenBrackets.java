package underhold.mechanics.bracket;

/**
 * How far a footing, wall or slab edge reaches from bracket to bracket under an even load.
 *
 * <pre>
 * inside bays   s = sqrt(10 M / w)     end bay s = sqrt(8 M / w)     shear s = 2 (V / w + d)
 * </pre>
 *
 * <p>M and V design (reduced) strengths, w factored. The 10 needs steel or strength in the top as
 * well as in the bottom over the brackets; without it use {@link #endBay()} throughout. Shear
 * counts at d from the bracket. By statics; moment coefficients of ACI 318 practice.
 *
 * @param designMoment phi Mn, kN m
 * @param designShear phi Vn, kN
 * @param factoredLoad w, kN/m
 * @param effectiveDepthMetres d; 0 to count shear at the bracket
 */
public record EdgeBetweenBrackets(
    double designMoment, double designShear, double factoredLoad, double effectiveDepthMetres) {
  private static final double INSIDE = 10;
  private static final double END_BAY = 8;

  public EdgeBetweenBrackets {
    Require.positive("design moment", designMoment);
    Require.positive("design shear", designShear);
    Require.positive("factored load", factoredLoad);
    Require.notNegative("effective depth", effectiveDepthMetres);
  }

  /** Spacing that the moment of inside bays allows, m. */
  public double inside() {
    return Math.sqrt(INSIDE * designMoment / factoredLoad);
  }

  /** Spacing that the moment of the end bay, or of a strip without top steel, allows, m. */
  public double endBay() {
    return Math.sqrt(END_BAY * designMoment / factoredLoad);
  }

  /** Spacing that shear allows, m. */
  public double byShear() {
    return 2 * (designShear / factoredLoad + effectiveDepthMetres);
  }
}
