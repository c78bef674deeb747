package underhold.mechanics.pile.lateral;

import underhold.mechanics.soil.Require;

/**
 * Characteristic load and moment of a pile in clay, after Duncan and others.
 *
 * <p>Qc = 7.34 D^2 E RI (cu/(E RI))^0.68; Mc = 3.86 D^3 E RI (cu/(E RI))^0.46. Symbols: D diameter
 * [m], E modulus of the pile [kPa], RI its second moment of area over that of the solid circle, cu
 * undrained strength over the top eight diameters [kPa], Qc [kN], Mc [kN m]. Source: J. M. Duncan,
 * L. Evans and P. Ooi, 1994, in B. M. Das, Principles of Foundation Engineering; exponents from
 * memory, verify. A companion to that book prints its example 12.7 with 0.6 for both, which is
 * wrong by a factor of 2.7 in Qc and 5.6 in Mc.
 */
public final class DuncanCharacteristicLoad {
  private static final double LOAD_FACTOR = 7.34;
  private static final double LOAD_POWER = 0.68;
  private static final double MOMENT_FACTOR = 3.86;
  private static final double MOMENT_POWER = 0.46;

  private DuncanCharacteristicLoad() {}

  /** Qc, kN. */
  public static double loadKilonewtons(
      double diameterMetres,
      double modulusKilopascals,
      double inertiaRatio,
      double undrainedStrengthKilopascals) {
    double stiffness = stiffness(modulusKilopascals, inertiaRatio);
    return LOAD_FACTOR
        * Math.pow(Require.positive(diameterMetres, "diameter", "m"), 2)
        * stiffness
        * Math.pow(strength(undrainedStrengthKilopascals) / stiffness, LOAD_POWER);
  }

  /** Mc, kN m. */
  public static double momentKilonewtonMetres(
      double diameterMetres,
      double modulusKilopascals,
      double inertiaRatio,
      double undrainedStrengthKilopascals) {
    double stiffness = stiffness(modulusKilopascals, inertiaRatio);
    return MOMENT_FACTOR
        * Math.pow(Require.positive(diameterMetres, "diameter", "m"), 3)
        * stiffness
        * Math.pow(strength(undrainedStrengthKilopascals) / stiffness, MOMENT_POWER);
  }

  private static double stiffness(double modulusKilopascals, double inertiaRatio) {
    return Require.positive(modulusKilopascals, "modulus", "kPa")
        * Require.between(inertiaRatio, 1e-3, 2, "RI", "");
  }

  private static double strength(double undrainedStrengthKilopascals) {
    return Require.positive(undrainedStrengthKilopascals, "undrained strength", "kPa");
  }
}
