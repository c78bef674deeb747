package underhold.classroom.making;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import underhold.advice.SupportOption;

/**
 * What a case can be made to teach. A theme is true of a case where changing only facts of the
 * theme, to values that can be, puts another method first or none; the case keeps that change.
 */
public enum Theme {
  LOAD(
      "concentrated-against-continuous",
      "concentrated against continuous: how the load comes down decides",
      "loadPattern"),
  SPANNING(
      "spanning",
      "can it span: what bridges the hole decides",
      "clearSpan",
      "seatSpan",
      "seatInsidePossible",
      "seatBearingDepth",
      "cappingBeamPossible",
      "roomForBeams",
      "crossingSquare",
      "clearShaft"),
  WATER(
      "water", "water decides", "groundWaterDepth", "drawdownAllowed", "drawdownHarm", "artesian"),
  ROCK("rock-or-earth", "rock against earth", "edgeGround", "rockJoints", "ground"),
  GROUND("poor-ground", "how good the ground is, and how far down", "ground"),
  ACCESS(
      "access",
      "access decides: what can work where",
      "outsideAccess",
      "insideAccess",
      "outsideHeadroom",
      "insideHeadroom",
      "outsideWidth",
      "insideWidth",
      "rigBothSides",
      "drillingFromAbove",
      "loadOffset",
      "pairedPilesPossible"),
  WATCHING(
      "when-not-to-underpin",
      "when not to underpin",
      "gapToExcavation",
      "excavationWall",
      "predictedMovement",
      "excavationDepth",
      "movementLimit",
      "rockJoints"),
  FOUNDATION(
      "unknown-foundations",
      "unknown foundations",
      "foundationKind",
      "foundingDepth",
      "footingStrength",
      "oldPiles"),
  SURPRISE(
      "surprise",
      "a surprise during the work",
      "obstructions",
      "oldPiles",
      "artesian",
      "groundWaterDepth",
      "rockJoints",
      "edgeGround",
      "structureCondition",
      "footingStrength",
      "clearSpan",
      "outsideAccess",
      "insideAccess",
      "roomForBeams",
      "drawdownAllowed",
      "drawdownHarm"),
  MARRIED("married-methods", "married methods: one structure, two zones, two methods"),
  REFER(
      "when-to-refer",
      "when to refer",
      "artesian",
      "groundWaterDepth",
      "drawdownAllowed",
      "drawdownHarm",
      "outsideAccess",
      "insideAccess",
      "drillingFromAbove",
      "outsideHeadroom",
      "insideHeadroom",
      "movementLimit",
      "existingTilt",
      "obstructions",
      "structureCondition",
      "roomForBeams",
      "seatSpan",
      "edgeGround");

  private final String word;
  private final String teaches;
  private final List<String> facts;

  Theme(String word, String teaches, String... facts) {
    this.word = word;
    this.teaches = teaches;
    this.facts = List.of(facts);
  }

  /** The word on the command line. */
  public String word() {
    return word;
  }

  /** What it teaches, as a case says it. */
  public String teaches() {
    return teaches;
  }

  /** The facts that decide, {@code ground} standing for the layers of the ground. */
  List<String> facts() {
    return facts;
  }

  /**
   * Whether a turn from one answer to the other is of this theme: watching and referral are taught
   * where one of the two is that.
   */
  boolean fits(SupportOption leader, Optional<SupportOption> then) {
    Set<SupportOption> both = then.map(other -> Set.of(leader, other)).orElse(Set.of(leader));
    return switch (this) {
      case WATCHING -> both.contains(SupportOption.MONITOR);
      case REFER -> both.contains(SupportOption.REFER);
      default -> true;
    };
  }

  /** The theme of that word; blanks will do for hyphens. */
  public static Optional<Theme> find(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
    return Arrays.stream(values()).filter(theme -> theme.word.equals(wanted)).findFirst();
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Theme::word).toList();
  }
}
