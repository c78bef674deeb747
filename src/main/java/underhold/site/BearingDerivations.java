package underhold.site;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * Good bearing and rock found in the ground layers.
 *
 * <p>Judgement: good bearing is the first run of bearing layers, at or below the footing, that goes
 * on for {@link #LEAST_THICKNESS_METRES} below the deepest of its top, the footing and the
 * excavation base. A thinner run over weaker ground is passed over. The last layer of a profile is
 * taken to go on. The kind is that of the weakest layer within that thickness.
 */
final class BearingDerivations {
  /** Thickness of good ground that a footing needs under it; judgement. */
  static final double LEAST_THICKNESS_METRES = 3.0;

  /** The kind of bearing each bearing soil gives, judgement; a soil left out does not bear. */
  private static final Map<String, String> KIND_BY_SOIL =
      Map.of(
          "rock", "rock",
          "decomposed-rock", "dense-granular",
          "cemented-sand", "dense-granular",
          "dense-gravel", "dense-granular",
          "dense-sand", "dense-granular",
          "hard-clay-or-till", "hard-clay",
          "stiff-clay", "stiff-clay");

  /** Kinds of bearing, the weakest first. */
  private static final List<String> WEAKEST_FIRST =
      List.of("stiff-clay", "hard-clay", "dense-granular", "rock");

  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "bearingDepth",
              List.of("foundingDepth", "excavationDepth"),
              BearingDerivations::bearingDepth),
          new Derivation(
              "bearingKind",
              List.of("foundingDepth", "excavationDepth"),
              BearingDerivations::bearingKind),
          new Derivation("rockDepth", List.of("foundingDepth"), BearingDerivations::rockDepth));

  private BearingDerivations() {}

  private record Bearing(GroundLayer layer, double depthMetres, String kind) {}

  /** Depth from the footing to the top of good bearing; 0 where the footing stands on it. */
  private static @Nullable Derived bearingDepth(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    Bearing bearing = find(in);
    if (founding == null || bearing == null) {
      return null;
    }
    return in.result(
        "bearingDepth",
        bearing.depthMetres() - founding.si(),
        below(in, bearing.layer(), "good bearing"),
        bearing.layer().top(),
        founding);
  }

  private static @Nullable Derived bearingKind(Inputs in) {
    Bearing bearing = find(in);
    return bearing == null
        ? null
        : Inputs.word(
            bearing.kind(), "the first good bearing is " + Stretch.words(bearing.layer()));
  }

  /** Depth from the footing to sound rock; decomposed rock does not count. */
  private static @Nullable Derived rockDepth(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    if (founding == null) {
      return null;
    }
    for (GroundLayer layer : in.ground().layers()) {
      if (layer.soil().equals("rock") && in.ground().bottomMetres(layer) > founding.si()) {
        return in.result(
            "rockDepth",
            Math.max(0, layer.top().si() - founding.si()),
            below(in, layer, "rock"),
            layer.top(),
            founding);
      }
    }
    return null;
  }

  private static String below(Inputs in, GroundLayer layer, String what) {
    return what + " (" + Stretch.words(layer) + ") below " + in.show("foundingDepth");
  }

  private static @Nullable Bearing find(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    if (founding == null || in.ground().at(founding.si()).isEmpty()) {
      return null;
    }
    Quantity base = in.digs() ? in.amount("excavationDepth") : null;
    GroundProfile ground = in.ground();
    GroundLayer first = null;
    for (GroundLayer layer : ground.layers()) {
      if (ground.bottomMetres(layer) <= founding.si()) {
        continue;
      }
      if (!KIND_BY_SOIL.containsKey(layer.soil())) {
        first = null;
        continue;
      }
      first = first == null ? layer : first;
      double level = Math.max(first.top().si(), founding.si());
      double needed = (base == null ? level : Math.max(level, base.si())) + LEAST_THICKNESS_METRES;
      if (ground.bottomMetres(layer) >= needed) {
        return new Bearing(first, level, weakest(ground.between(level, needed)));
      }
    }
    return null;
  }

  private static String weakest(List<GroundLayer> layers) {
    return layers.stream()
        .map(layer -> KIND_BY_SOIL.getOrDefault(layer.soil(), WEAKEST_FIRST.get(0)))
        .min(java.util.Comparator.comparingInt(WEAKEST_FIRST::indexOf))
        .orElseThrow();
  }
}
