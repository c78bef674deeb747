package underhold.review.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import underhold.advice.Condition;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.advice.Truth;
import underhold.site.FactView;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * How much of the pack the cases use: rules that fire on none of them, and limits that decide on
 * none. A limit is at issue where its fact is known and the other conditions of a rule hold. Rules
 * that read sheets are left out, as the sheets are not made here.
 */
final class Coverage implements Analysis {
  static final String NAME = "coverage";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found = new Section.Gathering(NAME, "How much of the pack do the cases use?");
    List<Rule> rules = bench.pack().rules();
    BitSet fired = new BitSet();
    Set<String> atIssue = new HashSet<>();
    for (AuditSite one : bench.cases()) {
      for (Zone zone : one.site().zones()) {
        FactView view =
            bench.rules().complete(ZoneViews.known(one.site(), zone, bench.dictionary()));
        found.tried(1);
        for (int i = 0; i < rules.size(); i++) {
          Rule rule = rules.get(i);
          if (fires(rule, view)) {
            fired.set(i);
          }
          issues(rule, view, atIssue);
        }
      }
    }
    List<String> silent = new ArrayList<>();
    int asked = 0;
    for (int i = 0; i < rules.size(); i++) {
      Rule.Phase phase = rules.get(i).phase();
      if (phase == Rule.Phase.SCREEN || phase == Rule.Phase.DERIVE) {
        asked++;
        found.result(Method.COUNTED);
        if (!fired.get(i)) {
          silent.add(rules.get(i).id());
        }
      }
    }
    Set<String> read = new HashSet<>();
    rules.forEach(
        rule ->
            rule.conditions().stream()
                .filter(c -> c.operator().isNumeric())
                .forEach(c -> read.add(c.limitName())));
    List<String> idle =
        bench.pack().limits().all().stream()
            .map(Limit::name)
            .filter(name -> read.contains(name) && !atIssue.contains(name))
            .toList();
    found.note(
        (asked - silent.size())
            + " of "
            + asked
            + " rules of the screening and of derived facts fire on at least one of "
            + bench.cases().size()
            + " sites. On none: "
            + list(silent)
            + ".");
    found.note(
        (read.size() - idle.size())
            + " of "
            + read.size()
            + " limits are at issue on at least one. On none: "
            + list(idle)
            + ".");
    return found.done();
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  /** That its own fact is not known yet is no condition of a deriving rule once it is known. */
  private static boolean fires(Rule rule, FactView view) {
    return rule.conditions().stream()
        .allMatch(
            c ->
                c.holds(view) == Truth.TRUE
                    || (rule.phase() == Rule.Phase.DERIVE
                        && c.operator() == Condition.Operator.UNKNOWN
                        && c.fact().equals(rule.action().fact())));
  }

  private static void issues(Rule rule, FactView view, Set<String> atIssue) {
    for (Condition condition : rule.conditions()) {
      if (condition.operator().isNumeric()
          && condition.holds(view) != Truth.OPEN
          && rule.conditions().stream()
              .allMatch(other -> other == condition || other.holds(view) == Truth.TRUE)) {
        atIssue.add(condition.limitName());
      }
    }
  }
}
