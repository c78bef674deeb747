package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.advice.RuleEngine;
import underhold.advice.Truth;
import underhold.advice.Wording;
import underhold.site.FactView;
import underhold.site.Site;

/** Asks the rules between zones about two zones with a method tried for each. */
final class PairScreen {
  private final RuleEngine engine;
  private final Site site;
  private final Wording wording;
  private final Map<String, PairVerdict> known = new HashMap<>();

  PairScreen(RuleEngine engine, Site site) {
    this.engine = engine;
    this.site = site;
    this.wording = new Wording(engine.pack(), site.units());
  }

  /** What they say of the two, both ways round; asked once. */
  PairVerdict of(ZoneChoice one, ZoneChoice other) {
    String key = String.join("\n", one.name(), one.methodId(), other.name(), other.methodId());
    PairVerdict verdict = known.get(key);
    if (verdict == null) {
      verdict = ask(one, other);
      known.put(key, verdict);
    }
    return verdict;
  }

  private PairVerdict ask(ZoneChoice one, ZoneChoice other) {
    List<PairFinding> findings = new ArrayList<>();
    List<OpenPairRule> open = new ArrayList<>();
    ask(one, other, findings, open);
    ask(other, one, findings, open);
    return PairVerdict.of(findings, open, engine.pack());
  }

  private void ask(
      ZoneChoice first, ZoneChoice second, List<PairFinding> findings, List<OpenPairRule> open) {
    FactView view = PairView.of(site, first, second);
    Set<Rule> fired = new HashSet<>();
    for (Rule rule : engine.fire(view, Rule.Phase.SCHEME)) {
      fired.add(rule);
      findings.add(new PairFinding(first.name(), second.name(), wording.finding(rule, view)));
    }
    for (Rule rule : engine.pack().pairRules()) {
      if (!fired.contains(rule) && rule.holds(view) == Truth.OPEN) {
        open.add(new OpenPairRule(first.name(), second.name(), rule, unknown(rule, view)));
      }
    }
  }

  /** What is asked in place of a fact that follows from others. */
  private static Stream<String> asked(String fact, FactView view) {
    List<String> instead =
        view.fact(fact).definition().askInstead().stream()
            .filter(other -> view.fact(other).maybe().isEmpty())
            .toList();
    return instead.isEmpty() ? Stream.of(fact) : instead.stream();
  }

  private static List<String> unknown(Rule rule, FactView view) {
    return rule.conditions().stream()
        .filter(condition -> condition.holds(view) == Truth.OPEN)
        .map(Condition::fact)
        .flatMap(fact -> asked(fact, view))
        .distinct()
        .toList();
  }
}
