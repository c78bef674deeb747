package underhold.review.recheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import underhold.review.recheck.PackChange.Kind;
import underhold.review.saved.LimitDigest;
import underhold.review.saved.PackDigest;
import underhold.review.saved.RuleDigest;
import underhold.review.saved.SavedAmount;

/** What two rule packs differ in. */
final class PackComparison {
  private final PackDigest was;
  private final PackDigest now;
  private final List<PackChange> changes = new ArrayList<>();

  private PackComparison(PackDigest was, PackDigest now) {
    this.was = was;
    this.now = now;
  }

  /** The changes, those that move answers first. */
  static List<PackChange> of(PackDigest was, PackDigest now) {
    PackComparison comparison = new PackComparison(was, now);
    comparison.rules();
    comparison.limits();
    comparison.weights();
    comparison.rest();
    comparison.changes.sort(Comparator.comparing(PackChange::kind));
    return comparison.changes;
  }

  private void rules() {
    Map<String, RuleDigest> before = byName(was.rules(), RuleDigest::id);
    Map<String, RuleDigest> after = byName(now.rules(), RuleDigest::id);
    before.forEach(
        (id, rule) -> {
          RuleDigest other = after.get(id);
          if (other == null) {
            add(Kind.RULE_REMOVED, id, rule.sentence(), "");
          } else {
            rule(rule, other);
          }
        });
    after.forEach(
        (id, rule) -> {
          if (!before.containsKey(id)) {
            add(Kind.RULE_ADDED, id, "", rule.sentence());
          }
        });
  }

  private void rule(RuleDigest one, RuleDigest other) {
    differs(Kind.RULE_SENTENCE, one.id(), one.sentence(), other.sentence());
    differs(Kind.RULE_BASIS, one.id(), one.basis(), other.basis());
    silent(Kind.RULE_CONDITIONS, one.id(), one.conditions(), other.conditions());
    silent(Kind.RULE_ACTION, one.id(), one.action(), other.action());
    silent(Kind.RULE_REASON, one.id(), one.reason(), other.reason());
    silent(Kind.RULE_SOURCES, one.id(), one.sources(), other.sources());
  }

  private void limits() {
    Map<String, LimitDigest> before = byName(was.limits(), LimitDigest::name);
    Map<String, LimitDigest> after = byName(now.limits(), LimitDigest::name);
    before.forEach(
        (name, limit) -> {
          LimitDigest other = after.get(name);
          if (other == null) {
            add(Kind.LIMIT_REMOVED, name, limit.text(), "");
            return;
          }
          if (!SavedAmount.same(limit.value(), other.value())) {
            add(Kind.LIMIT_VALUE, name, limit.text(), other.text());
          }
          differs(Kind.LIMIT_BASIS, name, limit.basis(), other.basis());
          silent(Kind.LIMIT_NOTE, name, limit.rest(), other.rest());
        });
    after.forEach(
        (name, limit) -> {
          if (!before.containsKey(name)) {
            add(Kind.LIMIT_ADDED, name, "", limit.text());
          }
        });
  }

  private void weights() {
    Map<String, PackDigest.Points> after = byName(now.strengths(), PackDigest.Points::strength);
    for (PackDigest.Points points : was.strengths()) {
      PackDigest.Points other = after.get(points.strength());
      String text = other == null ? "" : String.valueOf(other.points());
      differs(Kind.STRENGTH, points.strength(), String.valueOf(points.points()), text);
    }
    differs(Kind.TIE, "points", String.valueOf(was.tie()), String.valueOf(now.tie()));
    differs(
        Kind.COST_ORDER,
        "options",
        String.join(", ", was.costOrder()),
        String.join(", ", now.costOrder()));
  }

  private void rest() {
    silent(Kind.SOURCES, "sources", was.sources(), now.sources());
    silent(Kind.CRITERIA, "criteria", was.criteria(), now.criteria());
    if (changes.isEmpty() && !was.fingerprint().equals(now.fingerprint())) {
      add(Kind.FILES, "pack", was.line(), now.line());
    }
  }

  private void differs(Kind kind, String name, String one, String other) {
    if (!one.equals(other)) {
      add(kind, name, one, other);
    }
  }

  /** Only fingerprints are kept, which say nothing to a reader. */
  private void silent(Kind kind, String name, String one, String other) {
    if (!one.equals(other)) {
      add(kind, name, "", "");
    }
  }

  private void add(Kind kind, String name, String one, String other) {
    changes.add(new PackChange(kind, name, one, other));
  }

  private static <T> Map<String, T> byName(List<T> all, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(one -> map.putIfAbsent(name.apply(one), one));
    return map;
  }
}
