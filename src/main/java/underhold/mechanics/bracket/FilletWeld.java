package underhold.mechanics.bracket;

/**
 * Strength of a fillet weld per length: 0.6 FEXX x 0.707 a, divided by 2.0 (allowable) or times
 * 0.75 (factored).
 *
 * <p>a leg. For E70 and 1/16 in: 0.928 kip/in allowable, 1.392 factored. No credit for the angle of
 * load. Source: AISC 360 J2.4, Table J2.5; smallest legs Table J2.4. Basis: from memory, verify.
 *
 * @param electrodeKilopascals FEXX, 70 ksi for E70
 */
public record FilletWeld(double electrodeKilopascals) {
  /** E70 electrodes. */
  public static final FilletWeld E70 = new FilletWeld(70 * Units.KSI);

  /** Safety factor on the nominal strength. */
  public static final double SAFETY_FACTOR = 2.0;

  /** Resistance factor on the nominal strength. */
  public static final double PHI = 0.75;

  /** Step in which legs are ordered, 1/16 in, m. */
  public static final double SIXTEENTH_METRES = Units.INCH / 16;

  /** Weld stress as a share of FEXX. */
  public static final double SHEAR_SHARE = 0.6;

  /** Throat as a share of the leg. */
  public static final double THROAT_SHARE = 0.707;

  private static final double ROUNDING = 1e-9;

  public FilletWeld {
    Require.positive("electrode strength", electrodeKilopascals);
  }

  /** Allowable force per length of a leg, kN/m. */
  public double allowable(double legMetres) {
    Require.notNegative("leg", legMetres);
    return nominalPerLeg() * legMetres / SAFETY_FACTOR;
  }

  /** Factored resistance per length of a leg, kN/m. */
  public double factored(double legMetres) {
    Require.notNegative("leg", legMetres);
    return nominalPerLeg() * legMetres * PHI;
  }

  /** Exact leg for an allowable-stress demand, m. */
  public double legFor(double forcePerMetre) {
    Require.notNegative("force per length", forcePerMetre);
    return forcePerMetre * SAFETY_FACTOR / nominalPerLeg();
  }

  /** The same, up to the next 1/16 in, m. */
  public double orderedLegFor(double forcePerMetre) {
    return SIXTEENTH_METRES * Math.ceil(legFor(forcePerMetre) / SIXTEENTH_METRES - ROUNDING);
  }

  /** Smallest leg by the thinner part joined: 1/8, 3/16, 1/4, 5/16 in, m. */
  public static double smallestLeg(double thinnerPartMetres) {
    Require.positive("thickness", thinnerPartMetres);
    double inches = thinnerPartMetres / Units.INCH - ROUNDING;
    int sixteenths = inches <= 0.25 ? 2 : inches <= 0.5 ? 3 : inches <= 0.75 ? 4 : 5;
    return sixteenths * SIXTEENTH_METRES;
  }

  private double nominalPerLeg() {
    return SHEAR_SHARE * electrodeKilopascals * THROAT_SHARE;
  }
}
