package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;

/**
 * Amounts between and at the limits of rules that speak of one option under one cause, or derive
 * one fact: amounts at which none of them speaks although they do below and above, single amounts
 * that two claim, and derived facts that stay unknown although all they read is known.
 */
final class ThresholdGaps implements Analysis {
  static final String NAME = "thresholds";
  private static final int MOST_SHOWN = 3;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Do the limits of rules leave gaps, or claim an amount twice?");
    Set<String> told = new LinkedHashSet<>();
    groups(bench)
        .forEach(
            (subject, rules) -> {
              for (String fact : numericFacts(rules, bench)) {
                ladder(subject, fact, rules, bench, told, found);
              }
            });
    for (String fact : derived(bench)) {
      leftUnknown(fact, bench, found);
    }
    return found.done();
  }

  /** The rules of each option and cause, of each derived fact. */
  private static Map<String, List<Rule>> groups(Bench bench) {
    Map<String, List<Rule>> groups = new LinkedHashMap<>();
    for (Rule rule : bench.pack().rules()) {
      if (rule.effect() == Effect.DERIVE) {
        groups.computeIfAbsent(Reasoning.target(rule), key -> new ArrayList<>()).add(rule);
      } else if (rule.effect().scores() || rule.effect() == Effect.RULE_OUT) {
        for (SupportOption option : rule.action().options()) {
          String subject = option.id() + " under the cause " + rule.cause();
          groups.computeIfAbsent(subject, key -> new ArrayList<>()).add(rule);
        }
      }
    }
    groups.values().removeIf(rules -> rules.size() < 2);
    return groups;
  }

  private static List<String> numericFacts(List<Rule> rules, Bench bench) {
    Set<String> facts = new LinkedHashSet<>();
    rules.forEach(rule -> facts.addAll(rule.facts()));
    return facts.stream()
        .filter(fact -> bench.dictionary().require(fact).kind().isNumber())
        .toList();
  }

  private static void ladder(
      String subject,
      String fact,
      List<Rule> rules,
      Bench bench,
      Set<String> told,
      Section.Gathering found) {
    List<Rule> reading =
        rules.stream().filter(rule -> !numbers(rule, fact, bench).isEmpty()).toList();
    for (Rule low : reading) {
      for (Rule high : reading) {
        if (low == high) {
          continue;
        }
        NumberSet one = numbers(low, fact, bench);
        NumberSet other = numbers(high, fact, bench);
        Box rest =
            bench
                .reasoning()
                .narrowed(
                    bench
                        .reasoning()
                        .needs(low)
                        .without(fact)
                        .and(bench.reasoning().needs(high).without(fact)));
        if (rest.isEmpty()) {
          continue;
        }
        found.result(Method.PROVED);
        NumberSet both = one.and(other);
        List<String> about = Speaking.ids(low, high);
        boolean point = both.parts().size() == 1 && both.parts().get(0).isPoint();
        if (point
            && low.id().compareTo(high.id()) < 0
            && !one.equals(both)
            && !other.equals(both)) {
          tell(
              about,
              fact,
              Speaking.of(low)
                  + " and "
                  + Speaking.of(high)
                  + " both speak of "
                  + subject
                  + " where "
                  + fact
                  + " is "
                  + FactSet.numbers(both).text()
                  + ".",
              told,
              found);
        }
        NumberSet gap = gap(one, other);
        if (!gap.isEmpty()
            && both.isEmpty()
            && counts(low, high, gap, fact, bench)
            && silent(gap, rest, fact, rules, bench)) {
          tell(
              about,
              fact,
              "Of "
                  + subject
                  + " nothing speaks where "
                  + fact
                  + " is "
                  + FactSet.numbers(gap).text()
                  + ", between "
                  + Speaking.of(low)
                  + " and "
                  + Speaking.of(high)
                  + ".",
              told,
              found);
        }
      }
    }
  }

  private static void tell(
      List<String> about, String fact, String text, Set<String> told, Section.Gathering found) {
    if (told.add(about + fact)) {
      found.defect(Defect.proved(NAME, about, text));
    }
  }

  /**
   * A single amount is always a gap; a range only between rules that speak the same way and ask the
   * same of the other facts: between a for and an against silence is a middle.
   */
  private static boolean counts(Rule low, Rule high, NumberSet gap, String fact, Bench bench) {
    if (gap.parts().get(0).isPoint()) {
      return true;
    }
    Box one = bench.reasoning().box(low).without(fact);
    Box other = bench.reasoning().box(high).without(fact);
    boolean same = one.equals(other);
    return same
        && (low.effect() == Effect.DERIVE
            ? Reasoning.target(low).equals(Reasoning.target(high))
            : low.effect() == high.effect());
  }

  /** Whether no rule of the group speaks somewhere in the gap. */
  private static boolean silent(
      NumberSet gap, Box rest, String fact, List<Rule> rules, Bench bench) {
    Box inGap = rest.with(fact, FactSet.numbers(gap));
    List<Box> others =
        rules.stream()
            .map(bench.reasoning()::needs)
            .filter(box -> !box.and(inGap).isEmpty())
            .toList();
    return !inGap.isEmpty() && !inGap.minus(others, bench.dictionary()).isEmpty();
  }

  /** The amounts above all of the first and below all of the second. */
  private static NumberSet gap(NumberSet low, NumberSet high) {
    NumberSet.Edge from = low.parts().get(low.parts().size() - 1).to();
    NumberSet.Edge to = high.parts().get(0).from();
    return NumberSet.between(from, to);
  }

  private static NumberSet numbers(Rule rule, String fact, Bench bench) {
    FactSet set = bench.reasoning().box(rule).sets().get(fact);
    return set == null || set.unknown() ? NumberSet.NONE : set.numbers();
  }

  private static Set<String> derived(Bench bench) {
    Set<String> facts = new LinkedHashSet<>();
    bench.reasoning().derivers().stream()
        .map(Reasoning::target)
        .filter(bench.reasoning()::isMade)
        .forEach(facts::add);
    return facts;
  }

  /** Where a derived fact stays unknown although all that its rules read is known. */
  private static void leftUnknown(String fact, Bench bench, Section.Gathering found) {
    List<Rule> rules =
        bench.reasoning().derivers().stream()
            .filter(rule -> Reasoning.target(rule).equals(fact))
            .toList();
    Box known = Box.ALL;
    for (Rule rule : rules) {
      for (String read : rule.facts()) {
        FactDefinition definition = bench.dictionary().require(read);
        FactSet all = FactSet.all(definition);
        known = known.with(read, new FactSet(all.words(), all.numbers(), false));
      }
    }
    found.result(Method.PROVED);
    List<Box> left =
        known
            .minus(rules.stream().map(bench.reasoning()::box).toList(), bench.dictionary())
            .stream()
            .map(bench.reasoning()::narrowed)
            .filter(box -> !bench.reasoning().alternatives(box).isEmpty())
            .toList();
    if (!left.isEmpty()) {
      found.defect(
          Defect.proved(
              NAME,
              List.of(fact),
              fact
                  + " stays unknown although all that its rules read is known, where "
                  + String.join("; or ", left.stream().limit(MOST_SHOWN).map(Box::text).toList())
                  + (left.size() > MOST_SHOWN
                      ? "; and " + (left.size() - MOST_SHOWN) + " more"
                      : "")
                  + "."));
    }
  }
}
