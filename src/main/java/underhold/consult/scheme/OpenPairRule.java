package underhold.consult.scheme;

import java.util.List;
import java.util.Optional;
import underhold.advice.PairOrder;
import underhold.advice.Rule;

/**
 * A rule between two zones that waits for what nobody stated. It warns and asks; it never scores.
 *
 * @param first the zone that its facts call first
 * @param second the zone that its facts call second
 * @param rule the rule
 * @param unknown the facts of the pair, or of the zones, that it waits for
 */
public record OpenPairRule(String first, String second, Rule rule, List<String> unknown) {
  public OpenPairRule {
    unknown = List.copyOf(unknown);
  }

  /** Whether it could rule out the combination, and holds it until it is answered. */
  public boolean holds() {
    return rule.hold() != Rule.Hold.NEVER;
  }

  /** The order it would ask for; the plan keeps it until the answer frees it. */
  public Optional<PairOrder> order() {
    return PairFinding.order(rule);
  }
}
