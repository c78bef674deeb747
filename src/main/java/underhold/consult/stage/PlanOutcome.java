package underhold.consult.stage;

import java.util.List;

/** What comes of asking for a plan. */
public sealed interface PlanOutcome {

  /** A plan in which nothing stands on nothing. */
  record Made(StagePlan plan) implements PlanOutcome {}

  /**
   * None: what was drawn up does not hold.
   *
   * @param problems one sentence each
   */
  record Refused(List<String> problems) implements PlanOutcome {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a plan is refused for at least one reason");
      }
    }
  }
}
