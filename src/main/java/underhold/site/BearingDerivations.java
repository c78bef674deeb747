package underhold.site;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * Good bearing and rock found in the ground layers.
 *
 * <p>Judgement: good bearing is the first run of bearing layers, at or below the footing, that goes
 * on for {@link #LEAST_THICKNESS_METRES} below the deepest of its top, the footing and the
 * excavation base. A thinner run over weaker ground is passed over. The last layer of a profile is
 * taken to go on. The kind is that of the weakest layer from the bearing level, stated or found, to
 * the end of that thickness.
 */
final class BearingDerivations {
  /** Thickness of good ground that a footing needs under it; judgement. */
  static final double LEAST_THICKNESS_METRES = 3.0;

  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "bearingDepth",
              List.of("foundingDepth", "excavationDepth"),
              BearingDerivations::bearingDepth),
          new Derivation(
              "bearingKind",
              List.of("foundingDepth", "bearingDepth", "excavationDepth"),
              BearingDerivations::bearingKind),
          new Derivation("rockDepth", List.of("foundingDepth"), BearingDerivations::rockDepth));

  private BearingDerivations() {}

  private record Bearing(GroundLayer layer, double depthMetres) {}

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
    Quantity founding = in.amount("foundingDepth");
    Quantity depth = in.amount("bearingDepth");
    if (founding == null || depth == null) {
      return null;
    }
    double level = founding.si() + depth.si();
    List<GroundLayer> layers = in.ground().between(level, neededMetres(in, level));
    boolean described = in.ground().at(level).isPresent();
    return BearingSoils.weakest(described ? layers : List.of())
        .map(
            kind ->
                Inputs.word(
                    kind,
                    "weakest below "
                        + in.show("bearingDepth")
                        + " of: "
                        + layers.stream().map(Stretch::words).collect(Collectors.joining(", "))))
        .orElse(null);
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
    GroundLayer first = null;
    for (GroundLayer layer : in.ground().layers()) {
      if (in.ground().bottomMetres(layer) <= founding.si()) {
        continue;
      }
      if (!BearingSoils.bears(layer)) {
        first = null;
        continue;
      }
      first = first == null ? layer : first;
      double level = Math.max(first.top().si(), founding.si());
      if (in.ground().bottomMetres(layer) >= neededMetres(in, level)) {
        return new Bearing(first, level);
      }
    }
    return null;
  }

  /** The depth down to which good ground at that level has to go on. */
  private static double neededMetres(Inputs in, double levelMetres) {
    Quantity base = in.digs() ? in.amount("excavationDepth") : null;
    double deepest = base == null ? levelMetres : Math.max(levelMetres, base.si());
    return deepest + LEAST_THICKNESS_METRES;
  }
}
