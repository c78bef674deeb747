package underhold.mechanics.micropile;

/**
 * Load by bond of grout to ground along a drilled hole: P = alpha pi D L / FS.
 *
 * <p>alpha nominal (ultimate) bond; no end bearing in soil. Source: FHWA NHI-05-039, eq. 5-9 and
 * 5-10. Basis: from memory, verify. FS 2.0 usual, 2.5 where tests are few, clay creeps or the load
 * pulls. The length inside the same hole that the casing plunges counts likewise.
 *
 * @param bondKilopascals alpha
 * @param holeDiameterMetres D
 * @param safetyFactor FS
 */
public record BondZone(double bondKilopascals, double holeDiameterMetres, double safetyFactor) {
  /** Factor of safety in ordinary cases. */
  public static final double USUAL_SAFETY_FACTOR = 2.0;

  /** Factor of safety where tests are few, clay creeps or the load pulls. */
  public static final double CAREFUL_SAFETY_FACTOR = 2.5;

  public BondZone {
    Require.positive("bond", bondKilopascals);
    Require.positive("hole diameter", holeDiameterMetres);
    if (!(safetyFactor >= 1) || Double.isInfinite(safetyFactor)) {
      throw new IllegalArgumentException("safety factor is " + safetyFactor + ", it must be >= 1");
    }
  }

  /** Allowable load per length, kN/m. */
  public double perMetre() {
    return bondKilopascals * Math.PI * holeDiameterMetres / safetyFactor;
  }

  /** Allowable load of a length, kN. */
  public double allowableLoad(double lengthMetres) {
    Require.notNegative("bond length", lengthMetres);
    return perMetre() * lengthMetres;
  }

  /** Length for a load, m. */
  public double lengthFor(double loadKilonewtons) {
    Require.notNegative("load", loadKilonewtons);
    return loadKilonewtons / perMetre();
  }
}
