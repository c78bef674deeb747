package underhold.mechanics.beam;

/**
 * One load on a simply supported beam.
 *
 * <p>M = P a b / L under the load, RA = P b / L, RB = P a / L; deflection under the load P a^2 b^2
 * / (3 E I L); largest deflection, in the longer part (a at least b), P a b (a + 2b) sqrt(3 a (a +
 * 2b)) / (27 E I L) at sqrt(a (a + 2b) / 3) from the support of the longer part. At mid-span P L /
 * 4, P / 2, P L^3 / (48 E I). Statics of slender prismatic beams, without shear deformation.
 *
 * @param loadKilonewtons P
 * @param fromFirstMetres a, from the first support to the load
 * @param fromSecondMetres b, from the second support to the load
 */
public record PointLoadBeam(
    double loadKilonewtons, double fromFirstMetres, double fromSecondMetres) {
  public PointLoadBeam {
    Require.notNegative("load", loadKilonewtons);
    Require.positive("distance from the first support", fromFirstMetres);
    Require.positive("distance from the second support", fromSecondMetres);
  }

  /** A load at mid-span. */
  public static PointLoadBeam midspan(double loadKilonewtons, double spanMetres) {
    return new PointLoadBeam(loadKilonewtons, spanMetres / 2, spanMetres / 2);
  }

  /** L, m. */
  public double spanMetres() {
    return fromFirstMetres + fromSecondMetres;
  }

  /** RA, kN. */
  public double firstReaction() {
    return loadKilonewtons * fromSecondMetres / spanMetres();
  }

  /** RB, kN. */
  public double secondReaction() {
    return loadKilonewtons * fromFirstMetres / spanMetres();
  }

  /** The larger reaction, which is the largest shear, kN. */
  public double largestReaction() {
    return Math.max(firstReaction(), secondReaction());
  }

  /** M under the load, kN m. */
  public double moment() {
    return loadKilonewtons * fromFirstMetres * fromSecondMetres / spanMetres();
  }

  /** M at a distance from the first support, kN m. */
  public double momentAt(double metres) {
    if (!(metres >= 0 && metres <= spanMetres())) {
      throw new IllegalArgumentException("station " + metres + " m is off the beam");
    }
    return metres <= fromFirstMetres
        ? firstReaction() * metres
        : secondReaction() * (spanMetres() - metres);
  }

  /** Deflection under the load, m. */
  public double deflectionAtLoad(double stiffness) {
    Require.positive("E I", stiffness);
    double ab = fromFirstMetres * fromSecondMetres;
    return loadKilonewtons * ab * ab / (3 * stiffness * spanMetres());
  }

  /** Largest deflection, m. */
  public double largestDeflection(double stiffness) {
    Require.positive("E I", stiffness);
    double a = Math.max(fromFirstMetres, fromSecondMetres);
    double b = Math.min(fromFirstMetres, fromSecondMetres);
    return loadKilonewtons
        * a
        * b
        * (a + 2 * b)
        * Math.sqrt(3 * a * (a + 2 * b))
        / (27 * stiffness * spanMetres());
  }
}
