package underhold.mechanics.micropile;

import java.util.OptionalDouble;

/**
 * Axial load and bending on the casing alone.
 *
 * <pre>
 * fa/Fa + fb / [(1 - fa/F'e) Fb] at most 1
 * fa = P/A   fb = M/S   Fa = 0.47 Fy   Fb = 0.55 Fy   F'e = pi^2 E / [2.12 (KL/r)^2]
 * </pre>
 *
 * <p>Where soil braces the pile the amplifier 1 - fa/F'e is 1. Over a free length Fa is that of
 * {@link FreeLength}. Grout and bar are left out on the safe side. Source: FHWA NHI-05-039, eq.
 * 5-3. Basis: from memory, verify.
 *
 * @param casing casing, corrosion deducted
 * @param allowableAxialKilopascals Fa
 * @param allowableBendingKilopascals Fb
 * @param amplifierStressKilopascals F'e over a free length; empty where soil braces the pile
 */
public record CombinedStress(
    CasingSection casing,
    double allowableAxialKilopascals,
    double allowableBendingKilopascals,
    OptionalDouble amplifierStressKilopascals) {

  public CombinedStress {
    Require.positive("allowable axial stress", allowableAxialKilopascals);
    Require.positive("allowable bending stress", allowableBendingKilopascals);
    amplifierStressKilopascals.ifPresent(fe -> Require.positive("amplifier stress", fe));
  }

  /** Braced by soil: Fa = 0.47 Fy, Fb = 0.55 Fy, no amplifier. */
  public static CombinedStress braced(CasingSection casing, double yieldKilopascals) {
    return new CombinedStress(
        casing,
        FhwaCapacity.COMPRESSION_SHARE * yieldKilopascals,
        FhwaCapacity.TENSION_SHARE * yieldKilopascals,
        OptionalDouble.empty());
  }

  /** Over a free length: Fa by slenderness, amplifier by F'e. */
  public static CombinedStress free(FreeLength length) {
    return new CombinedStress(
        length.casing(),
        Math.min(
            length.allowableStress(), FhwaCapacity.COMPRESSION_SHARE * length.yieldKilopascals()),
        FhwaCapacity.TENSION_SHARE * length.yieldKilopascals(),
        OptionalDouble.of(length.amplifierStress()));
  }

  /** fa, kPa. */
  public double axialStress(double loadKilonewtons) {
    Require.notNegative("load", loadKilonewtons);
    return loadKilonewtons / casing.area();
  }

  /** fb, kPa. */
  public double bendingStress(double momentKilonewtonMetres) {
    Require.notNegative("moment", momentKilonewtonMetres);
    return momentKilonewtonMetres / casing.sectionModulus();
  }

  /**
   * The sum; at most 1 passes. Empty where the axial stress reaches F'e: no moment is then borne.
   */
  public OptionalDouble ratio(double loadKilonewtons, double momentKilonewtonMetres) {
    double amplifier = amplifier(loadKilonewtons);
    if (amplifier <= 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        axialStress(loadKilonewtons) / allowableAxialKilopascals
            + bendingStress(momentKilonewtonMetres) / (amplifier * allowableBendingKilopascals));
  }

  /** Greatest moment beside an axial load, kN m; 0 where the load alone is too much. */
  public double greatestMoment(double loadKilonewtons) {
    return allowableMoment(loadKilonewtons, casing.sectionModulus());
  }

  /** Greatest moment of another section modulus, as at a joint, beside the same load, kN m. */
  double allowableMoment(double loadKilonewtons, double sectionModulus) {
    double room = 1 - axialStress(loadKilonewtons) / allowableAxialKilopascals;
    return Math.max(0, room)
        * Math.max(0, amplifier(loadKilonewtons))
        * allowableBendingKilopascals
        * sectionModulus;
  }

  private double amplifier(double loadKilonewtons) {
    return amplifierStressKilopascals.isPresent()
        ? 1 - axialStress(loadKilonewtons) / amplifierStressKilopascals.getAsDouble()
        : 1;
  }
}
