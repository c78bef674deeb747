package underhold.sizing.pits;

import java.util.Locale;
import underhold.sizing.Amount;

/** Numbers that the sizing of pits reads. */
@SuppressWarnings("ImmutableEnumChecker") // Amount is a record of immutable parts
public enum PitsFact {
  /** Working load of the wall. */
  WALL_LINE_LOAD(
      Amount.lineLoad(0),
      "working load of the wall, footing included",
      0,
      5000,
      "What working load comes down per length of wall, the footing included?"),
  /** Length of wall to underpin. */
  WALL_LENGTH(
      Amount.length(0),
      "length of wall to underpin",
      0.3,
      500,
      "What length of wall is to be underpinned?"),
  /** Width of the footing across the wall. */
  FOOTING_WIDTH(
      Amount.length(0),
      "width of the footing across the wall",
      0.15,
      20,
      "How wide is the footing, across the wall (test pit)?"),
  /** Ground level to underside of footing. */
  FOUNDING_DEPTH(
      Amount.length(0),
      "depth of the underside of the footing below the working level",
      0,
      30,
      "How deep below the working level is the underside of the footing?"),
  /** Bottom of the excavation below the underside of footing. */
  EXCAVATION_BELOW_FOOTING(
      Amount.length(0),
      "depth of the excavation below the underside of the footing",
      0,
      30,
      "How far below the underside of the footing does the excavation go?"),
  /** Bottom of the pit below the underside of footing. */
  PIT_DEPTH(
      Amount.length(0),
      "depth of the pits below the underside of the footing",
      0.3,
      30,
      "How far below the underside of the footing do the pits go?"),
  /** Water level above pit base; negative when below. */
  WATER_ABOVE_PIT_BASE(
      Amount.length(0),
      "ground water above the pit base (negative: below it)",
      -100,
      50,
      "How high above the pit base, or how far below it, does ground water stand while the pits are open?"),
  /** Water level above pit base once pumping stops. */
  LASTING_WATER_ABOVE_PIT_BASE(
      Amount.length(0),
      "ground water above the pit base in the long run, behind the finished piers (negative: below it)",
      -100,
      50,
      ""),
  /** Height of unopened wall, or depth of the concrete strip. */
  WALL_HEIGHT(
      Amount.length(0),
      "height of the wall or concrete strip that spans the pit, without openings",
      0.15,
      30,
      ""),
  /** Thickness of wall or width of the concrete strip that spans. */
  WALL_THICKNESS(
      Amount.length(0), "thickness of the wall or strip that spans the pit", 0.1, 10, ""),
  /** Compressive strength of the existing concrete. */
  WALL_CONCRETE_STRENGTH(
      Amount.stress(0), "compressive strength of the existing concrete", 5000, 80000, ""),
  /** Bottom steel of the existing strip. */
  WALL_STEEL_AREA(
      new Amount(0, underhold.quantity.Measure.AREA, "mm2", "in2"),
      "area of bottom steel in the existing strip",
      0.00001,
      0.1,
      ""),
  /** Depth to the steel. */
  WALL_STEEL_DEPTH(
      Amount.length(0), "depth to the bottom steel from the top of the strip", 0.1, 30, ""),
  /** Yield strength of the steel. */
  WALL_STEEL_YIELD(Amount.stress(0), "yield strength of that steel", 150_000, 700_000, ""),
  /** Clear length that the structure can bridge, by its engineer. */
  CLEAR_SPAN(Amount.length(0), "clear length that the structure can bridge", 0, 20, ""),
  /** Free ends of the wall. */
  CORNERS(
      Amount.count(0),
      "ends of the length where the wall stops or turns a corner (0 to 2)",
      0,
      2,
      ""),
  /** Unit weight of soil at the faces. */
  FACE_UNIT_WEIGHT(Amount.unitWeight(0), "unit weight of the soil at the faces", 8, 27, ""),
  /** Friction angle of soil at the faces. */
  FACE_FRICTION_ANGLE(Amount.angle(0), "friction angle of the soil at the faces", 0, 50, ""),
  /** Undrained strength of clay at the faces. */
  FACE_UNDRAINED_STRENGTH(
      Amount.pressure(0), "undrained strength of the clay at the faces", 0, 1000, ""),
  /** Unit weight of soil below the base. */
  BASE_UNIT_WEIGHT(Amount.unitWeight(0), "unit weight of the soil below the pit base", 8, 27, ""),
  /** Friction angle of soil below the base. */
  BASE_FRICTION_ANGLE(Amount.angle(0), "friction angle of the soil below the pit base", 0, 50, ""),
  /** Undrained strength of clay below the base. */
  BASE_UNDRAINED_STRENGTH(
      Amount.pressure(0), "undrained strength of the clay below the pit base", 0, 5000, ""),
  /** Elastic modulus of soil below the base. */
  BASE_MODULUS(
      Amount.stress(0), "elastic modulus of the soil below the pit base", 500, 10_000_000, ""),
  /** Allowable bearing pressure from the ground investigation. */
  BASE_ALLOWABLE(
      Amount.pressure(0),
      "allowable bearing pressure at the pit base, by the ground investigation",
      10,
      10_000,
      ""),
  /** Surcharge on the ground. */
  SURCHARGE(Amount.pressure(0), "surcharge on the ground beside the pits", 0, 500, ""),
  /** Retained height of the finished pier. */
  RETAINED_HEIGHT(
      Amount.length(0),
      "height of soil that the finished pier holds, above the pit base",
      0,
      30,
      ""),
  /** Movement limit of the structure. */
  MOVEMENT_LIMIT(Amount.thickness(0), "settlement that the structure may suffer", 0.0005, 0.5, "");

  private final Amount kind;
  private final String label;
  private final double least;
  private final double most;
  private final String question;

  PitsFact(Amount kind, String label, double least, double most, String question) {
    this.kind = kind;
    this.label = label;
    this.least = least;
    this.most = most;
    this.question = question;
  }

  /** Name as typed. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Question that supplies it; empty where the sizing can do without. */
  public String question() {
    return question;
  }

  /** The value as an amount. */
  public Amount amount(double si) {
    return kind.with(si);
  }

  /** Whether a value is believable. */
  public boolean accepts(double si) {
    return si >= least && si <= most;
  }

  /** What is wrong with a value. */
  String refusal(double si) {
    return label
        + " is "
        + si
        + " "
        + kind.measure().insideUnit()
        + "; it must be from "
        + least
        + " to "
        + most;
  }
}
