package underhold.mechanics.pile.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import underhold.mechanics.soil.Require;

/**
 * Unbraced lengths of a pile while the ground beside it is dug away stage by stage.
 *
 * <p>Depths count from the underside of the cap. Stage k digs to brace k and a little below it with
 * only the braces above set; the last stage digs to the end. In each stage the pile spans from cap
 * to first brace, from brace to brace and from the lowest brace set to the dug level plus the depth
 * of fixity. The worst effective length of a stage is the largest K times length of its spans. The
 * span under the cap has the head's K, the others K = 1 (pinned at braces); an unbraced stage has
 * one span with the head's K. Statics; the rule that the free length counts as standing in air:
 * International Building Code 2009, 1810.2.1 (secondary copy).
 */
public final class BaringStages {
  private BaringStages() {}

  /**
   * The excavation.
   *
   * @param finalDepthMetres dug level at the end, below the cap
   * @param braceDepthsMetres depths of braces from the top down, above the end
   * @param digBelowBraceMetres how far a stage digs below the brace it makes room for
   * @param fixityMetres depth of fixity below the dug level
   * @param headFactor K of the span under the cap: 1.0 if the head is held sideways, 2.0 or more if
   *     it may sway
   */
  public record Case(
      double finalDepthMetres,
      List<Double> braceDepthsMetres,
      double digBelowBraceMetres,
      double fixityMetres,
      double headFactor) {
    public Case {
      Require.notNegative(finalDepthMetres, "dug level", "m");
      Require.notNegative(digBelowBraceMetres, "dig below a brace", "m");
      Require.notNegative(fixityMetres, "depth of fixity", "m");
      Require.between(headFactor, 0.5, 10, "K of the head", "");
      braceDepthsMetres = List.copyOf(braceDepthsMetres);
      double above = 0;
      for (double depth : braceDepthsMetres) {
        if (!(depth > above && depth < finalDepthMetres)) {
          throw new IllegalArgumentException(
              "braces go down from the cap and stay above the dug level; one is at "
                  + depth
                  + " m");
        }
        above = depth;
      }
    }
  }

  /**
   * One stage.
   *
   * @param number from 1
   * @param dugMetres dug level below the cap
   * @param bracesSet braces that hold
   * @param spanMetres length of the governing span, fixity included
   * @param factor its K
   */
  public record Stage(
      int number, double dugMetres, int bracesSet, double spanMetres, double factor) {
    /** K times length, m. */
    public double effectiveMetres() {
      return factor * spanMetres;
    }
  }

  /** All stages in order; one at least. */
  public static List<Stage> stages(Case one) {
    List<Stage> stages = new ArrayList<>();
    List<Double> braces = one.braceDepthsMetres();
    for (int set = 0; set <= braces.size(); set++) {
      double dug =
          set < braces.size()
              ? Math.min(braces.get(set) + one.digBelowBraceMetres(), one.finalDepthMetres())
              : one.finalDepthMetres();
      stages.add(stage(one, set, dug));
    }
    return stages;
  }

  /** The stage with the largest effective length. */
  public static Stage worst(Case one) {
    return stages(one).stream()
        .max(Comparator.comparingDouble(Stage::effectiveMetres))
        .orElseThrow();
  }

  private static Stage stage(Case one, int set, double dug) {
    double from = 0;
    double factor = one.headFactor();
    Stage governing = new Stage(set + 1, dug, set, 0, factor);
    for (int i = 0; i <= set; i++) {
      double to = i < set ? one.braceDepthsMetres().get(i) : dug + one.fixityMetres();
      Stage span = new Stage(set + 1, dug, set, to - from, factor);
      if (span.effectiveMetres() > governing.effectiveMetres()) {
        governing = span;
      }
      from = to;
      factor = 1;
    }
    return governing;
  }
}
