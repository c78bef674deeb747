package underhold.mechanics.soil.stability;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SafetyFactor;

/**
 * Base heave after Bjerrum and Eide, for narrow or deep cuts.
 *
 * <p>Formula: factor = su Nc/(g H + q). Symbols: su undrained strength at and below the base [kPa],
 * Nc dimensionless, g [kN/m3], H [m], q [kPa]. Assumptions: the base fails as a deep footing upside
 * down. Valid range: clay, undrained. Accuracy: about 20 % with good strength data (from memory,
 * verify). Source: L. Bjerrum and O. Eide, Stability of Strutted Excavations in Clay, Geotechnique
 * 6, 1956; basis: from memory, verify.
 */
public final class BjerrumEideBaseHeave {

  private BjerrumEideBaseHeave() {}

  /** Resistance and demand [kPa] with a given Nc. */
  public static SafetyFactor factor(ClayCut cut, double bearingFactor) {
    Require.positive(bearingFactor, "Nc", "");
    return new SafetyFactor(
        cut.undrainedStrengthKilopascals() * bearingFactor,
        cut.unitWeightKilonewtonsPerCubicMetre() * cut.depthMetres() + cut.surchargeKilopascals());
  }

  /** Resistance and demand [kPa] with Nc by {@link SkemptonBearingFactor}. */
  public static SafetyFactor factor(ClayCut cut) {
    return factor(cut, SkemptonBearingFactor.of(cut));
  }
}
