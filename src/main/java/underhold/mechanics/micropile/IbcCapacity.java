package underhold.mechanics.micropile;

/**
 * Allowable axial compression of a micropile by the US building code.
 *
 * <pre>
 * grout in casing or rock 0.33 f'c, uncased in soil 0.30 f'c
 * pipe 0.40 Fy, at most 32 ksi      bar 0.40 fy, at most 30 ksi
 * </pre>
 *
 * <p>Source: IBC 2018, Table 1810.3.2.6; the share of steel 1810.3.10.3. Basis: from memory,
 * verify.
 *
 * @param materials strengths
 * @param casing casing of the upper length
 * @param barAreaSquareMetres Ab; 0 for none
 */
public record IbcCapacity(
    PileMaterials materials, CasingSection casing, double barAreaSquareMetres) {
  /** Share of f'c allowed inside pipe or rock. */
  public static final double GROUT_CASED_SHARE = 0.33;

  /** Share of f'c allowed uncased in soil. */
  public static final double GROUT_UNCASED_SHARE = 0.30;

  /** Share of yield allowed in compression. */
  public static final double STEEL_SHARE = 0.40;

  /** Greatest compression in the pipe, 32 ksi, kPa. */
  public static final double PIPE_LIMIT_KILOPASCALS = 32 * Units.KSI;

  /** Greatest compression in the bar, 30 ksi, kPa. */
  public static final double BAR_LIMIT_KILOPASCALS = 30 * Units.KSI;

  /** Least share of the load that steel must take in a cased or rock-socketed pile. */
  public static final double LEAST_STEEL_SHARE = 0.40;

  public IbcCapacity {
    Require.notNegative("bar area", barAreaSquareMetres);
    if (barAreaSquareMetres >= casing.boreArea()) {
      throw new IllegalArgumentException("the bar does not fit into the casing");
    }
  }

  /** Allowable stress of the pipe, kPa. */
  public double pipeStress() {
    return Math.min(STEEL_SHARE * materials.casingYieldKilopascals(), PIPE_LIMIT_KILOPASCALS);
  }

  /** Allowable stress of the bar, kPa. */
  public double barStress() {
    return Math.min(STEEL_SHARE * materials.barYieldKilopascals(), BAR_LIMIT_KILOPASCALS);
  }

  /** Cased, kN. */
  public double casedCompression() {
    return groutCased() + steelCased();
  }

  /** Uncased in a hole in soil, kN. */
  public double uncasedCompression(double holeDiameterMetres) {
    Require.positive("hole diameter", holeDiameterMetres);
    double grout = Circle.area(holeDiameterMetres) - barAreaSquareMetres;
    Require.positive("grout area", grout);
    return GROUT_UNCASED_SHARE * materials.groutKilopascals() * grout
        + barStress() * barAreaSquareMetres;
  }

  /** Steel's share of the cased capacity; at least 0.40 asked. */
  public double steelShareCased() {
    return steelCased() / casedCompression();
  }

  private double groutCased() {
    return GROUT_CASED_SHARE
        * materials.groutKilopascals()
        * (casing.boreArea() - barAreaSquareMetres);
  }

  private double steelCased() {
    return pipeStress() * casing.area() + barStress() * barAreaSquareMetres;
  }
}
