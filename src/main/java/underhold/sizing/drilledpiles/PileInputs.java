package underhold.sizing.drilledpiles;

import java.util.List;
import java.util.Optional;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.Source;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.NumberInput.Trial;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.WordInput;

/** What the sizing reads of a zone; what it cannot do without is asked for. */
final class PileInputs {
  static final String COLUMN = "concentrated";
  static final String WALL = "continuous";
  static final String SLAB = "area";
  private static final String EDGE = "cantilevered-edge";

  static final WordInput PATTERN =
      WordInput.among(
          "load-pattern", "how the load comes down", List.of(COLUMN, WALL, SLAB), "loadPattern");
  static final NumberInput COLUMN_LOAD =
      NumberInput.of(
          "column-load", "working load of one column", Amount.force(0), 10, 50_000, "columnLoad");
  static final NumberInput COLUMN_COUNT =
      NumberInput.of("columns", "columns like this one", Amount.count(0), 1, 500, "columnCount")
          .tried(Trial.NONE);
  static final NumberInput LINE_LOAD =
      NumberInput.of(
          "line-load", "working load of the wall", Amount.lineLoad(0), 5, 2000, "lineLoad");
  static final NumberInput WALL_LENGTH =
      NumberInput.of(
          "wall-length", "length of wall to be carried", Amount.length(0), 0.5, 500, "wallLength");
  static final NumberInput AREA_LOAD =
      NumberInput.of(
          "area-load", "working load of the slab or box", Amount.pressure(0), 5, 500, "areaLoad");
  static final NumberInput LENGTH =
      NumberInput.of(
          "undermined-length", "length undermined", Amount.length(0), 0.5, 200, "underminedLength");
  static final NumberInput WIDTH =
      NumberInput.of(
          "undermined-width",
          "reach under the structure",
          Amount.length(0),
          0.5,
          200,
          "underminedWidth");
  static final NumberInput FOUNDING =
      NumberInput.of(
              "founding-depth",
              "underside of the foundation below ground",
              Amount.length(0),
              0,
              30,
              "foundingDepth")
          .tried(Trial.SHIFT);
  static final NumberInput DUG =
      NumberInput.of(
              "dug-below-footing",
              "excavation below the footing",
              Amount.length(0),
              -30,
              40,
              "excavationBelowFooting")
          .tried(Trial.SHIFT);
  static final NumberInput WATER =
      NumberInput.of(
              "ground-water",
              "ground water below ground",
              Amount.length(0),
              0,
              60,
              "groundWaterDepth")
          .tried(Trial.NONE);
  static final NumberInput FOOTING_WIDTH =
      NumberInput.of(
          "footing-width", "width of the footing", Amount.length(0), 0.2, 30, "footingWidth");
  static final NumberInput WALL_THICKNESS =
      NumberInput.of(
          "wall-thickness", "thickness of the wall", Amount.length(0), 0.1, 5, "wallThickness");
  static final NumberInput CLEAR_SPAN =
      NumberInput.of(
              "clear-span", "length the wall can bridge", Amount.length(0), 0, 10, "clearSpan")
          .tried(Trial.NONE);
  static final NumberInput LIMIT =
      NumberInput.of(
          "movement-limit",
          "settlement allowed",
          Amount.thickness(0),
          0.001,
          0.075,
          "movementLimit");
  static final NumberInput OUTSIDE_HEADROOM =
      NumberInput.of(
          "outside-headroom", "headroom outside", Amount.length(0), 0.6, 30, "outsideHeadroom");
  static final NumberInput INSIDE_HEADROOM =
      NumberInput.of(
          "inside-headroom", "headroom inside", Amount.length(0), 0.6, 30, "insideHeadroom");
  static final NumberInput NIGHT =
      NumberInput.of(
          "night-closure",
          "night closure of road or track",
          Amount.hours(0),
          0,
          24,
          "nightClosure");

  static final WordInput POSITION =
      WordInput.careful("excavation-position", "position of the excavation", "excavationPosition");
  static final WordInput LOWERING =
      WordInput.careful(
          "drawdown-workable", "ground water can be lowered without harm", "drawdownWorkable");
  static final WordInput OUTSIDE =
      WordInput.of("outside-access", "what can work outside", "outsideAccess");
  static final WordInput INSIDE =
      WordInput.careful("inside-access", "what can work inside", "insideAccess");
  static final WordInput BRACING =
      WordInput.careful("bracing-room", "room for bracing", "bracingRoom");
  static final WordInput CAPPING =
      WordInput.careful("capping-beam", "a capping beam gathers the wall", "cappingBeamPossible");
  static final WordInput FROM_TRACK =
      WordInput.careful("piles-from-track", "piles only from the track", "pilesFromTrackOnly");
  static final WordInput LATERAL =
      WordInput.careful("lateral-demand", "sideways demand of the structure", "lateralDemand");
  static final WordInput WALL_FIRST =
      WordInput.careful("excavation-wall", "wall built first at the face", "excavationWall");
  static final WordInput UPLIFT =
      WordInput.careful("uplift", "the foundation also holds down", "uplift");
  static final WordInput ARTESIAN =
      WordInput.careful("artesian", "water under pressure below", "artesian");
  static final WordInput BOTH_SIDES =
      WordInput.careful("rig-both-sides", "a rig can work on both sides", "rigBothSides");
  static final WordInput FROM_ABOVE =
      WordInput.careful(
          "drilling-from-above",
          "piles can be drilled through the structure from above",
          "drillingFromAbove");
  static final NumberInput LIVE =
      NumberInput.of(
              "live-structure",
              "nearest live structure to a pile",
              Amount.length(0),
              0,
              100,
              "liveStructureDistance")
          .tried(Trial.NONE);
  static final WordInput OBSTRUCTIONS =
      WordInput.careful("obstructions", "boulders or old works", "obstructions");

  private static final double ASSUMED_WALL = 0.3;
  private static final double ASSUMED_OUTSIDE_HEADROOM = 6;

  private PileInputs() {}

  /** All inputs but those of the layers. */
  static Inputs.Builder read(SiteFacts facts, GroundColumn column) {
    Inputs.Builder inputs = Inputs.from(facts);
    Optional<Given<String>> pattern = facts.word("loadPattern");
    if (pattern.filter(given -> given.value().equals(EDGE)).isPresent()) {
      inputs.object(
          "loadPattern",
          "an overhanging edge is carried by piles with brackets; this sheet carries columns, walls and slabs");
    } else {
      inputs.known(PATTERN).need(PATTERN, "the layout of the piles follows from it");
    }
    pattern.ifPresent(given -> load(inputs, given.value()));
    inputs
        .known(FOUNDING)
        .need(FOUNDING, "the piles start there")
        .known(DUG)
        .need(DUG, "the shaft above the dug level does not count and stands as a column")
        .known(WATER)
        .orAssume(WATER, 0, Source.judgement())
        .known(POSITION)
        .known(LOWERING)
        .knownOrAssumed(LIMIT)
        .known(OUTSIDE)
        .orAssume(OUTSIDE, "none", Source.judgement())
        .knownOrAssumed(INSIDE)
        .known(OUTSIDE_HEADROOM)
        .orAssume(OUTSIDE_HEADROOM, outsideHeadroom(facts), Source.judgement())
        .knownOrAssumed(INSIDE_HEADROOM)
        .known(NIGHT)
        .known(BRACING)
        .orAssume(BRACING, "no", Source.judgement())
        .known(FROM_TRACK)
        .knownOrAssumed(LATERAL)
        .known(WALL_FIRST)
        .known(UPLIFT)
        .known(ARTESIAN)
        .known(LIVE)
        .known(BOTH_SIDES)
        .known(FROM_ABOVE)
        .knownOrAssumed(OBSTRUCTIONS);
    if (column.isEmpty()) {
      inputs.ask(
          "ground",
          "Which layers lie below the structure, from the surface to well below the excavation, with their strengths?",
          "piles are as long as the ground below the excavation makes them");
    }
    return inputs;
  }

  /** Usually open sky; a large rig that is said to fit has its own height. */
  private static double outsideHeadroom(SiteFacts facts) {
    return facts.word("outsideAccess").filter(one -> one.value().equals("large-rig")).isPresent()
        ? 2 * ASSUMED_OUTSIDE_HEADROOM
        : ASSUMED_OUTSIDE_HEADROOM;
  }

  private static void load(Inputs.Builder inputs, String pattern) {
    switch (pattern) {
      case COLUMN ->
          inputs
              .known(COLUMN_LOAD)
              .need(COLUMN_LOAD, "number and length of the piles follow from it")
              .known(COLUMN_COUNT)
              .orAssume(COLUMN_COUNT, 1, Source.judgement())
              .known(FOOTING_WIDTH)
              .need(FOOTING_WIDTH, "the transfer beams span it");
      case WALL ->
          inputs
              .known(LINE_LOAD)
              .need(LINE_LOAD, "number and length of the piles follow from it")
              .known(WALL_LENGTH)
              .need(WALL_LENGTH, "the number of piles follows from it")
              .known(FOOTING_WIDTH)
              .need(FOOTING_WIDTH, "the needle beams span it")
              .known(WALL_THICKNESS)
              .orAssume(WALL_THICKNESS, ASSUMED_WALL, Source.judgement())
              .knownOrAssumed(CLEAR_SPAN)
              .known(CAPPING)
              .orAssume(CAPPING, "no", Source.judgement());
      case SLAB ->
          inputs
              .known(AREA_LOAD)
              .need(AREA_LOAD, "number and length of the piles follow from it")
              .known(LENGTH)
              .need(LENGTH, "the load on the piles follows from it")
              .known(WIDTH)
              .need(WIDTH, "the load on the piles follows from it");
      default -> {}
    }
  }
}
