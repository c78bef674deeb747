package underhold.consult.contrast;

import java.util.List;
import underhold.advice.Criterion;
import underhold.consult.Bearing;

/**
 * Two options under one criterion.
 *
 * @param criterion the criterion
 * @param meaning what it is about
 * @param arguments what rules out, speaks against and for the options, on known facts first
 * @param holds the open safety rules that hold one of them or both
 * @param asides what is told and not counted
 */
public record CriterionContrast(
    Criterion criterion,
    String meaning,
    List<Argument> arguments,
    List<HeldBy> holds,
    List<Aside> asides) {
  public CriterionContrast {
    arguments = List.copyOf(arguments);
    holds = List.copyOf(holds);
    asides = List.copyOf(asides);
  }

  /** What the criterion adds to the score of the first option. */
  public int firstPoints() {
    return arguments.stream().mapToInt(Argument::firstPoints).sum();
  }

  /** What the criterion adds to the score of the second option. */
  public int secondPoints() {
    return arguments.stream().mapToInt(Argument::secondPoints).sum();
  }

  /** By how many points it favours one of them, where it does so by points. */
  public int gap() {
    return Math.abs(firstPoints() - secondPoints());
  }

  /** Whether it has nothing at all to tell. */
  public boolean empty() {
    return arguments.isEmpty() && holds.isEmpty() && asides.isEmpty();
  }

  /** Which of the two it favours. */
  public Outcome outcome() {
    boolean firstOut = arguments.stream().anyMatch(one -> one.first() == Bearing.RULES_OUT);
    boolean secondOut = arguments.stream().anyMatch(one -> one.second() == Bearing.RULES_OUT);
    if (firstOut || secondOut) {
      return firstOut && secondOut
          ? Outcome.RULES_OUT_BOTH
          : firstOut ? Outcome.RULES_OUT_FIRST : Outcome.RULES_OUT_SECOND;
    }
    if (arguments.stream().noneMatch(Argument::known)) {
      return Outcome.SILENT;
    }
    int difference = firstPoints() - secondPoints();
    return difference == 0
        ? Outcome.EVEN
        : difference > 0 ? Outcome.FAVOURS_FIRST : Outcome.FAVOURS_SECOND;
  }
}
