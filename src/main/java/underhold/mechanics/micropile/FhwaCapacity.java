package underhold.mechanics.micropile;

/**
 * Allowable axial load of a micropile's sections, service load design.
 *
 * <pre>
 * cased, compression     0.40 f'c Ag + 0.47 Fy (Ab + Ac)     Fy = least of bar, casing, 87 ksi
 * cased, tension         0.55 Fy (Ab + Ac)                   Fy = least of bar and casing
 * uncased, compression   0.40 f'c Ag + 0.47 Fy Ab            Fy at most 87 ksi
 * uncased, tension       0.55 Fy Ab
 * </pre>
 *
 * <p>Ag grout (inside the casing, or in the hole) less the bar. In aggressive ground the casing
 * gets no tension. Source: FHWA NHI-05-039 (2005), eq. 5-1 and 5-2, p. 5-13 and 5-14, read; the bar
 * in the least yield and the uncased equations 5-7 and 5-8 from memory, verify. Buckling is apart
 * ({@link FreeLength}, {@link BracedBuckling}).
 *
 * @param materials strengths
 * @param casing casing of the upper length
 * @param barAreaSquareMetres Ab; 0 for none
 */
public record FhwaCapacity(
    PileMaterials materials, CasingSection casing, double barAreaSquareMetres) {
  /** Share of f'c allowed, 0.85 / 2.12 rounded. */
  public static final double GROUT_SHARE = 0.40;

  /** Share of Fy allowed in compression, 1 / 2.12. */
  public static final double COMPRESSION_SHARE = 0.47;

  /** Share of Fy allowed in tension, 1 / 1.82. */
  public static final double TENSION_SHARE = 0.55;

  public FhwaCapacity {
    Require.notNegative("bar area", barAreaSquareMetres);
    if (barAreaSquareMetres >= casing.boreArea()) {
      throw new IllegalArgumentException("the bar does not fit into the casing");
    }
  }

  /** Grout inside the casing, m2. */
  public double groutInCasing() {
    return casing.boreArea() - barAreaSquareMetres;
  }

  /** Yield that counts in compression of the cased length, kPa. */
  public double casedCompressionYield() {
    return Math.min(casedTensionYield(), PileMaterials.CRUSHING_LIMIT_KILOPASCALS);
  }

  /** Yield that counts in tension of the cased length, kPa. */
  public double casedTensionYield() {
    return barAreaSquareMetres > 0
        ? Math.min(materials.casingYieldKilopascals(), materials.barYieldKilopascals())
        : materials.casingYieldKilopascals();
  }

  /** Yield of the bar that counts in compression, kPa. */
  public double barCompressionYield() {
    return Math.min(materials.barYieldKilopascals(), PileMaterials.CRUSHING_LIMIT_KILOPASCALS);
  }

  /** Cased, compression, kN. */
  public double casedCompression() {
    return GROUT_SHARE * materials.groutKilopascals() * groutInCasing()
        + COMPRESSION_SHARE * casedCompressionYield() * (barAreaSquareMetres + casing.area());
  }

  /** Cased, tension, kN. */
  public double casedTension() {
    return TENSION_SHARE * casedTensionYield() * (barAreaSquareMetres + casing.area());
  }

  /** Uncased in a hole, compression, kN. */
  public double uncasedCompression(double holeDiameterMetres) {
    Require.positive("hole diameter", holeDiameterMetres);
    double grout = Circle.area(holeDiameterMetres) - barAreaSquareMetres;
    Require.positive("grout area", grout);
    return GROUT_SHARE * materials.groutKilopascals() * grout
        + COMPRESSION_SHARE * barCompressionYield() * barAreaSquareMetres;
  }

  /** Uncased, tension, kN. */
  public double uncasedTension() {
    return TENSION_SHARE * materials.barYieldKilopascals() * barAreaSquareMetres;
  }
}
