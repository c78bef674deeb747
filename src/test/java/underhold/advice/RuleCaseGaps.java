package underhold.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/** What is missing from the cases of a rule, or wrong with them. */
final class RuleCaseGaps {
  /** Rounding of a unit conversion, relative; a limit of zero is met exactly. */
  private static final double TOLERANCE = 1e-9;

  private final Rule rule;
  private final Limits limits;
  private final List<RuleCase> cases;
  private final List<String> found = new ArrayList<>();

  private RuleCaseGaps(Rule rule, Limits limits, List<RuleCase> cases) {
    this.rule = rule;
    this.limits = limits;
    this.cases = cases;
  }

  /** The gaps in words; empty where there are none. */
  static List<String> of(Rule rule, Limits limits, Map<String, RuleCaseFile> files) {
    RuleCaseFile file = files.get(RuleCaseFile.path(rule));
    if (file == null) {
      return List.of(rule.id() + ": no file " + RuleCaseFile.path(rule));
    }
    RuleCaseGaps gaps = new RuleCaseGaps(rule, limits, file.cases());
    gaps.findMissing();
    file.cases().forEach(gaps::check);
    return gaps.found;
  }

  /** Conditions that could be left out of the rule without any of its cases noticing. */
  static List<String> idle(Rule rule, Limits limits, List<RuleCase> cases) {
    return rule.conditions().stream()
        .filter(condition -> cases.stream().noneMatch(c -> turnsOn(rule, limits, c, condition)))
        .map(condition -> rule.id() + ": no case turns on " + condition.text())
        .toList();
  }

  /** Whether the rule would fire on a case but for one condition. */
  private static boolean turnsOn(Rule rule, Limits limits, RuleCase item, Condition condition) {
    FactView view = item.view();
    return rule.conditions().stream()
        .allMatch(c -> (c.holds(view) == Truth.TRUE) == !c.equals(condition));
  }

  private void findMissing() {
    if (cases.stream().noneMatch(RuleCase::fires)) {
      add("no case in which it fires");
    }
    if (!isForEverySite()
        && cases.stream().allMatch(c -> !c.disputed() && (c.fires() || c.unknown()))) {
      add("no case in which it does not fire although all is known");
    }
    if (cases.stream().noneMatch(c -> c.unknown() && !c.fires())) {
      add("no case in which it does not fire because a fact is unknown");
    }
    for (String limit : limitNames()) {
      if (cases.stream().noneMatch(c -> c.edge().filter(limit::equals).isPresent())) {
        add("no case at the edge of " + limit);
      }
    }
    Set<String> titles = new HashSet<>();
    cases.stream()
        .filter(c -> !titles.add(c.title()))
        .forEach(c -> add("two cases have the title " + c.title()));
  }

  /** Whether it fires as soon as its facts are known, whatever they are. */
  private boolean isForEverySite() {
    FactDictionary dictionary =
        rule.phase() == Rule.Phase.SCHEME ? FactDictionary.pairs() : FactDictionary.standard();
    return rule.conditions().stream()
        .allMatch(
            c ->
                c.operator() == Condition.Operator.IN
                    && dictionary.require(c.fact()).values().stream()
                        .allMatch(allowed -> c.words().contains(allowed.value())));
  }

  private void check(RuleCase item) {
    item.edge().ifPresent(limit -> checkEdge(item, limit));
    if (item.unknown()) {
      checkUnknown(item);
    }
  }

  /** An edge case stands exactly at the limit, and nothing but the limit decides it. */
  private void checkEdge(RuleCase item, String limit) {
    FactView view = item.view();
    List<Condition> atLimit = RuleCase.conditions(rule, limit);
    if (atLimit.isEmpty()) {
      add(item.title() + ": the rule does not use " + limit);
    } else if (atLimit.stream().noneMatch(c -> meets(view, c))) {
      add(item.title() + ": no fact stands exactly at " + limit);
    } else if (!item.disputed()
        && rule.conditions().stream()
            .filter(c -> !atLimit.contains(c))
            .anyMatch(c -> c.holds(view) != Truth.TRUE)) {
      add(item.title() + ": more than " + limit + " decides");
    }
  }

  private boolean meets(FactView view, Condition condition) {
    double limit = limits.require(condition.limitName()).si();
    return view.amount(condition.fact())
        .filter(amount -> Math.abs(amount.si() - limit) <= TOLERANCE * Math.abs(limit))
        .isPresent();
  }

  /** An unknown case lacks a fact that the rule reads, and nothing else keeps it from firing. */
  private void checkUnknown(RuleCase item) {
    FactView view = item.view();
    if (rule.facts().stream().allMatch(fact -> view.fact(fact).maybe().isPresent())) {
      add(item.title() + ": every fact that the rule reads is known");
    } else if (!item.disputed() && rule.holds(view) == Truth.FALSE) {
      add(item.title() + ": it is not the unknown fact that decides");
    }
  }

  private Set<String> limitNames() {
    Set<String> names = new TreeSet<>();
    rule.conditions().stream()
        .filter(c -> c.operator().isNumeric())
        .forEach(c -> names.add(c.limitName()));
    return names;
  }

  private void add(String gap) {
    found.add(rule.id() + ": " + gap);
  }
}
