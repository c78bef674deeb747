package underhold.classroom.making;

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

  /** Whether a change can be what everybody believed until the work showed otherwise. */
  static boolean can(Change change) {
    return !change.ofGround() && change.facts().keySet().stream().allMatch(f -> of(f).isPresent());
  }

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
          Map.entry("foundingDepth", FIRST_PIT),
          Map.entry("artesian", FIRST_HOLE),
          Map.entry("seatBearingDepth", FIRST_HOLE),
          Map.entry("loadPattern", OPENED),
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
