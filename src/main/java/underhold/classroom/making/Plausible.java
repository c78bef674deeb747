package underhold.classroom.making;

import java.util.Set;
import underhold.advice.SupportOption;

/** What the rules allow and an engineer would still smile at (judgement). */
final class Plausible {
  private static final Set<String> ROCK = Set.of("rock", "decomposed-rock");

  /** What anybody walking by would see, and what is decided and not found. */
  private static final Set<String> PLAIN_TO_SEE =
      Set.of(
          "loadPattern",
          "excavationPosition",
          "gapToExcavation",
          "excavationWall",
          "excavationDepth",
          "underminedLength",
          "underminedWidth",
          "wallGapLength",
          "wallLength",
          "structureMaterial",
          "columnCount",
          "newBaseSameSpot",
          "freeEdge",
          "lineLoad",
          "areaLoad",
          "columnLoad");

  private Plausible() {}

  /** Whether a method may come first on such a site in a case for a class. */
  static boolean leads(SupportOption leader, Sketch sketch) {
    boolean rock = ROCK.contains(sketch.layers().get(1).soil());
    if (sketch.layers().get(1).soil().equals("rock") && sketch.is("obstructions", "frequent")) {
      return false; // boulders lie in soil
    }
    // nobody underpins a wall that stands on rock by digging pits in it by hand
    return !(leader == SupportOption.PITS && rock);
  }

  /** Whether a change can be on the site at all. */
  static boolean can(Change change, Sketch sketch) {
    boolean pressed = "yes".equals(change.facts().get("artesian"));
    // water under pressure needs an open layer below a tight one
    return !pressed || pressed(sketch);
  }

  /** Whether a change can be believed on day one, as a file tells it. */
  static boolean believed(Change change) {
    return !change.ofGround() && change.facts().keySet().stream().noneMatch(PLAIN_TO_SEE::contains);
  }

  private static boolean pressed(Sketch sketch) {
    int last = sketch.layers().size() - 1;
    return last >= 2
        && sketch.layers().get(last).soil().matches("dense-gravel|dense-sand|rock")
        && sketch.layers().get(last - 1).soil().endsWith("clay");
  }
}
