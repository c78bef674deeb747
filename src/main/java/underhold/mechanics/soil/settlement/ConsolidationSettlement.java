package underhold.mechanics.soil.settlement;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * One-dimensional consolidation settlement of a clay layer.
 *
 * <p>Formula: S = (H/(1 + e0)) (Cr log10(min(sf, sp)/s0) + Cc log10(sf/sp) where sf passes sp), sf
 * = s0 + ds.
 *
 * <p>Symbols: H thickness [m], e0 void ratio, Cc compression and Cr recompression index, s0
 * effective stress at mid-layer, ds its increase, sp preconsolidation pressure [kPa], S [m].
 * Assumptions: no lateral strain, stress at mid-layer stands for the layer. Valid range: sp not
 * below s0 (else the layer still consolidates under its own weight). Accuracy: that of the indices.
 * Source: Terzaghi's theory in the form of the textbooks; basis: from memory, verify; reproduces
 * two published values.
 */
public final class ConsolidationSettlement {

  private ConsolidationSettlement() {}

  /**
   * A clay layer and its stresses.
   *
   * @param thicknessMetres H
   * @param voidRatio e0
   * @param compressionIndex Cc
   * @param recompressionIndex Cr
   * @param effectiveStressKilopascals s0
   * @param increaseKilopascals ds
   * @param preconsolidationKilopascals sp
   */
  public record Layer(
      double thicknessMetres,
      double voidRatio,
      double compressionIndex,
      double recompressionIndex,
      double effectiveStressKilopascals,
      double increaseKilopascals,
      double preconsolidationKilopascals) {
    public Layer {
      Require.positive(thicknessMetres, "layer thickness", "m");
      Require.notNegative(voidRatio, "void ratio", "");
      Require.between(compressionIndex, 0, 20, "compression index", "");
      Require.between(recompressionIndex, 0, compressionIndex, "recompression index", "");
      Require.positive(effectiveStressKilopascals, "effective stress", "kPa");
      Require.notNegative(increaseKilopascals, "stress increase", "kPa");
      Require.positive(preconsolidationKilopascals, "preconsolidation pressure", "kPa");
    }
  }

  /** Settlement [m]; out of range for an underconsolidated layer. */
  public static Outcome<Double> metres(Layer layer) {
    double initial = layer.effectiveStressKilopascals();
    double past = layer.preconsolidationKilopascals();
    if (past < initial) {
      return Outcome.outOfRange(
          "the preconsolidation pressure is below the present stress: still consolidating");
    }
    double end = initial + layer.increaseKilopascals();
    double strain =
        layer.recompressionIndex() * Math.log10(Math.min(end, past) / initial)
            + (end > past ? layer.compressionIndex() * Math.log10(end / past) : 0);
    return Outcome.of(layer.thicknessMetres() / (1 + layer.voidRatio()) * strain);
  }
}
