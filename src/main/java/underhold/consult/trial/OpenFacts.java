package underhold.consult.trial;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import underhold.advice.FactRoots;
import underhold.advice.PlainRules;
import underhold.advice.Rule;
import underhold.site.FactView;

/** The unknown facts that matter: those that a rule, not yet decided, could still read. */
public final class OpenFacts {
  private final PlainRules rules;
  private final FactRoots roots;

  public OpenFacts(PlainRules rules) {
    this.rules = rules;
    this.roots = new FactRoots(rules.pack());
  }

  /** Their names, as a person would be asked for them. */
  public List<String> of(FactView view) {
    Set<String> open = new LinkedHashSet<>();
    for (Rule rule : rules.open(view)) {
      open.addAll(rule.facts());
    }
    return List.copyOf(new LinkedHashSet<>(roots.ask(List.copyOf(open), view)));
  }
}
