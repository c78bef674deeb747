package underhold.classroom.making;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What only shows itself during the work, and how it does. */
final class Surprises {
  private static final Set<String> OF_WATER = Set.of("groundWaterDepth", "artesian");
  private static final double PIT_DAYS = 6;
  private static final double HOLE_DAYS = 4;
  private static final double OPENING_DAYS = 3;

  private Surprises() {}

  /**
   * How a surprise comes.
   *
   * @param stage the name of its stage
   * @param title the same in words
   * @param days working days until it shows
   * @param opens the beginning of the sentence that tells it
   */
  record Coming(String stage, String title, double days, String opens) {}

  /**
   * Whether a change can be what everybody believed until the work showed otherwise: it only shows
   * then, and it is worse than was believed.
   */
  static boolean can(Change change, Sketch sketch) {
    return !change.ofGround()
        && change.facts().entrySet().stream()
            .filter(fact -> !(fact.getKey().equals("oldPiles") && change.facts().size() > 1))
            .allMatch(
                fact ->
                    of(fact.getKey()).isPresent()
                        && worse(
                            fact.getKey(),
                            sketch.value(fact.getKey()).orElse(""),
                            fact.getValue()));
  }

  private static boolean worse(String fact, String truth, String belief) {
    List<String> ladder = FROM_GOOD_TO_BAD.get(fact);
    if (ladder != null) {
      return ladder.indexOf(truth) > ladder.indexOf(belief);
    }
    if (LESS_IS_WORSE.contains(fact)) {
      return Typing.metres(truth) < Typing.metres(belief);
    }
    return MORE_IS_WORSE.contains(fact)
        ? Typing.metres(truth) > Typing.metres(belief)
        : fact.equals("rigBothSides");
  }

  private static final Map<String, List<String>> FROM_GOOD_TO_BAD =
      Map.ofEntries(
          Map.entry("obstructions", List.of("none", "occasional", "frequent")),
          Map.entry("oldPiles", List.of("none", "stay", "timber", "must-be-cut")),
          Map.entry("foundationKind", List.of("pad", "strip", "mass-rubble", "timber-piles")),
          Map.entry("edgeGround", List.of("rock", "earth")),
          Map.entry("rockJoints", List.of("favourable", "adverse")),
          Map.entry("footingStrength", List.of("strong-concrete", "plain-concrete", "rubble")),
          Map.entry("artesian", List.of("no", "yes")),
          Map.entry("structureCondition", List.of("good", "fair", "poor", "dangerous")),
          Map.entry("cappingBeamPossible", List.of("yes", "no")),
          Map.entry("roomForBeams", List.of("yes", "no")),
          Map.entry("drawdownAllowed", List.of("yes", "limited", "no")),
          Map.entry("drawdownHarm", List.of("none", "clay-or-peat", "timber-piles")),
          Map.entry("outsideAccess", List.of("large-rig", "small-rig", "hand", "none")),
          Map.entry("insideAccess", List.of("large-rig", "small-rig", "hand", "none")));
  private static final Set<String> LESS_IS_WORSE =
      Set.of("groundWaterDepth", "clearSpan", "clearShaft");
  private static final Set<String> MORE_IS_WORSE = Set.of("seatBearingDepth", "predictedMovement");

  /** How the truth of a change comes out. */
  static Coming of(Change change, Draw draw) {
    String fact = change.facts().keySet().iterator().next();
    Coming coming = of(fact).orElseThrow();
    return OF_WATER.contains(fact) && draw.chance(0.5)
        ? new Coming("wet-weeks", "Two wet weeks", 10, "The standpipes are read again:")
        : coming;
  }

  private static Optional<Coming> of(String fact) {
    return Optional.ofNullable(ALL.get(fact));
  }

  private static final Coming FIRST_HOLE =
      new Coming("first-hole", "The first hole of the work", HOLE_DAYS, "The first hole shows it:");
  private static final Coming FIRST_PIT =
      new Coming(
          "first-dig",
          "The first days of digging",
          PIT_DAYS,
          "Work has hardly begun, and it shows:");
  private static final Coming OPENED =
      new Coming(
          "opening-up",
          "Opening up for the work",
          OPENING_DAYS,
          "With the finishes off it is plain to see:");

  private static final Map<String, Coming> ALL =
      Map.ofEntries(
          Map.entry("obstructions", FIRST_PIT),
          Map.entry("oldPiles", FIRST_PIT),
          Map.entry("foundationKind", FIRST_PIT),
          Map.entry("groundWaterDepth", FIRST_PIT),
          Map.entry("edgeGround", FIRST_PIT),
          Map.entry("rockJoints", FIRST_PIT),
          Map.entry("footingStrength", FIRST_PIT),
          Map.entry("artesian", FIRST_HOLE),
          Map.entry("seatBearingDepth", FIRST_HOLE),
          Map.entry("rigBothSides", OPENED),
          Map.entry("structureCondition", OPENED),
          Map.entry("clearSpan", OPENED),
          Map.entry("cappingBeamPossible", OPENED),
          Map.entry("clearShaft", OPENED),
          Map.entry(
              "drawdownAllowed",
              new Coming(
                  "letter", "A letter from the water authority", 1, "The authority has decided:")),
          Map.entry(
              "drawdownHarm",
              new Coming(
                  "neighbours", "Word from the neighbours", 2, "Their engineer has looked:")),
          Map.entry(
              "outsideAccess",
              new Coming(
                  "first-delivery", "The first delivery", 1, "The rig has come to the gate:")),
          Map.entry(
              "insideAccess",
              new Coming(
                  "first-delivery", "The first delivery", 1, "The rig has come to the door:")),
          Map.entry(
              "roomForBeams",
              new Coming("first-delivery", "The first delivery", 1, "The beams have come:")),
          Map.entry(
              "predictedMovement",
              new Coming(
                  "first-readings",
                  "The first readings",
                  5,
                  "Reckoned again from the first readings:")));
}
