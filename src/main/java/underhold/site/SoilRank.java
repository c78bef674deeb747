package underhold.site;

import java.util.Comparator;
import java.util.List;

/**
 * The soil classes from the worst to the best for someone who must dig under a footing by hand and
 * found on what is met. Judgement: soils that run under water and carry little come first, soils
 * that stand and carry come last. Dense sand and gravel carry well but do not stand under water, so
 * they rank below clays and cemented soils that do.
 */
final class SoilRank {
  /** Every soil class of the dictionary, the worst first. */
  static final List<String> WORST_FIRST =
      List.of(
          "peat",
          "fill",
          "silt",
          "mixed-fine-sand",
          "loose-sand",
          "soft-clay",
          "cohesive-fill",
          "dense-sand",
          "dense-gravel",
          "decomposed-rock",
          "stiff-clay",
          "cemented-sand",
          "hard-clay-or-till",
          "rock");

  /** The stand-up times of the dictionary, the worst first. */
  static final List<String> SHORTEST_FIRST = List.of("none", "minutes", "hours", "days");

  private SoilRank() {}

  /** Orders soil classes from the worst to the best. */
  static Comparator<String> worstFirst() {
    return Comparator.comparingInt(WORST_FIRST::indexOf);
  }
}
