package underhold.mechanics.soil.stability;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Stability number of a cut in clay, the trigger of the base heave check.
 *
 * <p>Formula: No = g H/c. Symbols: g unit weight [kN/m3], H depth [m], c undrained strength [kPa].
 * Valid range: c above 0. Accuracy: a trigger only; a surcharge is not in it. Source: Caltrans,
 * Trenching and Shoring Manual (June 2011, revision 2, July 2025), 10-3; basis: cited, secondary
 * digest.
 */
public final class StabilityNumber {

  /** Above this the base heave check must be made, dimensionless; Caltrans 10-3. */
  public static final double TRIGGER = 6;

  private StabilityNumber() {}

  /** The number of a cut. */
  public static Outcome<Double> of(ClayCut cut) {
    return cut.undrainedStrengthKilopascals() >= Require.SMALLEST
        ? Outcome.of(
            cut.unitWeightKilonewtonsPerCubicMetre()
                * cut.depthMetres()
                / cut.undrainedStrengthKilopascals())
        : Outcome.outOfRange("clay without strength: the base is not stable");
  }

  /** Whether the base heave check must be made; also when the clay has no strength. */
  public static boolean triggersHeaveCheck(ClayCut cut) {
    return of(cut).fold(number -> number > TRIGGER, reason -> true);
  }
}
