package underhold.mechanics.micropile;

/**
 * Strengths of a micropile's parts.
 *
 * @param groutKilopascals f'c, cylinder strength of the grout
 * @param casingYieldKilopascals Fy of the casing
 * @param barYieldKilopascals Fy of the bar
 */
public record PileMaterials(
    double groutKilopascals, double casingYieldKilopascals, double barYieldKilopascals) {
  /**
   * Steel stress at which confined grout crushes, 0.003 x 29,000 ksi = 87 ksi. FHWA NHI-05-039, p.
   * 5-13.
   */
  public static final double CRUSHING_LIMIT_KILOPASCALS = 87 * Units.KSI;

  public PileMaterials {
    Require.positive("grout strength", groutKilopascals);
    Require.positive("casing yield", casingYieldKilopascals);
    Require.positive("bar yield", barYieldKilopascals);
  }
}
