package underhold.advice;

import java.util.List;

/**
 * What is advised of one option in one zone.
 *
 * @param option the option
 * @param standing how it stands
 * @param score points for less points against, one cause counted once each way
 * @param tied whether it is within the tie gap of the leader, or is the leader of a tie
 * @param findings what speaks for and against it and rules it out, counted ones first
 * @param uncounted those of the findings that do not count, because a stronger one speaks of the
 *     same cause
 * @param conditions what it requires, on known facts
 * @param holds safety rules still open
 * @param wayBack for an option ruled out: rule by rule, the change of fact that would bring it back
 */
public record OptionAdvice(
    SupportOption option,
    Standing standing,
    int score,
    boolean tied,
    List<Finding> findings,
    List<Finding> uncounted,
    List<Finding> conditions,
    List<Hold> holds,
    List<String> wayBack) {
  public OptionAdvice {
    findings = List.copyOf(findings);
    uncounted = List.copyOf(uncounted);
    conditions = List.copyOf(conditions);
    holds = List.copyOf(holds);
    wayBack = List.copyOf(wayBack);
  }

  /** The findings with that effect. */
  public List<Finding> findings(Effect effect) {
    return findings.stream().filter(finding -> finding.effect() == effect).toList();
  }

  /** Whether at least one finding speaks for it. */
  public boolean spokenFor() {
    return findings.stream().anyMatch(f -> f.effect() == Effect.FOR || f.effect() == Effect.REFER);
  }

  /** Whether it is among the options in rank: neither held nor ruled out. */
  public boolean ranked() {
    return standing != Standing.HELD && standing != Standing.RULED_OUT;
  }
}
