package underhold.mechanics.soil.stability;

import java.util.OptionalDouble;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SafetyFactor;

/**
 * Base heave after Terzaghi, for wide cuts.
 *
 * <p>Formula: Q = g H b + b q - c H, Qu = c Nc b, b = 0.7 B or the depth D to a hard layer when
 * smaller; factor Qu/Q, 1.5 required.
 *
 * <p>Symbols: g [kN/m3], H, B, D [m], q [kPa], c [kPa], Nc dimensionless, Q, Qu [kN/m].
 * Assumptions: full undrained strength on one vertical face of height H, long cut. Valid range: Q
 * above 0. <strong>Trap:</strong> in a narrow pit c H passes the weight of the strip, Q falls to 0
 * or below and the ratio has no meaning; the answer is then out of range, and the bearing form of
 * {@link BjerrumEideBaseHeave} governs. Close to that limit the factor is large and deceptive: take
 * the lower of the two methods (judgement). Accuracy: struts near the bottom do not stop heave.
 * Source: Caltrans, Trenching and Shoring Manual (June 2011, revision 2, July 2025), 10-3; basis:
 * cited, secondary digest; the trap derived.
 */
public final class TerzaghiBaseHeave {

  /** Required factor, dimensionless; Caltrans 10-3. */
  public static final double REQUIRED_FACTOR = 1.5;

  /** Width of the failing strip over the width of the cut, dimensionless; Caltrans 10-3. */
  private static final double STRIP_SHARE = 0.7;

  /**
   * Share of the weight below which the driving force counts as none (judgement, guards the
   * arithmetic).
   */
  private static final double NOTHING = 1e-9;

  private TerzaghiBaseHeave() {}

  /**
   * Resistance Qu and demand Q [kN per metre].
   *
   * @param cut the cut
   * @param bearingFactor Nc, from the chart or {@link SkemptonBearingFactor}
   * @param hardLayerMetres depth of a hard layer below the base, when there is one
   */
  public static Outcome<SafetyFactor> factor(
      ClayCut cut, double bearingFactor, OptionalDouble hardLayerMetres) {
    Require.positive(bearingFactor, "Nc", "");
    double strip = STRIP_SHARE * cut.widthMetres();
    if (hardLayerMetres.isPresent()) {
      strip =
          Math.min(
              strip, Require.positive(hardLayerMetres.getAsDouble(), "depth to hard layer", "m"));
    }
    double depth = cut.depthMetres();
    double strength = cut.undrainedStrengthKilopascals();
    double weight =
        strip * (cut.unitWeightKilonewtonsPerCubicMetre() * depth + cut.surchargeKilopascals());
    double driving = weight - strength * depth;
    if (driving <= NOTHING * weight) {
      return Outcome.outOfRange("side adhesion governs, use Bjerrum-Eide");
    }
    return Outcome.of(new SafetyFactor(strength * bearingFactor * strip, driving));
  }
}
