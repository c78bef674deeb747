package underhold.classroom.making;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sequences of layers that are met under towns (judgement). Made ground lies on top; the foundation
 * reaches through it.
 */
enum GroundKind {
  STIFF_CLAY("cohesive-fill", "stiff-clay", "", 0, 0),
  TILL("fill", "hard-clay-or-till", "", 0, 0),
  DENSE_SAND("fill", "dense-sand", "", 0, 0),
  GRAVEL("fill", "dense-gravel", "", 0, 0),
  GRAVEL_OVER_CLAY("fill", "dense-gravel", "stiff-clay", 2.5, 6),
  CLAY_OVER_SAND("cohesive-fill", "stiff-clay", "dense-sand", 6, 11),
  CEMENTED_SAND("fill", "cemented-sand", "hard-clay-or-till", 8, 12),
  FINE_SAND("fill", "mixed-fine-sand", "dense-gravel", 6, 10),
  LOOSE_SAND("fill", "loose-sand", "dense-sand", 3.5, 8),
  SILT("fill", "silt", "hard-clay-or-till", 5, 9),
  SOFT_CLAY_OVER_GRAVEL("cohesive-fill", "soft-clay", "dense-gravel", 7, 13),
  SOFT_CLAY_OVER_TILL("cohesive-fill", "soft-clay", "hard-clay-or-till", 5, 12),
  WEATHERED_ROCK("fill", "decomposed-rock", "rock", 3, 7),
  CLAY_OVER_ROCK("cohesive-fill", "stiff-clay", "rock", 3, 8),
  ROCK("fill", "rock", "", 0, 0);

  private static final double LEAST_MADE_METRES = 0.5;
  private static final double MOST_MADE_METRES = 2.8;
  private static final double EMBEDDED_METRES = 0.2;
  private static final double CLAY_PRESSURE_FACTOR = 2.4;

  private final String above;
  private final String main;
  private final String below;
  private final double least;
  private final double most;

  GroundKind(String above, String main, String below, double least, double most) {
    this.above = above;
    this.main = main;
    this.below = below;
    this.least = least;
    this.most = most;
  }

  /** The soil on which the foundation stands. */
  String main() {
    return main;
  }

  /** Whether the foundation stands on rock. */
  boolean onRock() {
    return main.equals("rock");
  }

  /** Layers in which a foundation of that depth stands on the soil that gives them their name. */
  List<Layer> layers(Draw draw, double founding) {
    List<Layer> layers = new ArrayList<>();
    double made = draw.between(LEAST_MADE_METRES, MOST_MADE_METRES);
    double top = Math.max(0.3, Math.min(made, founding - EMBEDDED_METRES));
    Typing typing = draw.typing();
    layers.add(layer(draw, above, typing.length(0)));
    String second = typing.length(top);
    if (Typing.metres(second) > founding) {
      second = typing.us() ? typing.length(founding - 0.15) : typing.length(founding - 0.1);
    }
    layers.add(layer(draw, main, second));
    if (!below.isEmpty()) {
      layers.add(layer(draw, below, typing.length(founding + draw.between(least, most))));
    }
    return layers;
  }

  private static Layer layer(Draw draw, String soil, String top) {
    Typing typing = draw.typing();
    Map<String, String> known = new LinkedHashMap<>();
    double[] weights = weights(soil);
    known.put("unitWeight", typing.unitWeight(draw.between(weights[0], weights[1])));
    switch (soil) {
      case "soft-clay" -> known.put("undrainedStrength", typing.strength(draw.between(18, 34)));
      case "stiff-clay" -> known.put("undrainedStrength", typing.strength(draw.between(80, 145)));
      case "hard-clay-or-till" ->
          known.put("undrainedStrength", typing.strength(draw.between(170, 280)));
      case "dense-sand", "cemented-sand" ->
          known.put("frictionAngle", typing.angle(draw.between(35, 38)));
      case "dense-gravel" -> known.put("frictionAngle", typing.angle(draw.between(37, 40)));
      case "loose-sand" -> {
        known.put("frictionAngle", typing.angle(draw.between(29, 31)));
        known.put("permeability", typing.speed(draw.whole(1, 4), 4));
      }
      case "mixed-fine-sand" -> {
        known.put("frictionAngle", typing.angle(draw.between(30, 32)));
        known.put("permeability", typing.speed(draw.whole(2, 8), 5));
      }
      case "silt" -> {
        known.put("frictionAngle", typing.angle(draw.between(28, 30)));
        known.put("permeability", typing.speed(draw.whole(2, 8), 6));
      }
      default -> {}
    }
    return new Layer(soil, top, known);
  }

  /** Total unit weights as handbooks give them, kN/m³ (common practice). */
  private static double[] weights(String soil) {
    return switch (soil) {
      case "rock" -> new double[] {24, 26};
      case "decomposed-rock" -> new double[] {20, 21.5};
      case "hard-clay-or-till", "dense-gravel" -> new double[] {20, 21.5};
      case "cemented-sand", "dense-sand" -> new double[] {19, 20};
      case "stiff-clay" -> new double[] {19, 20};
      case "mixed-fine-sand", "silt" -> new double[] {18, 19};
      case "loose-sand" -> new double[] {17, 18};
      case "soft-clay" -> new double[] {16, 17};
      case "peat" -> new double[] {11, 12};
      default -> new double[] {17, 18.5};
    };
  }

  /**
   * The pressure under an old footing that has stood on a soil, kPa: usual presumed values, for
   * clay in proportion to its strength (judgement).
   */
  static double pressure(List<Layer> layers, double founding) {
    Layer at = layers.get(0);
    for (Layer layer : layers) {
      if (Typing.metres(layer.top()) <= founding) {
        at = layer;
      }
    }
    String strength = at.properties().get("undrainedStrength");
    if (strength != null) {
      double kilopascals = Typing.si(strength, underhold.quantity.Measure.PRESSURE);
      return Math.min(300, CLAY_PRESSURE_FACTOR * kilopascals);
    }
    return switch (at.soil()) {
      case "rock" -> 600;
      case "decomposed-rock", "dense-gravel", "cemented-sand" -> 280;
      case "dense-sand" -> 210;
      case "loose-sand", "mixed-fine-sand" -> 100;
      default -> 75;
    };
  }

  /** A soil in running text. */
  static String words(String soil) {
    return switch (soil) {
      case "hard-clay-or-till" -> "hard till";
      case "decomposed-rock" -> "weathered rock";
      case "mixed-fine-sand" -> "fine sand";
      case "cohesive-fill" -> "clay fill";
      default -> soil.replace('-', ' ');
    };
  }

  /** Layers below the made ground in running text: {@code soft clay over dense gravel}. */
  static String words(List<Layer> layers) {
    return String.join(
        " over ",
        layers.subList(Math.min(1, layers.size() - 1), layers.size()).stream()
            .map(layer -> words(layer.soil()))
            .toList());
  }
}
