package underhold.sizing.monitoring;

import java.util.Set;
import underhold.site.FactView;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.WordInput;

/** What the monitoring plan reads from a zone. */
final class MonitoringInputs {
  static final NumberInput GAP =
      NumberInput.of(
          "gap",
          "edge of the footing to the face of the excavation",
          Amount.length(0),
          0,
          60,
          "gapToExcavation");
  static final NumberInput BELOW =
      NumberInput.of(
          "excavation-below-footing",
          "excavation below the footing; negative where it stays above",
          Amount.length(0),
          -30,
          40,
          "excavationBelowFooting");
  static final NumberInput DEPTH =
      NumberInput.of(
          "excavation-depth",
          "excavation below ground",
          Amount.length(0),
          0.3,
          70,
          "excavationDepth");
  static final NumberInput PREDICTED =
      NumberInput.of(
          "predicted-movement",
          "movement predicted without underpinning",
          Amount.thickness(0),
          0,
          0.2,
          "predictedMovement");
  static final NumberInput LIMIT =
      NumberInput.of(
          "movement-limit", "movement allowed", Amount.thickness(0), 0.001, 0.075, "movementLimit");
  static final NumberInput TILT =
      NumberInput.of(
          "tilt-limit",
          "slope allowed between neighbouring points",
          Amount.ratio(0),
          1.0 / 3000,
          1.0 / 200,
          "tiltLimit");
  static final NumberInput LENGTH =
      NumberInput.of("wall-length", "length of the wall", Amount.length(0), 0.5, 500, "wallLength");
  static final NumberInput STOREYS =
      NumberInput.of("storeys", "storeys", Amount.count(0), 1, 60, "storeys");

  static final WordInput POSITION =
      WordInput.of("excavation-position", "position of the excavation", "excavationPosition");
  static final WordInput KIND =
      WordInput.of("structure-kind", "what stands beside the excavation", "structureKind");
  static final WordInput MATERIAL =
      WordInput.of("structure-material", "what it is made of", "structureMaterial");
  static final WordInput HERITAGE = WordInput.of("heritage", "protection as heritage", "heritage");
  static final WordInput WALL =
      WordInput.careful("excavation-wall", "wall built first at the face", "excavationWall");
  static final WordInput RAIL = WordInput.of("live-use", "what keeps going", "liveUse");

  private static final Set<String> UNDER =
      Set.of("partly-under", "wholly-under", "crosses-support");
  private static final double ASSUMED_LENGTH_METRES = 10;
  private static final double ASSUMED_STOREYS = 2;

  private MonitoringInputs() {}

  static Inputs of(FactView view) {
    SiteFacts facts = new SiteFacts(view);
    Inputs.Builder inputs = Inputs.from(facts).known(POSITION).known(KIND);
    String position = facts.word("excavationPosition").map(Given::value).orElse("");
    boolean digs = !position.equals("no-excavation");
    if (UNDER.contains(position)) {
      inputs.put(
          GAP,
          new Given<>(
              0.0,
              Origin.DERIVED,
              new Source("the excavation goes under the element", Basis.STATICS)));
    } else if (digs) {
      inputs
          .known(GAP)
          .need(GAP, "whether the element is in the zone of influence follows from it");
    }
    if (digs) {
      inputs
          .known(BELOW)
          .need(BELOW, "the lines of influence rise from there")
          .known(DEPTH)
          .need(DEPTH, "codes watch neighbours within it, and the movement fades over it");
    }
    return inputs
        .need(POSITION, "watching serves beside an excavation, not over one")
        .need(KIND, "limits are published by kind of structure")
        .known(PREDICTED)
        .knownOrAssumed(LIMIT)
        .known(TILT)
        .known(LENGTH)
        .orAssume(
            LENGTH, ASSUMED_LENGTH_METRES, new Source("10 m until it is known", Basis.JUDGEMENT))
        .known(STOREYS)
        .orAssume(
            STOREYS,
            ASSUMED_STOREYS,
            new Source("two storeys until they are known", Basis.JUDGEMENT))
        .knownOrAssumed(MATERIAL)
        .known(HERITAGE)
        .orAssume(
            HERITAGE, "none", new Source("not protected until someone says so", Basis.JUDGEMENT))
        .known(WALL)
        .orAssume(WALL, "none", new Source("no wall until one is stated", Basis.JUDGEMENT))
        .knownOrAssumed(RAIL)
        .build();
  }

  /** Whether soil is taken from under the element. */
  static boolean undermined(Inputs inputs) {
    return UNDER.contains(inputs.get(POSITION));
  }
}
