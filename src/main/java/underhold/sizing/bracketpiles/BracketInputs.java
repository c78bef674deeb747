package underhold.sizing.bracketpiles;

import java.util.List;
import java.util.Optional;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.NumberInput.Trial;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.WordInput;

/** What the sheet takes from a zone. */
final class BracketInputs {
  static final NumberInput LINE_LOAD =
      NumberInput.of("line-load", "working line load", Amount.lineLoad(0), 0, 2000, "lineLoad");
  static final NumberInput COLUMN_LOAD =
      NumberInput.of(
          "column-load", "working column load", Amount.force(0), 0, 50_000, "columnLoad");
  static final NumberInput WALL_LENGTH =
      NumberInput.of("wall-length", "length of edge", Amount.length(0), 0.3, 500, "wallLength");
  static final NumberInput CLEAR_SPAN =
      NumberInput.of("clear-span", "length the edge bridges", Amount.length(0), 0, 10, "clearSpan");
  static final NumberInput MOVEMENT_LIMIT =
      NumberInput.of(
          "movement-limit", "movement limit", Amount.thickness(0), 0.001, 0.075, "movementLimit");
  static final NumberInput FOUNDING_DEPTH =
      NumberInput.of(
          "founding-depth",
          "depth of the footing's underside",
          Amount.length(0),
          0,
          30,
          "foundingDepth");
  static final NumberInput EXCAVATION =
      NumberInput.of(
          "excavation-below-footing",
          "excavation below the footing",
          Amount.length(0),
          0,
          40,
          "excavationBelowFooting");
  static final NumberInput HEADROOM =
      NumberInput.of(
          "headroom", "headroom for the rig", Amount.length(0), 0.6, 30, "outsideHeadroom");
  static final NumberInput LOAD_OFFSET =
      NumberInput.of(
          "load-offset",
          "from pile line to the line of the load",
          Amount.thickness(0),
          0,
          3,
          "loadOffset");
  static final NumberInput SOIL_REACTION =
      new NumberInput(
          "soil-reaction-at-head",
          "soil reaction k on the pile below its head",
          Amount.stress(0),
          50,
          300_000,
          "",
          "What is the stiffness of the soil at the pile head?",
          Trial.SCALE);
  static final NumberInput SOFTEST_REACTION =
      new NumberInput(
          "softest-reaction",
          "soil reaction of the softest layer along the pile",
          Amount.stress(0),
          50,
          300_000,
          "",
          "What is the stiffness of the softest layer?",
          Trial.SCALE);

  static final WordInput PATH =
      new WordInput(
          "path",
          "what carries the moment P e",
          MomentPath.words(),
          "pairedPilesPossible",
          "What carries the moment of the bracket: pile head, couple, pair, or a head held by the edge?",
          false);
  static final WordInput FOOTING =
      WordInput.of("footing-strength", "what the seat bears on", "footingStrength");
  static final WordInput MATERIAL =
      WordInput.of("structure-material", "material at support level", "structureMaterial");
  static final WordInput CONDITION =
      WordInput.careful("condition", "condition of the structure", "structureCondition");
  static final WordInput LIFE = WordInput.careful("life", "life of the support", "life");
  static final WordInput BARED =
      new WordInput(
          "bared",
          "whether the excavation bares the pile",
          List.of("yes", "no"),
          "",
          "Does the excavation take the soil away from the pile?",
          true);

  /** A pile nearer to the face than this, beyond the edge, is taken as bared; judgement. */
  private static final double BARING_REACH_METRES = 0.6;

  private static final double USUAL_HEADROOM = 3.0;

  private BracketInputs() {}

  static Inputs of(SiteFacts facts, GroundColumn column, BracketSettings settings) {
    Inputs.Builder inputs = Inputs.from(facts);
    load(inputs, facts);
    inputs
        .known(FOUNDING_DEPTH)
        .need(FOUNDING_DEPTH, "the head of the pile stands at the underside of the footing");
    excavation(inputs, facts);
    inputs
        .known(WALL_LENGTH)
        .knownOrAssumed(CLEAR_SPAN)
        .knownOrAssumed(MOVEMENT_LIMIT)
        .known(LOAD_OFFSET)
        .known(HEADROOM)
        .orAssume(
            HEADROOM,
            USUAL_HEADROOM,
            new Source("nobody stated it; a rig with ordinary pieces", Basis.JUDGEMENT))
        .known(FOOTING)
        .need(FOOTING, "the seat bears on it, and rubble takes no bracket")
        .knownOrAssumed(MATERIAL)
        .knownOrAssumed(CONDITION)
        .knownOrAssumed(LIFE);
    path(inputs, facts, settings);
    bared(inputs, facts);
    ground(inputs, column, settings);
    return inputs.build();
  }

  private static void load(Inputs.Builder inputs, SiteFacts facts) {
    Optional<Given<String>> pattern = facts.word("loadPattern");
    if (pattern.filter(one -> one.value().equals("area")).isPresent()) {
      inputs.object(
          "loadPattern", "brackets hold an edge, a wall or a column; an area wants piles under it");
    }
    if (facts
        .word("excavationPosition")
        .filter(one -> one.value().equals("wholly-under"))
        .isPresent()) {
      inputs.object(
          "excavationPosition",
          "brackets hold an edge from outside; what is passed under whole wants supports below it");
    }
    if (pattern.filter(one -> one.value().equals("concentrated")).isPresent()) {
      inputs.known(COLUMN_LOAD).need(COLUMN_LOAD, "every force of the sheet follows from it");
    } else {
      inputs.known(LINE_LOAD).need(LINE_LOAD, "every force of the sheet follows from it");
    }
  }

  private static void excavation(Inputs.Builder inputs, SiteFacts facts) {
    if (facts
        .word("excavationPosition")
        .filter(one -> one.value().equals("no-excavation"))
        .isPresent()) {
      inputs.put(EXCAVATION, Given.derived(0.0, "there is no new excavation"));
    } else {
      facts
          .number("excavationBelowFooting")
          .ifPresent(
              given -> inputs.put(EXCAVATION, SiteFacts.as(given, Math.max(0, given.value()))));
    }
    inputs.need(EXCAVATION, "soil above the base of the excavation carries no bond");
  }

  /** No default hides who carries the moment: until it is decided the weakest path is shown. */
  private static void path(Inputs.Builder inputs, SiteFacts facts, BracketSettings settings) {
    if (settings.path().isPresent()) {
      inputs.put(
          PATH,
          new Given<>(
              settings.path().get().word(), Origin.SET_BY_USER, new Source("", Basis.STATICS)));
      return;
    }
    String pairs =
        facts
            .word("pairedPilesPossible")
            .map(
                one ->
                    "piles in pairs or tied back are "
                        + (one.value().equals("yes") ? "" : "not ")
                        + "possible; ")
            .orElse("");
    inputs.orAssume(
        PATH,
        MomentPath.PILE_HEAD.word(),
        new Source(
            pairs
                + "nobody decided who carries the moment, so the weakest path is shown: set moment-path",
            Basis.JUDGEMENT));
  }

  /**
   * A pile close to the face is bared; so is one within the depth of a cut whose face nothing
   * holds. Judgement.
   */
  private static void bared(Inputs.Builder inputs, SiteFacts facts) {
    Optional<Given<Double>> gap = facts.number("gapToExcavation");
    if (gap.isPresent()) {
      double away = gap.get().value();
      double depth = facts.number("excavationBelowFooting").map(Given::value).orElse(0.0);
      boolean open =
          facts.word("excavationWall").filter(wall -> !wall.value().equals("none")).isEmpty();
      boolean near = away < BARING_REACH_METRES;
      boolean slips = open && away < depth;
      String why =
          near
              ? "the face of the excavation is nearer than 0.6 m (2 ft) to the edge"
              : slips
                  ? "no wall is known to hold the face, which is nearer than the cut is deep"
                  : "the face of the excavation is away from the edge, and held or shallow";
      inputs.put(
          BARED,
          new Given<>(
              near || slips ? "yes" : "no", Origin.DERIVED, new Source(why, Basis.JUDGEMENT)));
    }
    inputs.orAssume(
        BARED, "yes", new Source("the gap to the excavation is not known", Basis.JUDGEMENT));
  }

  private static void ground(Inputs.Builder inputs, GroundColumn column, BracketSettings settings) {
    if (column.isEmpty()) {
      inputs.ask(
          "ground",
          "Which layers of soil or rock lie below the edge?",
          "bond, sideways support and buckling follow from the layers");
      return;
    }
    if (!inputs.has(FOUNDING_DEPTH) || !inputs.has(EXCAVATION)) {
      return;
    }
    Inputs so = inputs.build();
    double head = so.get(FOUNDING_DEPTH);
    double support = head + (so.get(BARED).equals("yes") ? so.get(EXCAVATION) : 0);
    Optional<Given<Double>> near =
        PileGround.weakest(column, support, support + PileGround.HEAD_REACH);
    Optional<Given<Double>> softest = PileGround.weakest(column, support, Double.POSITIVE_INFINITY);
    double set = settings.get(BracketSetting.SOIL_REACTION);
    if (near.isEmpty() || softest.isEmpty()) {
      inputs.ask(
          "ground", "Which layers lie at the depth of the pile head?", "no layer is stated there");
      return;
    }
    inputs.put(
        SOIL_REACTION,
        set > 0
            ? new Given<>(set, Origin.SET_BY_USER, BracketSetting.SOIL_REACTION.setting().source())
            : near.get());
    inputs.put(SOFTEST_REACTION, softest.get());
  }
}
