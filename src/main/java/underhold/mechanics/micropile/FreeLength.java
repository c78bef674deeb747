package underhold.mechanics.micropile;

/**
 * A casing without soil around it, as a column.
 *
 * <pre>
 * Kl/r up to Cc   Fa = (Fy/2.12) [1 - (Kl/r)^2 / (2 Cc^2)]     Cc = sqrt(2 pi^2 E / Fy)
 * above           Fa = pi^2 E / [2.12 (Kl/r)^2]
 * F'e = pi^2 E / [2.12 (Kl/r)^2]
 * </pre>
 *
 * <p>Source: FHWA NHI-05-039. Basis: from memory, verify. The casing alone; the grout's share of a
 * capacity is cut by the same ratio. A dug-away length is free until walers brace it, and the depth
 * to fixity below it belongs to it.
 *
 * @param casing casing
 * @param yieldKilopascals Fy
 * @param lengthMetres l, free length with fixity
 * @param effectiveLengthFactor K: 1.0 pinned at both ends, 2.1 free top, 0.65 fixed at both
 */
public record FreeLength(
    CasingSection casing,
    double yieldKilopascals,
    double lengthMetres,
    double effectiveLengthFactor) {
  /** Young's modulus of steel, 29,000 ksi, kPa. */
  public static final double STEEL_MODULUS_KILOPASCALS = 29_000 * Units.KSI;

  /** Factor of safety of the column curve. */
  public static final double SAFETY_FACTOR = 2.12;

  public FreeLength {
    Require.positive("yield", yieldKilopascals);
    Require.positive("free length", lengthMetres);
    Require.positive("effective length factor", effectiveLengthFactor);
  }

  /** Kl/r. */
  public double slenderness() {
    return effectiveLengthFactor * lengthMetres / casing.radiusOfGyration();
  }

  /** Cc. */
  public double limitingSlenderness() {
    return Math.sqrt(2 * Math.PI * Math.PI * STEEL_MODULUS_KILOPASCALS / yieldKilopascals);
  }

  /** F'e, kPa. */
  public double amplifierStress() {
    double ratio = slenderness();
    return Math.PI * Math.PI * STEEL_MODULUS_KILOPASCALS / (SAFETY_FACTOR * ratio * ratio);
  }

  /** Fa, kPa. */
  public double allowableStress() {
    double share = slenderness() / limitingSlenderness();
    return share <= 1
        ? yieldKilopascals / SAFETY_FACTOR * (1 - share * share / 2)
        : amplifierStress();
  }

  /** Capacity left of a cased capacity, Fa / (0.47 Fy) but at most 1. */
  public double shareOfCapacity() {
    return Math.min(1, allowableStress() / (FhwaCapacity.COMPRESSION_SHARE * yieldKilopascals));
  }
}
