package underhold.mechanics.soil.stability;

import java.util.OptionalDouble;
import underhold.mechanics.soil.SafetyFactor;

/**
 * The lower of the two base heave factors.
 *
 * <p>Terzaghi's ratio grows without bound as a cut narrows, long before it loses its meaning, so
 * the bearing form of Bjerrum and Eide is always worked out as well and the lower value counts;
 * where Terzaghi is out of range Bjerrum-Eide stands alone. Nc is Skempton's in both. Source: the
 * two methods; basis: taking the lower is judgement.
 *
 * @param method which method gave the lower factor
 * @param factor resistance and demand of that method, in its own units
 * @param remark why Terzaghi was left out, or empty
 */
public record GoverningBaseHeave(Method method, SafetyFactor factor, String remark) {

  /** The method that governs. */
  public enum Method {
    /** {@link TerzaghiBaseHeave}. */
    TERZAGHI,
    /** {@link BjerrumEideBaseHeave}. */
    BJERRUM_EIDE
  }

  /**
   * The governing factor of a cut, with the depth to a hard layer below the base when there is one.
   */
  public static GoverningBaseHeave of(ClayCut cut, OptionalDouble hardLayerMetres) {
    double bearingFactor = SkemptonBearingFactor.of(cut);
    SafetyFactor narrow = BjerrumEideBaseHeave.factor(cut, bearingFactor);
    return TerzaghiBaseHeave.factor(cut, bearingFactor, hardLayerMetres)
        .fold(
            wide ->
                wide.resistance() * narrow.demand() < narrow.resistance() * wide.demand()
                    ? new GoverningBaseHeave(Method.TERZAGHI, wide, "")
                    : new GoverningBaseHeave(Method.BJERRUM_EIDE, narrow, ""),
            reason -> new GoverningBaseHeave(Method.BJERRUM_EIDE, narrow, reason));
  }
}
