package underhold.mechanics.micropile;

/**
 * Factored axial resistance of a cased micropile by load and resistance factors.
 *
 * <pre>
 * compression   0.75 x 0.85 [0.85 f'c Ag + Fy (Ab + Ac)]
 * tension       0.80 x Fy (Ab + Ac)
 * bond          0.55 alpha pi D L, up to 0.70 with a test
 * </pre>
 *
 * <p>Source: AASHTO LRFD 10.9.3 and Table 10.5.5.2.5. Basis: from memory, verify. Yields as in
 * {@link FhwaCapacity}.
 *
 * @param sections the same pile by allowable stress
 */
public record LrfdCapacity(FhwaCapacity sections) {
  /** Resistance factor of compression. */
  public static final double PHI_COMPRESSION = 0.75;

  /** Resistance factor of tension. */
  public static final double PHI_TENSION = 0.80;

  /** Resistance factor of bond without a test. */
  public static final double PHI_BOND = 0.55;

  /** Resistance factor of bond with a test. */
  public static final double PHI_BOND_TESTED = 0.70;

  private static final double ECCENTRICITY_SHARE = 0.85;
  private static final double CONCRETE_SHARE = 0.85;

  /** Cased, compression, kN. */
  public double casedCompression() {
    return PHI_COMPRESSION
        * ECCENTRICITY_SHARE
        * (CONCRETE_SHARE * sections.materials().groutKilopascals() * sections.groutInCasing()
            + sections.casedCompressionYield() * steel());
  }

  /** Cased, tension, kN. */
  public double casedTension() {
    return PHI_TENSION * sections.casedTensionYield() * steel();
  }

  private double steel() {
    return sections.barAreaSquareMetres() + sections.casing().area();
  }
}
