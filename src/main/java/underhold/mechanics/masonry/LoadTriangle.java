package underhold.mechanics.masonry;

/**
 * Triangle of masonry that rests on the support of an opening.
 *
 * <p>Base = 1.1 x clear span; the 45 degree triangle is half its base high, the 60 degree
 * interaction triangle 0.866 of the base. All masonry and point loads inside the first go to the
 * support; loads between the two count half. Source: Building Research Establishment, Good Building
 * Guide 10, seen second-hand.
 *
 * @param clearSpanMetres clear width of the opening
 */
public record LoadTriangle(double clearSpanMetres) {
  private static final double BASE_OVER_SPAN = 1.1;

  public LoadTriangle {
    Require.positive("clear span", clearSpanMetres);
  }

  /** Base of both triangles, m. */
  public double baseMetres() {
    return BASE_OVER_SPAN * clearSpanMetres;
  }

  /** Height of the 45 degree triangle, m. */
  public double loadHeightMetres() {
    return baseMetres() / 2;
  }

  /** Height of the 60 degree interaction triangle, m. */
  public double interactionHeightMetres() {
    return baseMetres() * Math.sqrt(3) / 2;
  }

  /**
   * Weight of a triangle over the clear span at that base angle, W = g t L^2 tan(angle) / 4, kN.
   */
  public double weight(double unitWeight, double thicknessMetres, double baseAngleDegrees) {
    Require.positive("unit weight", unitWeight);
    Require.positive("wall thickness", thicknessMetres);
    return unitWeight
        * thicknessMetres
        * clearSpanMetres
        * clearSpanMetres
        * Math.tan(Math.toRadians(baseAngleDegrees))
        / 4;
  }

  /** Moment of that weight on a simple span, M = W L / 6, kN m. */
  public double moment(double unitWeight, double thicknessMetres, double baseAngleDegrees) {
    return weight(unitWeight, thicknessMetres, baseAngleDegrees) * clearSpanMetres / 6;
  }

  /** End reaction, W / 2, kN. */
  public double shear(double unitWeight, double thicknessMetres, double baseAngleDegrees) {
    return weight(unitWeight, thicknessMetres, baseAngleDegrees) / 2;
  }

  /** Least length of sound wall each side: 0.6 m or 0.2 x clear span (BS 5977-1, clause 5e). */
  public double leastPierMetres() {
    return Math.max(0.6, 0.2 * clearSpanMetres);
  }
}
