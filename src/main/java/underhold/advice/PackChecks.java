package underhold.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/**
 * Checks what only the whole pack shows: limits no fact can reach, and circles of derived facts.
 */
final class PackChecks {
  private final Limits limits;
  private final ToIntFunction<String> lines;
  private final List<PackProblem> problems;

  /**
   * Checks packs.
   *
   * @param lines the line of each limit in its table; 0 where the pack does not set it
   */
  PackChecks(Limits limits, ToIntFunction<String> lines, List<PackProblem> problems) {
    this.limits = limits;
    this.lines = lines;
    this.problems = problems;
  }

  void check(List<Rule> rules, FactDictionary zones) {
    Set<String> compared = new HashSet<>();
    Set<String> told = new HashSet<>();
    for (Rule rule : rules) {
      FactDictionary dictionary =
          rule.phase() == Rule.Phase.SCHEME ? FactDictionary.pairs() : zones;
      for (Condition condition : rule.conditions()) {
        if (condition.operator().isNumeric()) {
          compared.add(condition.limitName());
          limits
              .find(condition.limitName())
              .flatMap(limit -> unreachable(limit, dictionary.require(condition.fact())))
              .filter(message -> told.add(condition.limitName()))
              .ifPresent(message -> limit(condition.limitName(), message, rule));
        }
      }
    }
    for (Limit limit : limits.all()) {
      boolean own = lines.applyAsInt(limit.name()) > 0; // not one that lost its rule
      if (own && limit.si() < 0 && !compared.contains(limit.name())) {
        problems.add(
            new PackProblem(
                LimitTable.FILE,
                lines.applyAsInt(limit.name()),
                "the limit "
                    + limit.name()
                    + " is "
                    + limit.value().text()
                    + ", below nothing, and no rule compares it with a fact that may be"));
      }
    }
    checkCircles(rules);
  }

  private void limit(String name, String message, Rule rule) {
    problems.add(
        new PackProblem(
            LimitTable.FILE,
            lines.applyAsInt(name),
            message + ", and " + rule.id() + " would always or never fire by it"));
  }

  /** Why a limit is none for a fact; empty if the fact may lie on both sides of it. */
  static Optional<String> unreachable(Limit limit, FactDefinition fact) {
    FactDefinition.Range range = fact.requireRange();
    return limit.si() < range.min() || limit.si() > range.max()
        ? Optional.of(
            "the limit "
                + limit.name()
                + " is "
                + limit.value().text()
                + ", but "
                + fact.name()
                + " lies between "
                + range.minText()
                + " and "
                + range.maxText())
        : Optional.empty();
  }

  /**
   * A circle of derived facts cannot prove itself, for facts begin unknown and are only added. But
   * where it passes through a condition that a fact is not known, the answer would hang on the
   * order of the rules.
   */
  private void checkCircles(List<Rule> rules) {
    Map<String, Set<String>> reads = DerivedFacts.reads(rules);
    for (Rule rule : rules) {
      String made = rule.action().fact();
      if (made == null) {
        continue;
      }
      for (Condition condition : rule.conditions()) {
        boolean other = !condition.fact().equals(made);
        if (condition.operator() == Condition.Operator.UNKNOWN && other) {
          DerivedFacts.path(reads, condition.fact(), made)
              .ifPresent(path -> circle(rule, made, path));
        }
      }
    }
  }

  private void circle(Rule rule, String made, List<String> path) {
    List<String> whole = new ArrayList<>(List.of(made));
    whole.addAll(path);
    problems.add(
        new PackProblem(
            rule.file(),
            rule.line(),
            rule.id()
                + " derives "
                + made
                + " while "
                + path.get(0)
                + " is not known, which itself follows from it: "
                + String.join(" from ", whole)));
  }

  /** Which facts rules derive, and from what. */
  static final class DerivedFacts {
    private DerivedFacts() {}

    static Map<String, Set<String>> reads(List<Rule> rules) {
      Map<String, Set<String>> reads = new LinkedHashMap<>();
      for (Rule rule : rules) {
        String made = rule.action().fact();
        if (made != null) {
          reads.computeIfAbsent(made, key -> new LinkedHashSet<>()).addAll(rule.facts());
        }
      }
      return reads;
    }

    /**
     * The way from one fact down to another it follows from, both named; empty if there is none.
     */
    static Optional<List<String>> path(Map<String, Set<String>> reads, String from, String to) {
      return path(reads, from, to, new HashSet<>());
    }

    private static Optional<List<String>> path(
        Map<String, Set<String>> reads, String from, String to, Set<String> seen) {
      if (from.equals(to)) {
        return Optional.of(List.of(to));
      }
      if (seen.add(from)) {
        for (String next : reads.getOrDefault(from, Set.of())) {
          Optional<List<String>> rest = path(reads, next, to, seen);
          if (rest.isPresent()) {
            List<String> whole = new ArrayList<>(List.of(from));
            whole.addAll(rest.get());
            return Optional.of(whole);
          }
        }
      }
      return Optional.empty();
    }
  }
}
