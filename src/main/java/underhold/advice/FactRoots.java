package underhold.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.site.FactDefinition;
import underhold.site.FactView;
import underhold.site.ZoneViews;

/** Traces an open fact back to the facts a person would have to find out. */
public final class FactRoots {
  /** The rules that derive a fact, in the order of the pack, by the fact. */
  private final Map<String, List<Rule>> deriving = new HashMap<>();

  public FactRoots(RulePack pack) {
    for (Rule rule : pack.rules()) {
      String fact = rule.action().fact();
      if (fact != null) {
        deriving.computeIfAbsent(fact, name -> new ArrayList<>()).add(rule);
      }
    }
  }

  /**
   * The facts to ask for so that those named become known, in the order met; facts that are known
   * are left out, and so are rules that can no longer fire.
   */
  public List<String> ask(List<String> names, FactView view) {
    Set<String> seen = new LinkedHashSet<>();
    List<String> roots = new ArrayList<>();
    names.forEach(name -> visit(name, view, seen, roots));
    return roots;
  }

  private void visit(String name, FactView view, Set<String> seen, List<String> roots) {
    if (!seen.add(name) || view.fact(name).value() != null) {
      return;
    }
    FactDefinition definition = view.fact(name).definition();
    if (!definition.derived()) {
      List<String> instead =
          definition.askInstead().stream().filter(fact -> view.fact(fact).value() == null).toList();
      if (instead.isEmpty()) {
        roots.add(name);
      }
      instead.forEach(fact -> visit(fact, view, seen, roots));
    }
    for (Rule rule : deriving.getOrDefault(name, List.of())) {
      if (rule.holds(view) == Truth.OPEN) {
        rule.facts().forEach(fact -> visit(fact, view, seen, roots));
      }
    }
    if (definition.derived()) {
      ZoneViews.sources(name).forEach(fact -> visit(fact, view, seen, roots));
    }
  }
}
