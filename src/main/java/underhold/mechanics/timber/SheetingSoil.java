package underhold.mechanics.timber;

/** Soil types of 29 CFR 1926 Subpart P Appendix A. */
public enum SheetingSoil {
  /**
   * Cohesive, unconfined compressive strength 1.5 tsf (144 kPa) or more, not fissured, vibrated or
   * disturbed.
   */
  A(25),
  /** Cohesive over 0.5 and under 1.5 tsf; angular gravel, silt, silty or sandy loam. */
  B(45),
  /** Cohesive up to 0.5 tsf; gravel, sand, loamy sand; submerged or seeping. */
  C(80);

  /** Surcharge held in the table pressures: 72 psf for 2 ft of soil. */
  private static final double SURCHARGE_PSF = 72;

  private static final double KILOPASCALS_PER_PSF = TableRows.KILOPASCALS_PER_PSI / 144;

  private final double psfPerFoot;

  SheetingSoil(double psfPerFoot) {
    this.psfPerFoot = psfPerFoot;
  }

  /** Equivalent fluid weight of the type, kN/m3: 25, 45 or 80 psf per foot. */
  public double equivalentFluidWeight() {
    return psfPerFoot * KILOPASCALS_PER_PSF / TableRows.METRES_PER_FOOT;
  }

  /** Pressure of the 2 ft surcharge, kPa. */
  public static double surchargePressure() {
    return SURCHARGE_PSF * KILOPASCALS_PER_PSF;
  }

  /**
   * Pressure on which the tables are built, Pa = 25 H + 72, 45 H + 72 or 80 H + 72 psf, in kPa.
   *
   * <p>Source: 29 CFR 1926 Subpart P Appendix C, Examples 1 and 2. Valid up to 20 ft (6.1 m) of
   * depth.
   */
  public double tablePressure(double depthMetres) {
    TableRows.requireNotNegative("depth", depthMetres);
    return equivalentFluidWeight() * depthMetres + surchargePressure();
  }

  /**
   * The type of a cohesive soil by its unconfined compressive strength, kPa, before demotion for
   * fissures, vibration, disturbance, seepage or dip: 1.5 tsf itself is A, 0.5 tsf itself is C.
   */
  public static SheetingSoil ofCohesive(double unconfinedStrengthKilopascals) {
    TableRows.requireNotNegative("unconfined compressive strength", unconfinedStrengthKilopascals);
    double tonsPerSquareFoot = unconfinedStrengthKilopascals / (KILOPASCALS_PER_PSF * 2000);
    double tolerance = 1e-9;
    if (tonsPerSquareFoot >= 1.5 - tolerance) {
      return A;
    }
    return tonsPerSquareFoot > 0.5 + tolerance ? B : C;
  }
}
