package underhold.mechanics.bracket;

/**
 * Concrete breakout of anchors in tension.
 *
 * <pre>
 * Nb = kc lambda sqrt(f'c) hef^1.5 (lb, psi, in)     ANco = 9 hef^2
 * Ncbg = (ANc/ANco) psi_ec psi_ed psi_c Nb
 * psi_ed = 0.7 + 0.3 ca/(1.5 hef), at most 1     psi_ec = 1/(1 + e'/(1.5 hef)), at most 1
 * </pre>
 *
 * <p>kc 24 cast in, 17 post-installed unless the product's report says otherwise (21 is met).
 * Forms, ANco, psi_ec, psi_ed, kc 17 and 21 read in a 2025 design guide to ACI 318-19 chapter 17;
 * kc 24 and psi_c (cracked 1; uncracked 1.25 cast, 1.4 post-installed) from memory, verify.
 * Concrete at most 10,000 psi (8,000 psi post-installed). Old brick or rubble has no such formula:
 * bolt through.
 *
 * @param factor kc in lb, psi and in
 * @param concreteKilopascals f'c
 * @param embedmentMetres hef
 */
public record TensionBreakout(double factor, double concreteKilopascals, double embedmentMetres) {
  /** kc of cast-in anchors. */
  public static final double CAST_IN = 24;

  /** kc of post-installed anchors without a product report. */
  public static final double POST_INSTALLED = 17;

  /** Resistance factor of post-installed anchors. */
  public static final double PHI_POST_INSTALLED = 0.65;

  /** Resistance factor of cast-in anchors. */
  public static final double PHI_CAST_IN = 0.70;

  /** Edge distance and half spacing beyond which nothing is lost, in embedments. */
  public static final double REACH = 1.5;

  private static final double EDGE_FIXED = 0.7;
  private static final double EDGE_VARIABLE = 0.3;

  public TensionBreakout {
    Require.positive("factor", factor);
    Require.positive("concrete strength", concreteKilopascals);
    Require.positive("embedment", embedmentMetres);
  }

  /** Nb, kN, normal weight concrete. */
  public double basic() {
    return factor
        * Math.sqrt(concreteKilopascals / Units.PSI)
        * Math.pow(embedmentMetres / Units.INCH, 1.5)
        * Units.POUND;
  }

  /** ANco, m2. */
  public double fullArea() {
    return 4 * REACH * REACH * embedmentMetres * embedmentMetres;
  }

  /**
   * ANc of one row of anchors parallel to one edge, m2.
   *
   * @param spread distance between the outer anchors of the row
   * @param edge distance of the row to the edge
   */
  public double rowArea(double spread, double edge) {
    Require.notNegative("spread", spread);
    Require.positive("edge distance", edge);
    double reach = REACH * embedmentMetres;
    return (Math.min(edge, reach) + reach) * (2 * reach + spread);
  }

  /** psi_ed. */
  public double edgeFactor(double leastEdgeMetres) {
    Require.positive("edge distance", leastEdgeMetres);
    return Math.min(1, EDGE_FIXED + EDGE_VARIABLE * leastEdgeMetres / (REACH * embedmentMetres));
  }

  /** psi_ec. */
  public double eccentricityFactor(double eccentricityMetres) {
    Require.notNegative("eccentricity", eccentricityMetres);
    return 1 / (1 + eccentricityMetres / (REACH * embedmentMetres));
  }

  /**
   * Ncbg of cracked concrete, kN, before phi.
   *
   * @param area ANc of the group, at most n ANco
   */
  public double group(double area, double leastEdgeMetres, double eccentricityMetres) {
    Require.positive("area", area);
    return area
        / fullArea()
        * edgeFactor(leastEdgeMetres)
        * eccentricityFactor(eccentricityMetres)
        * basic();
  }
}
