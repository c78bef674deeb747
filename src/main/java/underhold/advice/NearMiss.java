package underhold.advice;

import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactValue;

/**
 * A rule that nearly fired: all its conditions but one hold. There are a hundred of them at every
 * zone and few are ever shown, so they find their words when asked.
 *
 * @param rule the rule
 * @param failed the condition that does not hold, or is open
 * @param truth whether it fails or is open
 * @param fact what was found; unknown where the condition is open
 * @param limit the limit that the condition compares with; empty where it compares with words
 * @param units of the words
 */
public record NearMiss(
    Rule rule, Condition failed, Truth truth, Fact fact, Optional<Limit> limit, UnitSystem units) {

  /** The value found, or {@code unknown}. */
  public String found() {
    return fact.text();
  }

  /** What was found, what was wanted, and by how much a number missed. */
  public String explanation() {
    String text =
        fact.definition().label()
            + " is "
            + Wording.value(fact)
            + ", not "
            + Wording.wanted(failed, limit, units);
    if (limit.isEmpty() || !(fact.value() instanceof FactValue.Amount amount)) {
      return text;
    }
    double by = Math.abs(amount.quantity().si() - limit.get().si());
    return text + " (by " + Wording.amount(by, fact.definition(), units) + ")";
  }
}
