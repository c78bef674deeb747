package underhold.mechanics.steel;

import java.util.Optional;

/**
 * Sidesway buckling of the web, AISC 360-16 J10.4; phi 0.85, Omega 1.76.
 *
 * <p>With s = (h/tw) / (Lb/bf): loaded flange restrained against rotation and s at most 2.3: Rn =
 * Cr tw^3 tf/h^2 (1 + 0.4 s^3); not restrained and s at most 1.7: Rn = Cr tw^3 tf/h^2 (0.4 s^3);
 * above these it does not occur. Cr = 960,000 ksi where the moment at the force is below My (LRFD
 * Mu, ASD 1.5 Ma), else 480,000 ksi. Lb is the longest unbraced length of either flange at the
 * force.
 *
 * <p>From memory, verify.
 */
public final class WebSideswayBuckling {
  /** Limit of s with the loaded flange restrained against rotation. */
  public static final double RESTRAINED_LIMIT = 2.3;

  /** Limit of s with the loaded flange free to rotate. */
  public static final double FREE_LIMIT = 1.7;

  private static final double ELASTIC_COEFFICIENT = 960_000 * Steel.KILOPASCALS_PER_KSI;
  private static final double YIELDED_COEFFICIENT = 480_000 * Steel.KILOPASCALS_PER_KSI;

  private WebSideswayBuckling() {}

  /** s = (h/tw) / (Lb/bf). */
  public static double ratio(RolledSection section, double unbracedMetres) {
    Require.positive("unbraced length", unbracedMetres);
    return section.plates().webSlenderness()
        * section.plates().flangeWidthMetres()
        / unbracedMetres;
  }

  /**
   * Rn, kN; empty where this limit state does not occur.
   *
   * @param restrained whether the loaded flange is held against rotation
   * @param belowYield whether the moment at the force is below Fy Sx
   */
  public static Optional<NominalStrength> of(
      RolledSection section, double unbracedMetres, boolean restrained, boolean belowYield) {
    double ratio = ratio(section, unbracedMetres);
    if (ratio > (restrained ? RESTRAINED_LIMIT : FREE_LIMIT)) {
      return Optional.empty();
    }
    RolledSection.Plates plates = section.plates();
    double coefficient = belowYield ? ELASTIC_COEFFICIENT : YIELDED_COEFFICIENT;
    double clear = plates.clearWebMetres();
    double nominal =
        coefficient
            * Math.pow(plates.webThicknessMetres(), 3)
            * plates.flangeThicknessMetres()
            / (clear * clear)
            * ((restrained ? 1 : 0) + 0.4 * Math.pow(ratio, 3));
    return Optional.of(new NominalStrength(nominal, 0.85, 1.76));
  }
}
