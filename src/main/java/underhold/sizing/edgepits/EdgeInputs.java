package underhold.sizing.edgepits;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import underhold.sizing.Amount;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.NumberInput.Trial;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.WordInput;

/** What the sizing of edge pits reads of a zone. */
final class EdgeInputs {
  static final NumberInput LINE_LOAD =
      NumberInput.of(
          "line-load",
          "working load of the structure per length, footing included",
          Amount.lineLoad(0),
          0,
          5000,
          "lineLoad");
  static final NumberInput AREA_LOAD =
      NumberInput.of(
          "area-load",
          "working load of the structure per area",
          Amount.pressure(0),
          0,
          1000,
          "areaLoad");
  static final NumberInput FOOTING_WIDTH =
      NumberInput.of(
          "footing-width", "width of the footing", Amount.length(0), 0.15, 100, "footingWidth");
  static final NumberInput FOUNDING_DEPTH =
      NumberInput.of(
          "founding-depth",
          "depth of the underside of the structure below ground",
          Amount.length(0),
          0,
          30,
          "foundingDepth");
  static final NumberInput EXCAVATION =
      NumberInput.of(
          "excavation-below-footing",
          "bottom of the excavation below the underside of the structure",
          Amount.length(0),
          0.3,
          20,
          "excavationBelowFooting");
  static final NumberInput EDGE_LENGTH =
      NumberInput.of(
          "edge-length",
          "length of edge where no wall can be built because the structure stands over its line",
          Amount.length(0),
          0.75,
          200,
          "wallGapLength");
  static final NumberInput WATER_DEPTH =
      NumberInput.of(
              "water-depth",
              "depth of ground water below ground",
              Amount.length(0),
              0,
              100,
              "groundWaterDepth")
          .tried(Trial.SHIFT);
  static final NumberInput ROCK_DEPTH =
      NumberInput.of(
          "rock-depth",
          "depth of rock below the underside of the structure",
          Amount.length(0),
          0,
          100,
          "rockDepth");
  static final NumberInput FACE_WEIGHT =
      NumberInput.of(
          "face-unit-weight",
          "unit weight of the soil behind the wall",
          Amount.unitWeight(0),
          8,
          27,
          "soilUnitWeight");
  static final NumberInput FACE_FRICTION =
      NumberInput.of(
          "face-friction-angle",
          "friction angle of the soil behind the wall",
          Amount.angle(0),
          0,
          50,
          "");
  static final NumberInput FACE_STRENGTH =
      NumberInput.of(
          "face-undrained-strength",
          "undrained strength of the clay behind the wall",
          Amount.pressure(0),
          0,
          1000,
          "undrainedStrength");
  static final NumberInput BOARD_WEIGHT =
      NumberInput.of(
              "board-unit-weight",
              "unit weight of the soil that presses most on the boards",
              Amount.unitWeight(0),
              8,
              27,
              "")
          .tried(Trial.NONE);
  static final NumberInput BOARD_FRICTION =
      NumberInput.of(
          "board-friction-angle",
          "friction angle of the soil that presses most on the boards",
          Amount.angle(0),
          0,
          50,
          "");
  static final NumberInput BOARD_STRENGTH =
      NumberInput.of(
          "board-undrained-strength",
          "undrained strength of the clay that presses most on the boards",
          Amount.pressure(0),
          0,
          1000,
          "");
  static final NumberInput BASE_WEIGHT =
      NumberInput.of(
              "base-unit-weight",
              "unit weight of the soil below the toe",
              Amount.unitWeight(0),
              8,
              27,
              "")
          .tried(Trial.NONE);
  static final NumberInput BASE_STRENGTH =
      NumberInput.of(
          "base-undrained-strength",
          "undrained strength of the clay below the excavation",
          Amount.pressure(0),
          0,
          5000,
          "undrainedStrength");

  private static final List<String> SOILS =
      Arrays.stream(SoilClass.values()).map(EdgeInputs::word).toList();

  static final WordInput LOAD_PATTERN =
      WordInput.among(
          "load-pattern",
          "how the structure's load comes down",
          List.of("continuous", "area"),
          "loadPattern");
  static final WordInput FACE_SOIL =
      WordInput.among("face-soil", "soil behind the wall", SOILS, "worstSoil");
  static final WordInput BOARD_SOIL =
      WordInput.among("board-soil", "soil that presses most on the boards", SOILS, "");
  static final WordInput APPROACH_LAYERS =
      WordInput.among(
          "approach-layers",
          "layers that the approach pits go through above the structure's underside",
          List.of(),
          "");
  static final WordInput BASE_SOIL =
      WordInput.among("base-soil", "soil below the toe", SOILS, "bearingKind");
  static final WordInput FACES_RUN =
      WordInput.among("faces-run", "a layer behind runs with water", List.of("yes", "no"), "");
  static final WordInput BRACING =
      WordInput.careful("bracing-possible", "the wall can be braced or tied", "bracingRoom");
  static final WordInput JOINTS =
      WordInput.careful("rock-joints", "joints in the rock towards the excavation", "rockJoints");
  static final WordInput DRAWDOWN =
      WordInput.careful(
          "drawdown-workable", "ground water can be lowered without harm", "drawdownWorkable");
  static final WordInput ARTESIAN =
      WordInput.careful(
          "artesian", "water under pressure below the excavation or the pits", "artesian");
  static final WordInput STAND_UP = WordInput.of("stand-up", "time a face stands", "standUp");

  private EdgeInputs() {}

  /** "dense-sand". */
  static String word(SoilClass soil) {
    return soil.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The class of that word. */
  static SoilClass soil(String word) {
    return SoilClass.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
