package underhold.consult.turning;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.site.FactValue;

/**
 * What a change is to bring about for one option.
 *
 * @param option the option
 * @param first whether it is to come first; otherwise it is only no longer to be ruled out
 */
public record Goal(SupportOption option, boolean first) {
  /** That the option leads. */
  public static Goal first(SupportOption option) {
    return new Goal(option, true);
  }

  /** That the option is not ruled out. */
  public static Goal back(SupportOption option) {
    return new Goal(option, false);
  }

  /** That one of the others leads, each by itself. */
  public static List<Goal> anotherThan(Outcome now) {
    Set<SupportOption> others = EnumSet.allOf(SupportOption.class);
    now.leader().ifPresent(others::remove);
    return others.stream().map(Goal::first).toList();
  }

  /** Whether an outcome meets it. */
  public boolean met(Outcome outcome) {
    return first
        ? outcome.leader().filter(option::equals).isPresent()
        : outcome.of(option).usable();
  }

  /** Whether facts changed meet it; told without the rest of the outcome. */
  boolean met(Trying trying, Map<String, FactValue> values) {
    return first ? trying.leads(values, option) : met(trying.leading(values));
  }
}
