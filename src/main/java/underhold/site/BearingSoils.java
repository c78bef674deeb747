package underhold.site;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which soils carry a footing or a pit, and as what; judgement. */
final class BearingSoils {
  /**
   * The kinds of bearing a soil can be called; the first, the weakest, is taken unless stated. A
   * soil that is left out does not bear.
   */
  private static final Map<String, List<String>> KINDS =
      Map.of(
          "rock", List.of("rock"),
          "decomposed-rock", List.of("dense-granular", "rock"),
          "cemented-sand", List.of("dense-granular", "rock"),
          "dense-gravel", List.of("dense-granular"),
          "dense-sand", List.of("dense-granular"),
          "hard-clay-or-till", List.of("hard-clay", "dense-granular"),
          "stiff-clay", List.of("stiff-clay", "hard-clay"));

  private static final List<String> WEAKEST_FIRST =
      List.of("stiff-clay", "hard-clay", "dense-granular", "rock");

  private BearingSoils() {}

  static boolean bears(GroundLayer layer) {
    return KINDS.containsKey(layer.soil());
  }

  static boolean bearsAs(GroundLayer layer, String kind) {
    return KINDS.getOrDefault(layer.soil(), List.of()).contains(kind);
  }

  /**
   * The weakest kind of bearing among the layers; empty where there is none or one does not bear.
   */
  static Optional<String> weakest(List<GroundLayer> layers) {
    return layers.stream().allMatch(BearingSoils::bears)
        ? layers.stream()
            .map(layer -> KINDS.getOrDefault(layer.soil(), WEAKEST_FIRST).get(0))
            .min(Comparator.comparingInt(WEAKEST_FIRST::indexOf))
        : Optional.empty();
  }
}
