package underhold.advice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import underhold.site.FactView;

/**
 * Fires rules by reading their conditions: no rule is compiled, and a rule can do no more than be
 * found. Safe for use by several threads.
 */
public final class PlainEngine implements RuleEngine {
  private final RulePack pack;
  private final Map<Rule.Phase, List<Rule>> rules = new EnumMap<>(Rule.Phase.class);
  private final Map<Rule.Phase, RuleIndex> indexes = new EnumMap<>(Rule.Phase.class);

  /** Fires the rules of the pack. */
  public PlainEngine(RulePack pack) {
    this.pack = pack;
    for (Rule.Phase phase : Rule.Phase.values()) {
      List<Rule> ofPhase = List.copyOf(pack.byId(phase).values());
      rules.put(phase, ofPhase);
      indexes.put(phase, new RuleIndex(ofPhase));
    }
  }

  @Override
  public RulePack pack() {
    return pack;
  }

  @Override
  public List<Rule> fire(FactView view, Rule.Phase phase) {
    phase.mustRead(view);
    List<Rule> ofPhase = Objects.requireNonNull(rules.get(phase));
    BitSet holding = Objects.requireNonNull(indexes.get(phase)).holding(view);
    List<Rule> fired = new ArrayList<>(holding.cardinality());
    for (int i = holding.nextSetBit(0); i >= 0; i = holding.nextSetBit(i + 1)) {
      fired.add(ofPhase.get(i));
    }
    return fired;
  }
}
