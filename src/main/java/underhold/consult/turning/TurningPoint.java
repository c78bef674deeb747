package underhold.consult.turning;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.site.Fact;
import underhold.site.FactValue;

/**
 * Facts that, changed together, turn the answer; none of them can be left out.
 *
 * @param changes the facts changed
 * @param after how the options stand then
 * @param gained rules that fire then and bear on the option that leads, or is to come back
 * @param lost rules that no longer fire then and bore on it or on the leader before
 * @param follows facts that change because they follow from those changed, as they are then
 */
public record TurningPoint(
    List<Change> changes, Outcome after, List<Rule> gained, List<Rule> lost, List<Fact> follows) {
  public TurningPoint {
    changes = List.copyOf(changes);
    gained = List.copyOf(gained);
    lost = List.copyOf(lost);
    follows = List.copyOf(follows);
  }

  /** The values to state for it, by the name of the fact. */
  public Map<String, FactValue> values() {
    return changes.stream()
        .collect(Collectors.toMap(change -> change.fact().name(), Change::tried));
  }

  /** This point and another of the same fact, which turn the answer alike by other words. */
  public TurningPoint or(TurningPoint other) {
    Change both = changes.get(0).or(other.changes.get(0));
    return new TurningPoint(List.of(both), after, gained, lost, follows);
  }

  /** Whether an amount that somebody stated would have to be quite another. */
  public boolean farFetched() {
    return changes.stream().anyMatch(Change::farFetched);
  }

  /** Whether the option leads then. */
  public boolean leads(SupportOption option) {
    return after.leader().filter(option::equals).isPresent();
  }
}
