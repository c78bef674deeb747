package underhold.mechanics.beam;

/**
 * Uniform load on a simply supported beam: M = w L^2 / 8, V = w L / 2, deflection 5 w L^4 / (384 E
 * I). Statics.
 *
 * @param loadKilonewtonsPerMetre w
 * @param spanMetres L
 */
public record UniformLoadBeam(double loadKilonewtonsPerMetre, double spanMetres) {
  public UniformLoadBeam {
    Require.notNegative("load per length", loadKilonewtonsPerMetre);
    Require.positive("span", spanMetres);
  }

  /** M at mid-span, kN m. */
  public double moment() {
    return loadKilonewtonsPerMetre * spanMetres * spanMetres / 8;
  }

  /** M at a distance from a support, kN m. */
  public double momentAt(double metres) {
    if (!(metres >= 0 && metres <= spanMetres)) {
      throw new IllegalArgumentException("station " + metres + " m is off the beam");
    }
    return loadKilonewtonsPerMetre * metres * (spanMetres - metres) / 2;
  }

  /** Each reaction, kN. */
  public double reaction() {
    return loadKilonewtonsPerMetre * spanMetres / 2;
  }

  /** Mid-span deflection, m. */
  public double midspanDeflection(double stiffness) {
    Require.positive("E I", stiffness);
    return 5 * loadKilonewtonsPerMetre * Math.pow(spanMetres, 4) / (384 * stiffness);
  }

  /** Least second moment I for a deflection, with E in kPa: m4. */
  public double secondMomentFor(double deflectionMetres, double elasticModulusKilopascals) {
    Require.positive("deflection", deflectionMetres);
    Require.positive("elastic modulus", elasticModulusKilopascals);
    return 5
        * loadKilonewtonsPerMetre
        * Math.pow(spanMetres, 4)
        / (384 * elasticModulusKilopascals * deflectionMetres);
  }
}
