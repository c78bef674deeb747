package underhold.site;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * Facts that follow from the ground layers. A property follows only where every layer concerned
 * states it: a layer that is silent might be the worse one (judgement, on the safe side).
 */
final class LayerDerivations {
  /** Soils whose undrained strength counts: each of them must state it (judgement). */
  private static final Set<String> COHESIVE =
      Set.of("hard-clay-or-till", "stiff-clay", "soft-clay", "cohesive-fill", "peat");

  /**
   * How far below its base an excavation can heave, as a multiple of its depth (judgement: about
   * the width that is usual beside buildings).
   */
  private static final double HEAVE_REACH_PER_DEPTH = 1.0;

  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "soilAtFooting", List.of("foundingDepth"), LayerDerivations::soilAtFooting),
          new Derivation(
              "worstSoil",
              List.of("foundingDepth", "excavationDepth", "bearingDepth"),
              LayerDerivations::worstSoil),
          new Derivation(
              "runningLayer",
              List.of("foundingDepth", "excavationDepth", "bearingDepth"),
              LayerDerivations::runningLayer),
          new Derivation(
              "openLayer",
              List.of("foundingDepth", "excavationDepth", "bearingDepth"),
              LayerDerivations::openLayer),
          new Derivation(
              "standUp",
              List.of("foundingDepth", "excavationDepth", "bearingDepth"),
              LayerDerivations::standUp),
          new Derivation(
              "permeability",
              List.of("foundingDepth", "excavationDepth", "bearingDepth"),
              LayerDerivations::permeability),
          new Derivation(
              "undrainedStrength",
              List.of("foundingDepth", "excavationDepth"),
              LayerDerivations::undrainedStrength),
          new Derivation(
              "soilUnitWeight", List.of("excavationDepth"), LayerDerivations::soilUnitWeight),
          new Derivation(
              "edgeGround",
              List.of("foundingDepth", "excavationDepth", "excavationBelowFooting"),
              LayerDerivations::edgeGround));

  /** Soils that can run when water stands in them; common practice. */
  static final Set<String> CAN_RUN =
      Set.of("dense-sand", "loose-sand", "mixed-fine-sand", "silt", "fill", "peat");

  /** Soils that let water through; common practice. */
  static final Set<String> LETS_WATER_THROUGH =
      Set.of(
          "decomposed-rock",
          "cemented-sand",
          "dense-gravel",
          "dense-sand",
          "loose-sand",
          "mixed-fine-sand",
          "silt",
          "fill",
          "peat");

  private LayerDerivations() {}

  /** The layer in which the founding level lies; at a boundary the lower one. */
  private static @Nullable Derived soilAtFooting(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    if (founding == null) {
      return null;
    }
    return in.ground()
        .at(founding.si())
        .map(
            layer ->
                Inputs.word(
                    layer.soil(),
                    "the layer " + Stretch.words(layer) + ", at " + in.show("foundingDepth")))
        .orElse(null);
  }

  /** The worst layer from the footing to the base, in the order of {@link SoilRank}. */
  private static @Nullable Derived worstSoil(Inputs in) {
    Stretch stretch = Stretch.footingToBase(in);
    if (stretch == null) {
      return null;
    }
    String worst =
        stretch.layers().stream().map(GroundLayer::soil).min(SoilRank.worstFirst()).orElseThrow();
    return Inputs.word(worst, "worst " + stretch.between() + " of: " + stretch.words());
  }

  /** The shortest stand-up time of the layers; {@code none} in one layer is enough. */
  private static @Nullable Derived standUp(Inputs in) {
    Stretch stretch = Stretch.footingToBase(in);
    if (stretch == null) {
      return null;
    }
    String shortest =
        stretch.layers().stream()
            .map(GroundLayer::standUp)
            .filter(Objects::nonNull)
            .min(Comparator.comparingInt(SoilRank.SHORTEST_FIRST::indexOf))
            .orElse("");
    boolean decided = shortest.equals(SoilRank.SHORTEST_FIRST.get(0));
    return decided || stretch.allState(GroundLayer::standUp)
        ? Inputs.word(shortest, "shortest " + stretch.between() + " of: " + stretch.words())
        : null;
  }

  /** The greatest permeability of the layers from the footing to the base. */
  private static @Nullable Derived permeability(Inputs in) {
    Stretch stretch = Stretch.footingToBase(in);
    if (stretch == null || !stretch.allState(GroundLayer::permeability)) {
      return null;
    }
    Quantity greatest =
        stretch.layers().stream()
            .flatMap(layer -> layer.maybePermeability().stream())
            .max(Comparator.comparingDouble(Quantity::si))
            .orElseThrow();
    return Inputs.same(greatest, "greatest " + stretch.between() + " of: " + stretch.words());
  }

  /**
   * The smallest undrained strength from the footing, or the excavation base where that is higher,
   * down to one depth of excavation below its base.
   */
  private static @Nullable Derived undrainedStrength(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    Quantity depth = in.amount("excavationDepth");
    if (!in.digs() || founding == null || depth == null) {
      return null;
    }
    double from = Math.min(founding.si(), depth.si());
    double to = depth.si() * (1 + HEAVE_REACH_PER_DEPTH);
    List<GroundLayer> layers = in.ground().between(from, to);
    boolean complete =
        in.ground().at(from).isPresent()
            && layers.stream()
                .filter(layer -> COHESIVE.contains(layer.soil()))
                .allMatch(layer -> layer.undrainedStrength() != null);
    return !complete
        ? null
        : layers.stream()
            .flatMap(layer -> layer.maybeUndrainedStrength().stream())
            .min(Comparator.comparingDouble(Quantity::si))
            .map(
                least ->
                    Inputs.same(
                        least,
                        "smallest from "
                            + in.show("foundingDepth")
                            + " down to twice "
                            + in.show("excavationDepth")))
            .orElse(null);
  }

  /** Mean unit weight above the excavation base, weighted with thickness. */
  private static @Nullable Derived soilUnitWeight(Inputs in) {
    Quantity depth = in.amount("excavationDepth");
    if (!in.digs() || depth == null || depth.si() <= 0 || in.ground().at(0).isEmpty()) {
      return null;
    }
    double weightTimesThickness = 0;
    StringBuilder working = new StringBuilder();
    Quantity[] weights = new Quantity[in.ground().layers().size()];
    int count = 0;
    for (GroundLayer layer : in.ground().between(0, depth.si())) {
      Quantity weight = layer.unitWeight();
      if (weight == null) {
        return null;
      }
      double top = Math.max(0, layer.top().si());
      double bottom = Math.min(depth.si(), in.ground().bottomMetres(layer));
      weightTimesThickness += weight.si() * (bottom - top);
      weights[count++] = weight;
      working.append(count == 1 ? "" : ", ").append(weight.text() + " from " + layer.top().text());
    }
    return in.result(
        "soilUnitWeight",
        weightTimesThickness / depth.si(),
        "mean above " + in.show("excavationDepth") + " of: " + working,
        Arrays.copyOf(weights, count));
  }

  /** Whether any layer down to the base can run when wet: uncemented sand, silt, peat, fill. */
  private static @Nullable Derived runningLayer(Inputs in) {
    return anyLayer(in, CAN_RUN);
  }

  /** Whether any layer down to the base lets water through. */
  private static @Nullable Derived openLayer(Inputs in) {
    return anyLayer(in, LETS_WATER_THROUGH);
  }

  /** Yes where one layer is such; no only where the layers down to good bearing are all known. */
  private static @Nullable Derived anyLayer(Inputs in, Set<String> soils) {
    Stretch stretch = Stretch.footingToBase(in);
    if (stretch == null) {
      return null;
    }
    boolean any = stretch.layers().stream().anyMatch(layer -> soils.contains(layer.soil()));
    boolean whole = in.amount("bearingDepth") != null;
    return any || whole
        ? Inputs.word(any ? "yes" : "no", stretch.between() + ": " + stretch.words())
        : null;
  }

  /** Rock where every layer the edge shows is sound rock, earth where none is. */
  private static @Nullable Derived edgeGround(Inputs in) {
    Quantity below = in.amount("excavationBelowFooting");
    Stretch stretch = Stretch.footingToExcavation(in);
    if (!in.digs() || below == null || below.si() <= 0 || stretch == null) {
      return null;
    }
    long rock = stretch.layers().stream().filter(layer -> layer.soil().equals("rock")).count();
    boolean mixed = rock > 0 && rock < stretch.layers().size();
    return mixed
        ? null
        : Inputs.word(rock > 0 ? "rock" : "earth", stretch.between() + ": " + stretch.words());
  }
}
