package underhold.consult.stage;

import java.util.List;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;

/**
 * The usual stages of a method where its sheet cannot be drawn up yet. Common practice without
 * numbers: what must be reckoned first says so at its hold point.
 */
final class UsualStages {
  static final String ENGINEER = "engineer of record";
  static final String COMPETENT = "competent person";
  private static final String NOT_SIZED = "The sheet of the method is complete and passes; ";

  private UsualStages() {}

  static List<Stage> of(SupportOption method) {
    return switch (method) {
      case PITS ->
          Stream.of(
                  prepare("Footing, soil, water and standing time are seen in a trial pit"),
                  stage(
                      StageRole.PITS,
                      "Pits in rounds, no two neighbours open",
                      "Dig, board, concrete and dry-pack pit by pit in the rounds of the sheet.",
                      "every pit carries before a neighbour is opened"),
                  stage(
                      StageRole.DIG,
                      "Excavation in front",
                      "Excavate in lifts, readings at each.",
                      "all piers carry, no movement above the limit"))
              .toList();
      case NEEDLES -> needles();
      case DRILLED_PILES -> piles();
      case BRACKET_PILES -> brackets();
      case EDGE_PITS -> edgePits();
      case MONITOR ->
          List.of(
              prepare("Baseline readings are steady; limits, levels and who acts are agreed"),
              stage(
                  StageRole.WATCH,
                  "Dig with readings",
                  "Read all points before and after each lift.",
                  "readings of the lift above are in and below the alert level"));
      case REFER -> List.of();
    };
  }

  private static List<Stage> needles() {
    return List.of(
        prepare("Loads, limits, pick-up and seats are as the sheet has them"),
        stage(
            StageRole.BUILD,
            "Seats, needles and pick-up",
            "Build seats on good ground, set needles, fix and cure the pick-up.",
            "seats, jacks and pick-up are inspected"),
        load("Preload the needles", "locked off, jacks blocked, 24 h reading steady"),
        stage(
            StageRole.DIG,
            "Cut free and excavate",
            "Cut or undermine the footing in stages, re-shim after each.",
            "the needles carry: no movement after the first cut"),
        handBack());
  }

  /** What stays is built, and takes the load back from needles. */
  static Stage handBack() {
    return new Stage(
        StageRole.HAND_BACK,
        "Return of the load",
        List.of(
            Phrase.of("Build the new support; let it cure; dry-pack it tight."),
            Phrase.of("Lower the jacks in steps, reading at each."),
            Phrase.of("Draw the needles, fill the holes.")),
        List.of(
            new HoldPoint(
                Phrase.of("New support and dry pack have their strength"), "special inspector"),
            new HoldPoint(Phrase.of("Readings are steady before a needle is drawn"), ENGINEER)));
  }

  static List<Stage> piles() {
    return List.of(
        prepare("Ground, water and obstructions are as assumed; limits are agreed"),
        stage(
            StageRole.DRILL,
            "Drill the piles",
            "Drill, case, clean and fill every pile, no two fresh neighbours.",
            "every pile reached its layer and has its strength"),
        stage(
            StageRole.BUILD,
            "Caps, beams and jacks",
            "Build caps and transfer beams, set jacks and packing.",
            "beams and bearings are proved for their forces"),
        load("Load the piles", "every pile carries its load, packed and locked"),
        stage(
            StageRole.DIG,
            "Dig in lifts",
            "Dig evenly round the piles, brace each level before the next.",
            "braces hold, piles are straight, readings within limits"),
        lasting());
  }

  private static Stage lasting() {
    return stage(
        StageRole.LASTING,
        "Lasting support",
        "Build the new structure round the piles, or encase and brace them for good.",
        "readings steady; jacks locked, packed and encased");
  }

  private static List<Stage> brackets() {
    return List.of(
        prepare("Edge, moment path, load and bond are as the sheet has them"),
        stage(
            StageRole.DRILL,
            "Install the piles",
            "Drill and grout from the surface, no two fresh neighbours.",
            "as-built eccentricity is within the design"),
        stage(
            StageRole.BUILD,
            "Cure, test and fit brackets",
            "Cure, proof test, fit brackets bay by bay.",
            "tests accepted, welds and anchors inspected, seats full"),
        load("Preload the brackets", "all brackets locked off, readings steady for a day"),
        stage(
            StageRole.DIG,
            "Dig in lifts",
            "Dig in lifts, check and re-level shims after each.",
            "readings within limits, shims tight"));
  }

  private static List<Stage> edgePits() {
    return List.of(
        prepare("Ground, water and rock head at every pit are as the sheet has them"),
        new Stage(
            StageRole.CARRY,
            "Drilled piles take the load",
            List.of(Phrase.of("Build, load and lock off the piles by their own sheet.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        NOT_SIZED
                            + "piles loaded and locked off, released in writing before any edge pit"),
                    ENGINEER))),
        stage(
            StageRole.PITS,
            "Edge pits in rounds, no two neighbours open",
            "Dig, board and concrete pit by pit in the rounds of the sheet.",
            "neighbours have their strength; pile loads within limits"),
        stage(
            StageRole.CLOSE,
            "Closing the wall",
            "Join the pits to each other and to the side walls.",
            "the wall is one piece, joints tight"),
        stage(
            StageRole.DIG,
            "Dig in lifts",
            "Dig in lifts, brace or tie each level before the next.",
            "each level holds before the cut goes on"));
  }

  private static Stage prepare(String condition) {
    return stage(
        StageRole.PREPARE,
        "Before the work",
        "Trials, probing, setting out; readings until steady.",
        condition.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + condition.substring(1));
  }

  private static Stage load(String title, String condition) {
    return stage(
        StageRole.LOAD,
        title,
        "Jack in steps, hold and read at each, follow up with packing.",
        condition);
  }

  private static Stage stage(StageRole role, String title, String work, String condition) {
    return new Stage(
        role,
        title,
        List.of(Phrase.of(work)),
        List.of(new HoldPoint(Phrase.of(NOT_SIZED + condition), ENGINEER)));
  }
}
