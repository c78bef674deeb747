package underhold.mechanics.concrete;

/**
 * A rectangular section with tension steel only, strength design.
 *
 * <p>a = As fy / (0.85 f'c b), Mn = As fy (d - a/2), phi = 0.90 while the steel strain is at least
 * 0.005 (ACI 318-19 21.2.2 and 22.2; the formula is confirmed by a published example, the strain
 * limit is from memory). Shear without stirrups: Vc = 8 lambda_s rho^(1/3) sqrt(f'c) b d in psi,
 * lambda_s = sqrt(2 / (1 + d/10 in)) at most 1, phi = 0.75 (ACI 318-19 22.5.5.1, from memory,
 * verify). Normal weight concrete. Compression steel and axial load are ignored.
 *
 * @param widthMetres b
 * @param effectiveDepthMetres d, to the centre of the tension steel
 * @param steelAreaSquareMetres As
 * @param concreteStrengthKilopascals f'c
 * @param steelYieldKilopascals fy
 */
public record ReinforcedSection(
    double widthMetres,
    double effectiveDepthMetres,
    double steelAreaSquareMetres,
    double concreteStrengthKilopascals,
    double steelYieldKilopascals) {
  /** Strength reduction factor of tension-controlled flexure. */
  public static final double PHI_FLEXURE = 0.90;

  /** Strength reduction factor of shear. */
  public static final double PHI_SHEAR = 0.75;

  private static final double KILOPASCALS_PER_PSI = 6.894757293168361;
  private static final double TEN_INCHES_METRES = 0.254;
  private static final double CRUSHING_STRAIN = 0.003;
  private static final double TENSION_CONTROLLED_STRAIN = 0.005;

  public ReinforcedSection {
    Require.positive("width", widthMetres);
    Require.positive("effective depth", effectiveDepthMetres);
    Require.positive("steel area", steelAreaSquareMetres);
    Require.positive("concrete strength", concreteStrengthKilopascals);
    Require.positive("steel yield", steelYieldKilopascals);
  }

  /** Depth of the stress block a, m. */
  public double stressBlock() {
    return steelAreaSquareMetres
        * steelYieldKilopascals
        / (0.85 * concreteStrengthKilopascals * widthMetres);
  }

  /**
   * Depth of the neutral axis c = a / beta1, m; beta1 = 0.85 to 4,000 psi, less 0.05 per 1,000 psi,
   * at least 0.65.
   */
  public double neutralAxis() {
    double psi = concreteStrengthKilopascals / KILOPASCALS_PER_PSI;
    double beta = Math.max(0.65, Math.min(0.85, 0.85 - 0.05 * (psi - 4000) / 1000));
    return stressBlock() / beta;
  }

  /** Strain of the tension steel at nominal strength. */
  public double steelStrain() {
    return CRUSHING_STRAIN * (effectiveDepthMetres - neutralAxis()) / neutralAxis();
  }

  /** Whether the section is tension controlled, so that phi Mn below holds. */
  public boolean tensionControlled() {
    return steelStrain() >= TENSION_CONTROLLED_STRAIN;
  }

  /** phi Mn, kN m. Valid where {@link #tensionControlled()}. */
  public double designMoment() {
    if (!tensionControlled()) {
      throw new IllegalStateException(
          "the section is not tension controlled; phi = 0.90 does not hold");
    }
    return PHI_FLEXURE
        * steelAreaSquareMetres
        * steelYieldKilopascals
        * (effectiveDepthMetres - stressBlock() / 2);
  }

  /** phi Vc without stirrups, kN. */
  public double designShear() {
    double ratio = steelAreaSquareMetres / (widthMetres * effectiveDepthMetres);
    double size = Math.min(1, Math.sqrt(2 / (1 + effectiveDepthMetres / TEN_INCHES_METRES)));
    double stress =
        8 * size * Math.cbrt(ratio) * Math.sqrt(concreteStrengthKilopascals * KILOPASCALS_PER_PSI);
    return PHI_SHEAR * stress * widthMetres * effectiveDepthMetres;
  }
}
