package underhold.mechanics.beam;

/**
 * A needle that overhangs a fulcrum, its tail held down: M = P a at the fulcrum, fulcrum R = P (a +
 * b) / b, uplift at the tail P a / b, deflection of the tip P a^2 (a + b) / (3 E I). Statics.
 *
 * @param loadKilonewtons P at the tip
 * @param overhangMetres a, from the fulcrum to the load
 * @param backSpanMetres b, from the fulcrum to the tail
 */
public record TailedCantilever(
    double loadKilonewtons, double overhangMetres, double backSpanMetres) {
  public TailedCantilever {
    Require.notNegative("load", loadKilonewtons);
    Require.positive("overhang", overhangMetres);
    Require.positive("back span", backSpanMetres);
  }

  /** M at the fulcrum, kN m. */
  public double moment() {
    return loadKilonewtons * overhangMetres;
  }

  /** Reaction of the fulcrum, kN. */
  public double fulcrum() {
    return loadKilonewtons * (overhangMetres + backSpanMetres) / backSpanMetres;
  }

  /** Uplift at the tail, kN. */
  public double uplift() {
    return loadKilonewtons * overhangMetres / backSpanMetres;
  }

  /** Largest shear: that of the overhang or of the back span, kN. */
  public double largestShear() {
    return Math.max(loadKilonewtons, uplift());
  }

  /** Deflection of the tip with rigid supports, m. */
  public double tipDeflection(double stiffness) {
    Require.positive("E I", stiffness);
    return loadKilonewtons
        * overhangMetres
        * overhangMetres
        * (overhangMetres + backSpanMetres)
        / (3 * stiffness);
  }
}
