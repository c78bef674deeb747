package underhold.mechanics.bracket;

/**
 * Steel strength of ductile anchors: phi Nsa = 0.75 n Ase futa; phi Vsa = 0.65 n 0.6 Ase futa.
 *
 * <p>futa at most 1.9 fya and 125 ksi. Source: ACI 318-19 17.6.1 and 17.7.1; phi 0.75 and 0.65 read
 * in a design guide to that chapter, the rest from memory, verify. Factored loads.
 *
 * @param count n
 * @param stressAreaSquareMetres Ase of one anchor
 * @param ultimateKilopascals futa
 * @param yieldKilopascals fya
 */
public record AnchorSteel(
    int count, double stressAreaSquareMetres, double ultimateKilopascals, double yieldKilopascals) {
  /** Resistance factor in tension, ductile steel. */
  public static final double PHI_TENSION = 0.75;

  /** Resistance factor in shear, ductile steel. */
  public static final double PHI_SHEAR = 0.65;

  /** Shear strength as a share of tension strength. */
  public static final double SHEAR_SHARE = 0.6;

  private static final double GREATEST_KILOPASCALS = 125 * Units.KSI;
  private static final double GREATEST_OVER_YIELD = 1.9;

  public AnchorSteel {
    if (count < 1) {
      throw new IllegalArgumentException("there is at least one anchor");
    }
    Require.positive("stress area", stressAreaSquareMetres);
    Require.positive("ultimate strength", ultimateKilopascals);
    Require.positive("yield", yieldKilopascals);
  }

  /** futa that counts, kPa. */
  public double strength() {
    return Math.min(
        ultimateKilopascals,
        Math.min(GREATEST_OVER_YIELD * yieldKilopascals, GREATEST_KILOPASCALS));
  }

  /** phi Nsa, kN. */
  public double designTension() {
    return PHI_TENSION * count * stressAreaSquareMetres * strength();
  }

  /** phi Vsa, kN. */
  public double designShear() {
    return PHI_SHEAR * SHEAR_SHARE * count * stressAreaSquareMetres * strength();
  }
}
