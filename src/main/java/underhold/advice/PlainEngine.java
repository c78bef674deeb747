package underhold.advice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import underhold.site.FactView;

/**
 * Fires rules by reading their conditions one by one: no rule is compiled, and a rule can do no
 * more than be found. Safe for use by several threads.
 */
public final class PlainEngine implements RuleEngine {
  private final RulePack pack;
  private final Map<Rule.Phase, List<Rule>> rules = new EnumMap<>(Rule.Phase.class);

  /** Fires the rules of the pack. */
  public PlainEngine(RulePack pack) {
    this.pack = pack;
    for (Rule.Phase phase : Rule.Phase.values()) {
      rules.put(phase, List.copyOf(pack.byId(phase).values()));
    }
  }

  @Override
  public RulePack pack() {
    return pack;
  }

  @Override
  public List<Rule> fire(FactView view, Rule.Phase phase) {
    phase.mustRead(view);
    return rules.getOrDefault(phase, List.of()).stream()
        .filter(rule -> rule.holds(view) == Truth.TRUE)
        .toList();
  }
}
