package underhold.mechanics.steel;

/**
 * Web under a force on one flange, EN 1993-1-5 section 6: FRd = chi fy ly tw, gamma M1 = 1.0; chi =
 * 0.5 / lambda at most 1; lambda = sqrt(ly tw fy / Fcr); Fcr = 0.9 kF E tw^3 / hw.
 *
 * <p>kF = 6 inside (no stiffeners near), kF = 2 + 6 (ss + c)/hw, at most 6, at the end, c from the
 * end of the beam to the bearing. ly = ss + 2 tf (1 + sqrt(m1 + m2)), m1 = b/tw, m2 = 0.02
 * (hw/tf)^2 where lambda is above 0.5, else 0. At the end ly is at most le + tf sqrt(m1/2 +
 * (le/tf)^2 + m2) and le + tf sqrt(m1 + m2), le = kF E tw^2 / (2 fy hw) at most ss + c. ss is at
 * most hw.
 *
 * <p>From memory, verify.
 */
public final class PatchLoad {
  private static final double SLENDER = 0.5;

  private PatchLoad() {}

  /**
   * A patch load resistance with what leads to it.
   *
   * @param lengthMetres ly
   * @param slenderness lambda
   * @param reduction chi
   * @param kilonewtons FRd
   */
  public record Resistance(
      double lengthMetres, double slenderness, double reduction, double kilonewtons) {}

  /** Inside the beam, far from its ends. */
  public static Resistance inside(RolledSection section, Steel steel, double bearingMetres) {
    Require.positive("length of bearing", bearingMetres);
    double bearing = Math.min(bearingMetres, section.plates().webBetweenFlangesMetres());
    return resistance(section, steel, 6, m2 -> spread(section, bearing, m2));
  }

  /**
   * At the end of the beam.
   *
   * @param beyondMetres c, beam beyond the bearing
   */
  public static Resistance end(
      RolledSection section, Steel steel, double bearingMetres, double beyondMetres) {
    Require.positive("length of bearing", bearingMetres);
    Require.notNegative("beam beyond the bearing", beyondMetres);
    RolledSection.Plates plates = section.plates();
    double depth = plates.webBetweenFlangesMetres();
    double bearing = Math.min(bearingMetres, depth);
    double factor = Math.min(6, 2 + 6 * (bearing + beyondMetres) / depth);
    double web = plates.webThicknessMetres();
    double edge =
        Math.min(
            factor
                * steel.elasticModulusKilopascals()
                * web
                * web
                / (2 * steel.yieldKilopascals() * depth),
            bearing + beyondMetres);
    return resistance(
        section,
        steel,
        factor,
        m2 -> Math.min(spread(section, bearing, m2), edgeSpread(section, edge, m2)));
  }

  private static double spread(RolledSection section, double bearing, double m2) {
    return bearing
        + 2 * section.plates().flangeThicknessMetres() * (1 + Math.sqrt(m1(section) + m2));
  }

  private static double edgeSpread(RolledSection section, double edge, double m2) {
    double flange = section.plates().flangeThicknessMetres();
    double relative = edge / flange;
    double one = edge + flange * Math.sqrt(m1(section) / 2 + relative * relative + m2);
    double other = edge + flange * Math.sqrt(m1(section) + m2);
    return Math.min(one, other);
  }

  private static double m1(RolledSection section) {
    return section.plates().flangeWidthMetres() / section.plates().webThicknessMetres();
  }

  private interface Length {
    double of(double m2);
  }

  private static Resistance resistance(
      RolledSection section, Steel steel, double factor, Length length) {
    RolledSection.Plates plates = section.plates();
    double relative = plates.webBetweenFlangesMetres() / plates.flangeThicknessMetres();
    double slender = length.of(0.02 * relative * relative);
    double spread = slenderness(section, steel, factor, slender) > SLENDER ? slender : length.of(0);
    double lambda = slenderness(section, steel, factor, spread);
    double reduction = Math.min(1, SLENDER / lambda);
    return new Resistance(spread, lambda, reduction, reduction * force(section, steel, spread));
  }

  private static double force(RolledSection section, Steel steel, double spread) {
    return steel.yieldKilopascals() * spread * section.plates().webThicknessMetres();
  }

  private static double slenderness(
      RolledSection section, Steel steel, double factor, double spread) {
    RolledSection.Plates plates = section.plates();
    double critical =
        0.9
            * factor
            * steel.elasticModulusKilopascals()
            * Math.pow(plates.webThicknessMetres(), 3)
            / plates.webBetweenFlangesMetres();
    return Math.sqrt(force(section, steel, spread) / critical);
  }
}
