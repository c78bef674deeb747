package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Require;

/**
 * Design resistance of a bored pile in compression after Eurocode 7, resistance factors R4.
 *
 * <p>Rd = (Rb/gb + Rs/gs)/gm. UK national annex, bored piles: gb/gs = 1.7/1.4 where settlement is
 * checked by load tests, 2.0/1.6 else; model factor gm = 1.2 as used in a university's class
 * example; 1.7/1.4 also in Bond and Harris, Decoding Eurocode 7 (both seen). The set R1 has 1.0
 * throughout (UK annex, seen). Annexes of other countries differ, so factors are inputs.
 *
 * @param baseFactor gb
 * @param shaftFactor gs
 * @param modelFactor gm
 */
public record EurocodePile(double baseFactor, double shaftFactor, double modelFactor) {
  /** Settlement checked explicitly. */
  public static final EurocodePile UK_R4_CHECKED = new EurocodePile(1.7, 1.4, 1.2);

  /** Settlement not checked. */
  public static final EurocodePile UK_R4_UNCHECKED = new EurocodePile(2.0, 1.6, 1.2);

  /** Set R1. */
  public static final EurocodePile R1 = new EurocodePile(1, 1, 1);

  public EurocodePile {
    Require.between(baseFactor, 1, 5, "base factor", "");
    Require.between(shaftFactor, 1, 5, "shaft factor", "");
    Require.between(modelFactor, 1, 5, "model factor", "");
  }

  /** Design resistance, kN. */
  public double designKilonewtons(double shaftKilonewtons, double baseKilonewtons) {
    Require.notNegative(shaftKilonewtons, "shaft resistance", "kN");
    Require.notNegative(baseKilonewtons, "base resistance", "kN");
    return (baseKilonewtons / baseFactor + shaftKilonewtons / shaftFactor) / modelFactor;
  }
}
