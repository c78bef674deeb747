package underhold.sizing.needles;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.NumberInput.Trial;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.WordInput;

/** What the sheet of needles reads from a zone. */
final class NeedleInput {
  static final NumberInput COLUMN_LOAD =
      NumberInput.of("column-load", "load of the column", Amount.force(0), 0, 50_000, "columnLoad");
  static final NumberInput LINE_LOAD =
      NumberInput.of("line-load", "load of the wall", Amount.lineLoad(0), 0, 2_000, "lineLoad");
  static final NumberInput WALL_LENGTH =
      NumberInput.of("wall-length", "length of the wall", Amount.length(0), 0.3, 500, "wallLength");
  static final NumberInput SEAT_SPAN =
      NumberInput.of("seat-span", "span between seats", Amount.length(0), 0.5, 30, "seatSpan");
  static final NumberInput HOLE_WIDTH =
      NumberInput.of(
          "excavation-width",
          "width of the excavation along the needles, under the structure",
          Amount.length(0),
          0,
          30,
          "underminedWidth");
  static final NumberInput HOLE_DEPTH =
      NumberInput.of(
          "excavation-depth",
          "depth of the excavation below ground",
          Amount.length(0),
          0,
          70,
          "excavationDepth");
  static final NumberInput SEAT_DEPTH =
      NumberInput.of(
              "seat-depth",
              "depth of the seats below ground",
              Amount.length(0),
              0,
              60,
              "seatBearingDepth")
          .tried(Trial.SHIFT);
  static final NumberInput CLEAR_SPAN =
      NumberInput.of(
              "clear-span",
              "length that the wall or footing can bridge",
              Amount.length(0),
              0,
              10,
              "clearSpan")
          .tried(Trial.NONE);
  static final NumberInput WALL_THICKNESS =
      NumberInput.of(
          "wall-thickness",
          "thickness of the wall where it is picked up",
          Amount.length(0),
          0.1,
          5,
          "wallThickness");
  static final NumberInput MOVEMENT_LIMIT =
      NumberInput.of(
          "movement-limit",
          "movement that the structure may suffer",
          Amount.thickness(0),
          0.001,
          0.075,
          "movementLimit");
  static final NumberInput SHAFT =
      NumberInput.of(
          "clear-shaft",
          "clear height of column above its footing",
          Amount.length(0),
          0,
          20,
          "clearShaft");
  static final NumberInput SEAT_STRENGTH =
      NumberInput.of(
          "seat-undrained-strength",
          "undrained strength of the clay under the seats",
          Amount.pressure(0),
          1,
          2_000,
          "");
  static final NumberInput SEAT_FRICTION =
      NumberInput.of(
          "seat-friction-angle",
          "friction angle of the soil under the seats",
          Amount.angle(0),
          10,
          50,
          "");
  static final NumberInput SEAT_WEIGHT =
      NumberInput.of(
              "seat-unit-weight",
              "unit weight of the soil under the seats, under water",
              Amount.unitWeight(0),
              3,
              26,
              "")
          .tried(Trial.NONE);
  static final NumberInput SEAT_MODULUS =
      NumberInput.of(
          "seat-soil-modulus",
          "elastic modulus of the soil under the seats",
          Amount.stress(0),
          500,
          20_000_000,
          "");

  static final WordInput LAYOUT =
      WordInput.among(
          "layout",
          "layout of the needles",
          List.of("pair", "row", "cantilever-pair", "cantilever-row"),
          "");
  static final WordInput MATERIAL =
      WordInput.of("material", "material where the load is picked up", "structureMaterial");
  static final WordInput CARRIED =
      WordInput.of("can-be-carried", "column can be carried temporarily", "pickUpPossible");
  static final WordInput ROOM =
      WordInput.of("room-for-beams", "room to bring in beams", "roomForBeams");
  static final WordInput CONDITION =
      WordInput.of("condition", "condition of the structure", "structureCondition");
  static final WordInput SEAT_SOIL =
      WordInput.among(
          "seat-soil",
          "soil under the seats",
          Arrays.stream(SoilClass.values()).map(NeedleInput::word).toList(),
          "");

  static final WordInput WEDGE_SOIL =
      WordInput.among(
          "wedge-soil",
          "soft soil between the seats and the toe of the excavation",
          Arrays.stream(SoilClass.values()).map(NeedleInput::word).toList(),
          "");

  private NeedleInput() {}

  /** Whether a stated word is no. */
  static Predicate<Given<String>> no() {
    return word -> word.value().equals("no");
  }

  static String word(SoilClass soil) {
    return soil.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static SoilClass soil(String word) {
    return SoilClass.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
