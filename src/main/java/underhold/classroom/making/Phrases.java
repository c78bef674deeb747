package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Facts in running text: as a clause ({@code the water stands 2 m down}), and after "with". */
final class Phrases {
  private static final double AT_ALL = 1e-9;

  private Phrases() {}

  /**
   * A fact both ways.
   *
   * @param clause a clause without its full stop
   * @param with what follows "with"
   */
  record Phrase(String clause, String with) {}

  /** The words for a change after "with". */
  static String with(Change change, List<Layer> before) {
    List<String> parts = new ArrayList<>();
    if (change.ofGround()) {
      parts.add(
          GroundKind.words(change.ground()) + draw(GroundKind.words(before), " in place of "));
    }
    for (Map.Entry<String, String> fact : change.facts().entrySet()) {
      boolean said = change.ofGround() || change.facts().size() > 1;
      if (!(said && follows(fact.getKey(), change))) {
        parts.add(of(fact.getKey(), fact.getValue()).with());
      }
    }
    return joined(parts);
  }

  private static String draw(String before, String word) {
    return word + before;
  }

  /** The words for what a change says, as a clause. */
  static String clause(Map<String, String> facts) {
    return joined(
        facts.entrySet().stream()
            .filter(fact -> !(facts.size() > 1 && follows(fact.getKey(), facts)))
            .map(fact -> of(fact.getKey(), fact.getValue()).clause())
            .toList());
  }

  /** What need not be said beside the rest. */
  private static boolean follows(String fact, Change change) {
    return (change.ofGround() && fact.equals("edgeGround")) || follows(fact, change.facts());
  }

  private static boolean follows(String fact, Map<String, String> facts) {
    return (fact.equals("rigBothSides")
            && (facts.containsKey("outsideAccess") || facts.containsKey("insideAccess")))
        || (fact.equals("oldPiles") && facts.containsKey("foundationKind"))
        || (fact.startsWith("undermined") && facts.containsKey("excavationPosition"));
  }

  private static String joined(List<String> parts) {
    return parts.size() < 2
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, parts.size() - 1))
            + " and "
            + parts.get(parts.size() - 1);
  }

  /** The words for a fact with a value. */
  static Phrase of(String fact, String value) {
    return switch (fact) {
      case "outsideAccess" -> access(value, "outside");
      case "insideAccess" -> access(value, "inside");
      case "groundWaterDepth" ->
          both("the water stands " + value + " down", "the water " + value + " down");
      case "outsideHeadroom" ->
          both("a rig outside has " + value + " of height", value + " of height outside");
      case "insideHeadroom" ->
          both("a rig inside has " + value + " of height", value + " of height inside");
      case "outsideWidth" ->
          both("a rig outside has " + value + " of width", value + " of width outside");
      case "insideWidth" ->
          both("a rig inside has " + value + " of width", value + " of width inside");
      case "loadOffset" ->
          both(
              "the piles would stand " + value + " from the load",
              "the piles " + value + " from the load");
      case "foundingDepth" ->
          both("the foundation lies " + value + " down", "the foundation " + value + " down");
      case "clearSpan" -> both("the wall can bridge " + value, "a wall that bridges " + value);
      case "seatSpan" -> both("the seats lie " + value + " apart", "seats " + value + " apart");
      case "seatBearingDepth" ->
          both(
              "the seats find good ground " + value + " down",
              "good ground for the seats " + value + " down");
      case "clearShaft" ->
          both(value + " of the shaft stands clear", value + " of clear shaft to clamp");
      case "gapToExcavation" ->
          Typing.metres(value) < AT_ALL
              ? both("the dig comes right up to the footing", "the dig right up to the footing")
              : both("the dig keeps " + value + " away", "the dig " + value + " away");
      case "predictedMovement" ->
          both("the forecast is a movement of " + value, "a forecast of " + value + " of movement");
      case "movementLimit" ->
          both("it may move " + value + " and no more", "a limit of " + value + " on movement");
      case "excavationDepth" -> both("the dig goes down " + value, "a dig " + value + " deep");
      case "underminedLength" ->
          both(value + " of its length loses its ground", value + " of its length without ground");
      case "underminedWidth" ->
          both("the dig reaches in " + value, "a dig that reaches in " + value);
      case "wallGapLength" ->
          Typing.metres(value) < AT_ALL
              ? both(
                  "a wall closes the whole edge of the dig",
                  "a wall along the whole edge of the dig")
              : both(value + " of the edge has no wall", value + " of edge without a wall");
      default -> word(fact, value);
    };
  }

  private static Phrase word(String fact, String value) {
    return switch (fact + " " + value) {
      case "drawdownAllowed yes" -> both("the water may be lowered", "leave to lower the water");
      case "drawdownAllowed limited" ->
          both("the water may be lowered a little", "leave to lower the water a little");
      case "drawdownAllowed no" ->
          both("the water may not be lowered", "no leave to lower the water");
      case "drawdownHarm none" ->
          both("nothing near is hurt by lower water", "nothing near that lower water hurts");
      case "drawdownHarm clay-or-peat" ->
          both(
              "soft ground near by would settle with the water",
              "soft ground near that settles with the water");
      case "drawdownHarm timber-piles" ->
          both(
              "timber piles near by would rot above the water",
              "timber piles near that must stay wet");
      case "artesian yes" ->
          both("water under pressure lies below the dig", "water under pressure below the dig");
      case "artesian no" ->
          both("no water under pressure lies below", "no water under pressure below the dig");
      case "rigBothSides yes" -> both("rigs can work on both sides", "rigs on both sides");
      case "rigBothSides no" -> both("no rig can work on both sides", "no rigs on both sides");
      case "drillingFromAbove yes" ->
          both("piles can be drilled through from above", "piles drilled through from above");
      case "drillingFromAbove no" ->
          both("nothing can be drilled from above", "no drilling from above");
      case "pairedPilesPossible yes" -> both("piles can stand in pairs", "piles in pairs");
      case "pairedPilesPossible no" -> both("piles cannot stand in pairs", "no piles in pairs");
      case "obstructions none" -> both("the ground is free of boulders", "ground free of boulders");
      case "obstructions occasional" ->
          both("a boulder turns up here and there", "a boulder here and there");
      case "obstructions frequent" ->
          both("boulders and old works lie everywhere", "boulders and old works everywhere");
      case "oldPiles none" -> both("there are no old piles", "no old piles");
      case "oldPiles stay" ->
          both("old piles stand below, and can stay", "old piles that can stay");
      case "oldPiles must-be-cut" ->
          both("old piles stand in the way and must be cut", "old piles that must be cut");
      case "oldPiles timber" -> both("old timber piles stand below", "old timber piles below");
      case "foundationKind strip" -> both("it stands on a plain strip", "a plain strip below");
      case "foundationKind timber-piles" ->
          both("it stands on old timber piles", "old timber piles below");
      case "footingStrength strong-concrete" ->
          both("the footing is sound, strong concrete", "a footing of strong concrete");
      case "footingStrength plain-concrete" ->
          both("the footing is plain concrete", "a footing of plain concrete");
      case "footingStrength rubble" -> both("the footing is loose rubble", "a footing of rubble");
      case "seatInsidePossible yes" -> both("a seat can stand in the dig", "a seat in the dig");
      case "seatInsidePossible no" -> both("no seat can stand in the dig", "no seat in the dig");
      case "cappingBeamPossible yes" ->
          both("a beam can be cast to gather the wall", "a beam to gather the wall");
      case "cappingBeamPossible no" ->
          both("no beam can be cast to gather the wall", "no beam to gather the wall");
      case "roomForBeams yes" -> both("there is room to bring beams in", "room to bring beams in");
      case "roomForBeams no" -> both("beams cannot be brought in", "no room to bring beams in");
      case "crossingSquare yes" -> both("the dig crosses at a right angle", "a square crossing");
      case "crossingSquare no" -> both("the dig crosses askew", "a skew crossing");
      case "edgeGround rock" -> both("the edge stands in rock", "rock at the edge");
      case "edgeGround earth" -> both("the edge stands in earth", "earth at the edge");
      case "rockJoints favourable" ->
          both("the joints in the rock lie well", "joints in the rock that lie well");
      case "rockJoints adverse" ->
          both("the joints in the rock lean into the dig", "joints that lean into the dig");
      case "excavationWall none" ->
          both("no wall holds the face of the dig", "no wall to hold the dig");
      case "excavationWall flexible" ->
          both("a flexible wall holds the dig", "a flexible wall first");
      case "excavationWall stiff" -> both("a stiff wall is built first", "a stiff wall first");
      case "excavationWall stiff-watertight" ->
          both("a stiff, tight wall is built first", "a stiff, tight wall first");
      case "loadPattern continuous" -> both("the load comes down all along", "a load all along");
      case "loadPattern concentrated" -> both("the load comes down in points", "loads in points");
      case "loadPattern area" ->
          both("the load is spread over an area", "a load spread over an area");
      case "loadPattern cantilevered-edge" ->
          both("the edge hangs over", "an edge that hangs over");
      case "structureCondition good" -> both("the structure is sound", "a sound structure");
      case "structureCondition fair" ->
          both("the structure is in fair shape", "a structure in fair shape");
      case "structureCondition poor" ->
          both("the structure is in poor shape", "a structure in poor shape");
      case "structureCondition dangerous" ->
          both("the structure is dangerous", "a dangerous structure");
      case "existingTilt none" -> both("it stands upright", "a structure that stands upright");
      case "existingTilt slight" -> both("it leans a little", "a slight lean");
      case "existingTilt marked" -> both("it leans markedly", "a marked lean");
      case "excavationPosition partly-under" ->
          both("the dig ends below it", "the dig ending below it");
      case "excavationPosition wholly-under" ->
          both("the dig passes right under it", "the dig passing right under it");
      case "excavationPosition beside" -> both("the dig passes beside it", "the dig beside it");
      case "excavationPosition crosses-support" ->
          both("the dig runs across it", "the dig across it");
      default -> both(Phrases.label(fact) + " is " + value, value + " for " + label(fact));
    };
  }

  private static String label(String fact) {
    return underhold.site.FactDictionary.standard().require(fact).label();
  }

  private static Phrase access(String value, String where) {
    return switch (value) {
      case "none" -> both("there is no room to work " + where, "no room to work " + where);
      case "hand" -> both("only hand tools get in " + where, "hand tools only " + where);
      case "small-rig" -> both("a small rig can work " + where, "a small rig " + where);
      default -> both("a large rig can work " + where, "a large rig " + where);
    };
  }

  private static Phrase both(String clause, String with) {
    return new Phrase(clause, with);
  }
}
