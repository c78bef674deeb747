package underhold.review.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Condition;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/**
 * What follows from the conditions of a pack's rules. Facts that rules derive are replaced by the
 * boxes of those rules; what excludes itself is taken away; amounts that follow by calculation are
 * free within their ranges. So "cannot be" and "follows" are proved, and "can be" is only possible
 * until a site shows it.
 */
final class Reasoning {
  /**
   * More alternatives than this are not followed: the derived facts left are then taken as free.
   */
  private static final int MOST_ALTERNATIVES = 4000;

  private static final int MOST_ROUNDS = 40;

  private final FactDictionary dictionary;
  private final List<Rule> derivers;
  private final Set<String> made = new HashSet<>();
  private final List<Box> excluded = new ArrayList<>();
  private final Map<String, Box> boxes = new HashMap<>();
  private final Map<String, Box> closed = new HashMap<>();

  Reasoning(RulePack pack, FactDictionary dictionary) {
    this.dictionary = dictionary;
    this.derivers = pack.rules().stream().filter(rule -> rule.effect() == Effect.DERIVE).toList();
    for (Rule rule : derivers) {
      FactDefinition fact = dictionary.require(target(rule));
      if (fact.derived()) {
        made.add(fact.name());
      }
    }
    excluded.addAll(SiteRelations.EXCLUDED);
    excluded.addAll(
        SiteRelations.ordered(
            pack.rules().stream().flatMap(rule -> rule.conditions().stream()).toList()));
    derivers.forEach(rule -> implication(rule).ifPresent(excluded::add));
    for (Rule rule : pack.rules()) {
      boxes.put(rule.id(), Box.of(rule.conditions(), dictionary));
    }
    pack.pairRules()
        .forEach(rule -> boxes.put(rule.id(), Box.of(rule.conditions(), FactDictionary.pairs())));
  }

  FactDictionary dictionary() {
    return dictionary;
  }

  /** What no zone can be. */
  List<Box> excluded() {
    return List.copyOf(excluded);
  }

  /** The rules that derive facts. */
  List<Rule> derivers() {
    return derivers;
  }

  /** Facts that only rules make. */
  boolean isMade(String fact) {
    return made.contains(fact);
  }

  static String target(Rule deriver) {
    return Objects.requireNonNull(deriver.action().fact());
  }

  static String value(Rule deriver) {
    return Objects.requireNonNull(deriver.action().value());
  }

  /** The conditions of a rule as written. */
  Box box(Rule rule) {
    return Objects.requireNonNull(boxes.get(rule.id()), rule.id());
  }

  /**
   * What a rule that derives facts needs, of the facts as they stand in the end: that something is
   * not known yet is no condition where it may follow later.
   */
  Box needs(Rule rule) {
    if (rule.effect() != Effect.DERIVE) {
      return box(rule);
    }
    Box box = box(rule);
    for (Condition condition : rule.conditions()) {
      if (condition.operator() == Condition.Operator.UNKNOWN && follows(condition.fact())) {
        box = box.without(condition.fact());
      }
    }
    return box;
  }

  private boolean follows(String fact) {
    return derivers.stream().anyMatch(rule -> target(rule).equals(fact))
        || dictionary.require(fact).derived();
  }

  /** Where the rule's conditions hold its fact has its value: the contrary excludes itself. */
  private Optional<Box> implication(Rule rule) {
    String fact = target(rule);
    boolean early =
        rule.conditions().stream().anyMatch(c -> c.operator() == Condition.Operator.UNKNOWN);
    boolean others =
        derivers.stream()
            .filter(other -> target(other).equals(fact) && !value(other).equals(value(rule)))
            .map(other -> Box.of(other.conditions(), dictionary))
            .anyMatch(box -> !box.and(Box.of(rule.conditions(), dictionary)).isEmpty());
    if (early || others || !made.contains(fact)) {
      return Optional.empty();
    }
    FactSet contrary =
        FactSet.all(dictionary.require(fact)).minus(FactSet.words(Set.of(value(rule))));
    return Optional.of(Box.of(rule.conditions(), dictionary).and(Box.of(fact, contrary)));
  }

  /**
   * The box without what excludes itself, as far as one fact at a time shows it; empty where the
   * box cannot be.
   */
  Box narrowed(Box start) {
    Box box = start;
    for (int round = 0; round < MOST_ROUNDS && !box.isEmpty(); round++) {
      Box before = box;
      for (Box exclusion : excluded) {
        box = cut(box, exclusion);
        if (box.isEmpty()) {
          return box;
        }
      }
      if (box.equals(before)) {
        return box;
      }
    }
    return box;
  }

  private Box cut(Box box, Box exclusion) {
    String open = null;
    for (Map.Entry<String, FactSet> set : exclusion.sets().entrySet()) {
      if (!box.of(dictionary.require(set.getKey())).within(set.getValue())) {
        if (open != null) {
          return box; // two facts may still be otherwise
        }
        open = set.getKey();
      }
    }
    if (open == null) {
      return box.with(
          exclusion.facts().iterator().next(), new FactSet(Set.of(), NumberSet.NONE, false));
    }
    FactSet left =
        box.of(dictionary.require(open)).minus(Objects.requireNonNull(exclusion.sets().get(open)));
    return box.replacing(open, left);
  }

  /** A box that may be, and whether facts that rules derive were left free in it. */
  record Alternatives(List<Box> boxes, boolean whole) {
    Alternatives {
      boxes = List.copyOf(boxes);
    }

    boolean isEmpty() {
      return boxes.isEmpty();
    }
  }

  /** The ways in which a box can come about, derived facts replaced by what they follow from. */
  Alternatives alternatives(Box box) {
    List<Box> done = new ArrayList<>();
    Deque<Partial> open = new ArrayDeque<>();
    open.add(new Partial(narrowed(box), Set.of()));
    boolean whole = true;
    while (!open.isEmpty()) {
      Partial partial = open.removeLast();
      if (partial.box.isEmpty()) {
        continue;
      }
      Optional<String> next = next(partial);
      if (next.isEmpty() || done.size() + open.size() > MOST_ALTERNATIVES) {
        whole &= next.isEmpty();
        done.add(partial.box);
        continue;
      }
      Set<String> replaced = new HashSet<>(partial.replaced);
      replaced.add(next.get());
      for (Rule rule : derivers) {
        if (target(rule).equals(next.get())) {
          Box made = Box.of(next.get(), FactSet.words(Set.of(value(rule)))).and(needs(rule));
          open.add(new Partial(narrowed(partial.box.and(made)), replaced));
        }
      }
    }
    return new Alternatives(done, whole);
  }

  private record Partial(Box box, Set<String> replaced) {}

  private Optional<String> next(Partial partial) {
    return partial.box.sets().entrySet().stream()
        .filter(set -> made.contains(set.getKey()) && set.getValue().known())
        .map(Map.Entry::getKey)
        .filter(fact -> !partial.replaced.contains(fact))
        .filter(fact -> !fact.equals("ordinaryOptionsLeft"))
        .sorted()
        .findFirst();
  }

  /** All that is known to hold wherever a rule fires; empty where it cannot fire. */
  Box closed(Rule rule) {
    Box known = closed.get(rule.id());
    if (known == null) {
      known = hull(needs(rule));
      closed.put(rule.id(), known);
    }
    return known;
  }

  /** The smallest box around the ways in which a box can come about. */
  Box hull(Box box) {
    Alternatives ways = alternatives(box);
    if (ways.isEmpty()) {
      return box.replacing("loadPattern", new FactSet(Set.of(), NumberSet.NONE, false));
    }
    Set<String> facts = new LinkedHashSet<>(ways.boxes().get(0).facts());
    ways.boxes().forEach(way -> facts.retainAll(way.facts()));
    Map<String, FactSet> sets = new LinkedHashMap<>();
    for (String fact : facts) {
      FactDefinition definition = dictionary.require(fact);
      FactSet set =
          ways.boxes().stream().map(way -> way.of(definition)).reduce(FactSet::or).orElseThrow();
      sets.put(fact, set);
    }
    return narrowed(new Box(sets).and(box));
  }

  /** Whether the first rule can fire, and wherever it does the second does too. */
  boolean implies(Rule one, Rule other) {
    return !closed(one).isEmpty() && closed(one).within(box(other), dictionary);
  }

  /** Whether two rules cannot fire together. */
  boolean exclude(Rule one, Rule other) {
    return alternatives(needs(one).and(needs(other))).isEmpty();
  }
}
