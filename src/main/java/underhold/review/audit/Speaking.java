package underhold.review.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.Strength;
import underhold.advice.SupportOption;

/** What rules state, and whether two state the same, opposite things or nothing to each other. */
final class Speaking {
  private Speaking() {}

  /** The options both speak of; empty where they have none in common. */
  static List<SupportOption> shared(Rule one, Rule other) {
    List<SupportOption> shared = new ArrayList<>(one.action().options());
    shared.retainAll(other.action().options());
    return shared;
  }

  /** Whether they speak of the same things: an option, any option, a fact, or a pair of zones. */
  static boolean sameSubject(Rule one, Rule other) {
    return one.phase() == Rule.Phase.SCHEME == (other.phase() == Rule.Phase.SCHEME)
        && Objects.equals(one.action().fact(), other.action().fact())
        && (!shared(one, other).isEmpty()
            || (one.action().options().isEmpty() && other.action().options().isEmpty()));
  }

  static boolean speaksFor(Rule rule) {
    return rule.effect() == Effect.FOR || rule.effect() == Effect.REFER;
  }

  static boolean scores(Rule rule) {
    return rule.effect().scores();
  }

  /** Whether both score the same way. */
  static boolean sameWay(Rule one, Rule other) {
    return scores(one) && scores(other) && (speaksFor(one) == speaksFor(other));
  }

  /** Decisive is the greatest. */
  static boolean atLeastAsStrong(Rule one, Rule other) {
    return rank(one) <= rank(other);
  }

  static boolean equallyStrong(Rule one, Rule other) {
    return rank(one) == rank(other);
  }

  private static int rank(Rule rule) {
    Strength strength = rule.action().strength();
    return strength == null ? -1 : strength.ordinal();
  }

  static boolean sameCause(Rule one, Rule other) {
    return one.cause().equals(other.cause());
  }

  /** The ids of rules, sorted. */
  static List<String> ids(Rule... rules) {
    Set<String> ids = new TreeSet<>();
    for (Rule rule : rules) {
      ids.add(rule.id());
    }
    return List.copyOf(ids);
  }

  static String options(List<SupportOption> options) {
    return String.join(", ", options.stream().map(SupportOption::id).toList());
  }

  /** What a rule states, in a few words: {@code PIT-03 (major against pits)}. */
  static String of(Rule rule) {
    Strength strength = rule.action().strength();
    String what =
        switch (rule.effect()) {
          case DERIVE -> rule.action().fact() + " is " + rule.action().value();
          case RULE_OUT -> "rules out " + options(rule.action().options());
          case REQUIRE, CAUTION, FOR, AGAINST, REFER ->
              (strength == null ? "" : strength.word() + " ")
                  + rule.effect().word()
                  + (rule.action().options().isEmpty()
                      ? ""
                      : " " + options(rule.action().options()));
        };
    return rule.id() + " (" + what + ")";
  }
}
