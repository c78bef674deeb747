package underhold.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.FactDictionary;
import underhold.site.PlainText;

/**
 * Puts the rules of a small pack into those of the pack built in: a rule of the same id takes the
 * place of the built-in one, a new one comes last.
 */
final class PackMerge {
  private final PackManifest manifest;
  private final @Nullable RulePack base;
  private final Limits limits;
  private final List<PackProblem> problems;

  PackMerge(
      PackManifest manifest, @Nullable RulePack base, Limits limits, List<PackProblem> problems) {
    this.manifest = manifest;
    this.base = base;
    this.limits = limits;
    this.problems = problems;
  }

  /** All rules of the pack in order. */
  List<Rule> rules(List<Rule> own) {
    if (base == null) {
      return own;
    }
    Map<String, Rule> left = new LinkedHashMap<>();
    own.forEach(rule -> left.put(key(rule.id()), rule));
    Set<String> removed = removed(base, left.keySet());
    List<Rule> all = new ArrayList<>();
    for (Rule rule : base.all()) {
      Rule other = left.remove(key(rule.id()));
      if (other != null) {
        all.add(other);
      } else if (!removed.contains(key(rule.id()))) {
        all.add(withLimits(rule, limits));
      }
    }
    all.addAll(left.values());
    checkSentences(all);
    return all;
  }

  private Set<String> removed(RulePack base, Set<String> own) {
    Set<String> removed = new HashSet<>();
    List<String> ids = base.all().stream().map(Rule::id).toList();
    for (PackManifest.Entry entry : manifest.removed()) {
      String key = key(entry.id());
      if (base.rule(entry.id()).isEmpty()) {
        problem(
            entry.line(),
            "removes the rule "
                + PlainText.quoted(entry.id())
                + ", which the built-in rules do not have"
                + PackFields.nearest(entry.id(), ids));
      } else if (own.contains(key)) {
        problem(entry.line(), "removes the rule " + entry.id() + " and puts another in its place");
      } else if (!removed.add(key)) {
        problem(entry.line(), "removes the rule " + entry.id() + " twice");
      }
    }
    return removed;
  }

  private void checkSentences(List<Rule> all) {
    Map<String, Rule> sentences = new HashMap<>();
    for (Rule rule : all) {
      Rule other = sentences.putIfAbsent(rule.sentence().toLowerCase(Locale.ROOT), rule);
      if (other != null) {
        problems.add(
            new PackProblem(
                rule.file(),
                rule.line(),
                rule.id() + " has the same sentence as " + other.id() + " of the built-in rules"));
      }
    }
  }

  /** A rule that compares with other values of its limits. */
  static Rule withLimits(Rule rule, Limits limits) {
    FactDictionary dictionary =
        rule.phase() == Rule.Phase.SCHEME ? FactDictionary.pairs() : FactDictionary.standard();
    boolean known =
        rule.conditions().stream()
            .allMatch(c -> c.limit() == null || limits.find(c.limit()).isPresent());
    return known
        ? rule.with(rule.conditions().stream().map(c -> c.lookedUp(dictionary, limits)).toList())
        : rule; // a limit is not in order; the pack is refused for that
  }

  private static String key(String id) {
    return id.toUpperCase(Locale.ROOT);
  }

  private void problem(int line, String message) {
    problems.add(new PackProblem(PackManifest.FILE, line, message));
  }
}
