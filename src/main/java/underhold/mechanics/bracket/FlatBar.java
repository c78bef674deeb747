package underhold.mechanics.bracket;

/**
 * A flat bar lying flat, simply supported, under even load: V = w L / 2, M = w L^2 / 8, fb = M / S,
 * fv = 1.5 V / A, deflection 5 w L^4 / (384 E I). By statics.
 *
 * @param widthMetres b
 * @param thicknessMetres t
 * @param spanMetres L
 */
public record FlatBar(double widthMetres, double thicknessMetres, double spanMetres) {
  private static final double STEEL_MODULUS = 29_000 * Units.KSI;

  public FlatBar {
    Require.positive("width", widthMetres);
    Require.positive("thickness", thicknessMetres);
    Require.positive("span", spanMetres);
  }

  /** V, kN. */
  public double shear(double loadPerMetre) {
    Require.notNegative("load", loadPerMetre);
    return loadPerMetre * spanMetres / 2;
  }

  /** M, kN m. */
  public double moment(double loadPerMetre) {
    Require.notNegative("load", loadPerMetre);
    return loadPerMetre * spanMetres * spanMetres / 8;
  }

  /** fb, kPa. */
  public double bendingStress(double loadPerMetre) {
    return moment(loadPerMetre) * 6 / (widthMetres * thicknessMetres * thicknessMetres);
  }

  /** fv, kPa. */
  public double shearStress(double loadPerMetre) {
    return 1.5 * shear(loadPerMetre) / (widthMetres * thicknessMetres);
  }

  /** Deflection of a steel bar, m. */
  public double deflection(double loadPerMetre) {
    Require.notNegative("load", loadPerMetre);
    double inertia = widthMetres * Math.pow(thicknessMetres, 3) / 12;
    return 5 * loadPerMetre * Math.pow(spanMetres, 4) / (384 * STEEL_MODULUS * inertia);
  }
}
