package underhold.mechanics.bracket;

/**
 * Concrete breakout of an anchor sheared towards an edge.
 *
 * <pre>
 * Vb = lesser of 7 (le/da)^0.2 sqrt(da) sqrt(f'c) ca1^1.5 and 9 sqrt(f'c) ca1^1.5 (lb, psi, in)
 * AVco = 4.5 ca1^2     psi_h = sqrt(1.5 ca1/ha), at least 1
 * </pre>
 *
 * <p>le load-bearing length, at most 8 da. Source: ACI 318-19 17.7.2. Basis: from memory, verify.
 *
 * @param concreteKilopascals f'c
 * @param edgeMetres ca1
 * @param diameterMetres da
 * @param bearingLengthMetres le
 */
public record ShearBreakout(
    double concreteKilopascals,
    double edgeMetres,
    double diameterMetres,
    double bearingLengthMetres) {
  private static final double LONGEST_DIAMETERS = 8;

  public ShearBreakout {
    Require.positive("concrete strength", concreteKilopascals);
    Require.positive("edge distance", edgeMetres);
    Require.positive("diameter", diameterMetres);
    Require.positive("bearing length", bearingLengthMetres);
  }

  /** Vb, kN. */
  public double basic() {
    double inch = diameterMetres / Units.INCH;
    double length = Math.min(bearingLengthMetres / diameterMetres, LONGEST_DIAMETERS);
    double factor = Math.min(7 * Math.pow(length, 0.2) * Math.sqrt(inch), 9);
    return factor
        * Math.sqrt(concreteKilopascals / Units.PSI)
        * Math.pow(edgeMetres / Units.INCH, 1.5)
        * Units.POUND;
  }

  /** AVco, m2. */
  public double fullArea() {
    return 4.5 * edgeMetres * edgeMetres;
  }

  /** psi_h of a member of depth ha. */
  public double depthFactor(double memberDepthMetres) {
    Require.positive("depth of member", memberDepthMetres);
    return Math.max(1, Math.sqrt(1.5 * edgeMetres / memberDepthMetres));
  }
}
