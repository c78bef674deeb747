package underhold.consult.change;

import java.util.List;
import java.util.Optional;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.consult.ZoneAdvice;

/**
 * One zone before and after.
 *
 * @param before the answer before
 * @param after the answer now
 * @param options every option, in the order of the answer now
 * @param conditionsGained conditions that hold now and did not
 * @param conditionsLost conditions that held and do not now
 * @param cautionsGained cautions told now and not before
 * @param cautionsLost cautions told before and not now
 * @param facts derived facts that changed in consequence
 */
public record ZoneChange(
    ZoneAdvice before,
    ZoneAdvice after,
    List<OptionChange> options,
    List<Finding> conditionsGained,
    List<Finding> conditionsLost,
    List<Finding> cautionsGained,
    List<Finding> cautionsLost,
    List<FactChange> facts) {
  public ZoneChange {
    options = List.copyOf(options);
    conditionsGained = List.copyOf(conditionsGained);
    conditionsLost = List.copyOf(conditionsLost);
    cautionsGained = List.copyOf(cautionsGained);
    cautionsLost = List.copyOf(cautionsLost);
    facts = List.copyOf(facts);
  }

  /** The differences between two answers to one zone. */
  public static ZoneChange between(ZoneAdvice before, ZoneAdvice after) {
    return new ZoneDifferences(before, after).find();
  }

  public String name() {
    return after.name();
  }

  /** The option that led before. */
  public Optional<OptionAdvice> leaderBefore() {
    return before.ranking().leader();
  }

  /** The option that leads now. */
  public Optional<OptionAdvice> leaderAfter() {
    return after.ranking().leader();
  }

  /** Whether nothing that is told here is another than before. */
  public boolean nothing() {
    return options.stream().allMatch(option -> option.placed() && !option.detailed())
        && conditionsGained.isEmpty()
        && conditionsLost.isEmpty()
        && cautionsGained.isEmpty()
        && cautionsLost.isEmpty()
        && facts.isEmpty();
  }
}
