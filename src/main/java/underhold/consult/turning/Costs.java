package underhold.consult.turning;

import java.util.Set;
import underhold.site.Fact;
import underhold.site.FactValue;

/**
 * How large a change is, to put small ones first (judgement): what nobody knows may simply turn out
 * so; a measured amount may be somewhat off; a word that somebody stated would have to be wrong;
 * and what makes the job what it is would make it another job.
 */
final class Costs {
  private static final double OPEN = 1;
  private static final double AMOUNT = 1.5;
  private static final double WORD = 2.5;
  private static final double OTHER_JOB = 6;
  private static final double LEAST_LENGTH = 0.5;

  /** What the job is or what somebody decides, not how the site turns out. */
  private static final Set<String> THE_JOB =
      Set.of(
          "loadPattern",
          "structureKind",
          "structureMaterial",
          "excavationPosition",
          "purpose",
          "foundationKind",
          "life",
          "movementLimit",
          "tiltLimit",
          "noiseLimit",
          "programme");

  private Costs() {}

  static boolean decided(String fact) {
    return THE_JOB.contains(fact);
  }

  static double of(Fact was, FactValue value) {
    if (was.value() == null) {
      return OPEN;
    }
    if (THE_JOB.contains(was.name())) {
      return OTHER_JOB;
    }
    if (was.value() instanceof FactValue.Amount before && value instanceof FactValue.Amount after) {
      double scale = Math.max(Math.abs(before.quantity().si()), LEAST_LENGTH);
      double by = Math.abs(after.quantity().si() - before.quantity().si()) / scale;
      return AMOUNT + Math.min(by, WORD);
    }
    return WORD;
  }
}
