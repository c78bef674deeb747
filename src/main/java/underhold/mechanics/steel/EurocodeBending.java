package underhold.mechanics.steel;

/**
 * Bending of a rolled I section by EN 1993-1-1: 6.2.5 (section) and 6.3.2.3 (lateral-torsional
 * buckling of rolled sections), gamma M0 = gamma M1 = 1.0.
 *
 * <p>Mc = W fy; Mcr = C1 (pi^2 E Iz / L^2) (sqrt(Iw/Iz + L^2 G It / (pi^2 E Iz) + (C2 zg)^2) - C2
 * zg), zg above the shear centre positive; lambda = sqrt(W fy / Mcr); phi = 0.5 (1 + a (lambda -
 * 0.4) + 0.75 lambda^2); chi = 1 / (phi + sqrt(phi^2 - 0.75 lambda^2)), at most 1 and 1/lambda^2; a
 * = 0.34 where h/b is at most 2, else 0.49. W is plastic in classes 1 and 2, elastic in class 3;
 * class 4 is refused.
 *
 * <p>From memory, verify; the form of Mcr with three factors is confirmed in a published note.
 *
 * @param section the section
 * @param steel its steel
 */
public record EurocodeBending(RolledSection section, Steel steel) {
  /** C1 of a point load at mid-span, ends free to warp. */
  public static final double MIDSPAN_C1 = 1.365;

  /** C2 of a point load at mid-span. */
  public static final double MIDSPAN_C2 = 0.553;

  private static final double PLATEAU = 0.4;
  private static final double BETA = 0.75;
  private static final double CURVE_B = 0.34;
  private static final double CURVE_C = 0.49;

  public EurocodeBending {
    if (EurocodeClass.inBending(section, steel) > 3) {
      throw new IllegalArgumentException(section.name() + ": class 4 is not covered");
    }
  }

  /** W that counts, m3. */
  public double modulus() {
    return EurocodeClass.inBending(section, steel) <= 2
        ? section.strong().plasticModulus()
        : section.strong().elasticModulus();
  }

  /** Mc,Rd, kN m. */
  public double sectionMoment() {
    return modulus() * steel.yieldKilopascals();
  }

  /**
   * Mcr, kN m.
   *
   * @param lengthMetres L between restraints against lateral movement and twist
   * @param loadHeightMetres zg, above the shear centre
   */
  public double criticalMoment(double lengthMetres, double c1, double c2, double loadHeightMetres) {
    Require.positive("length between restraints", lengthMetres);
    Require.positive("C1", c1);
    Require.notNegative("C2", c2);
    double weak = section.weak().secondMoment();
    double euler =
        Math.PI
            * Math.PI
            * steel.elasticModulusKilopascals()
            * weak
            / (lengthMetres * lengthMetres);
    double height = c2 * loadHeightMetres;
    double root =
        section.torsion().warping() / weak
            + steel.shearModulusKilopascals() * section.torsion().constant() / euler
            + height * height;
    return c1 * euler * (Math.sqrt(root) - height);
  }

  /** Relative slenderness for that critical moment. */
  public double slenderness(double criticalMoment) {
    Require.positive("critical moment", criticalMoment);
    return Math.sqrt(sectionMoment() / criticalMoment);
  }

  /** chi LT for that critical moment. */
  public double reduction(double criticalMoment) {
    double lambda = slenderness(criticalMoment);
    RolledSection.Plates plates = section.plates();
    double imperfection =
        plates.depthMetres() / plates.flangeWidthMetres() <= 2 ? CURVE_B : CURVE_C;
    double phi = 0.5 * (1 + imperfection * (lambda - PLATEAU) + BETA * lambda * lambda);
    double inRoot = Math.max(0, phi * phi - BETA * lambda * lambda);
    double chi = 1 / (phi + Math.sqrt(inRoot));
    return Math.min(1, Math.min(chi, 1 / (lambda * lambda)));
  }

  /** Mb,Rd, kN m. */
  public double bucklingMoment(double criticalMoment) {
    return reduction(criticalMoment) * sectionMoment();
  }
}
