package underhold.review.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.advice.Condition;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/**
 * All zones whose facts lie in given sets, fact by fact: what conditions that must all hold come
 * to. A fact not named may be anything. All operations are exact over facts that are independent.
 *
 * @param sets the sets, by the name of the fact
 */
record Box(Map<String, FactSet> sets) {
  static final Box ALL = new Box(Map.of());

  Box {
    // In their order, for draws go through them and must be the same at every run.
    sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
  }

  /** The box of some conditions, each cut to what its fact can be. */
  static Box of(List<Condition> conditions, FactDictionary dictionary) {
    Box box = ALL;
    for (Condition condition : conditions) {
      FactDefinition fact = dictionary.require(condition.fact());
      box = box.with(fact.name(), FactSet.of(condition).and(FactSet.all(fact)));
    }
    return box;
  }

  static Box of(String fact, FactSet set) {
    return new Box(Map.of(fact, set));
  }

  Set<String> facts() {
    return sets.keySet();
  }

  /** The box with one fact cut to a set besides. */
  Box with(String fact, FactSet set) {
    Map<String, FactSet> all = new LinkedHashMap<>(sets);
    all.merge(fact, set, FactSet::and);
    return new Box(all);
  }

  /** The box with one fact in that set, whatever it was before. */
  Box replacing(String fact, FactSet set) {
    Map<String, FactSet> all = new LinkedHashMap<>(sets);
    all.put(fact, set);
    return new Box(all);
  }

  /** The box in which one fact may be anything. */
  Box without(String fact) {
    Map<String, FactSet> rest = new LinkedHashMap<>(sets);
    rest.remove(fact);
    return new Box(rest);
  }

  Box and(Box other) {
    Map<String, FactSet> both = new LinkedHashMap<>(sets);
    other.sets.forEach((fact, set) -> both.merge(fact, set, FactSet::and));
    return new Box(both);
  }

  boolean isEmpty() {
    return sets.values().stream().anyMatch(FactSet::isEmpty);
  }

  /** What it says of a fact. */
  FactSet of(FactDefinition fact) {
    FactSet set = sets.get(fact.name());
    return set == null ? FactSet.all(fact) : set;
  }

  /** Whether whatever lies in it lies in the other. */
  boolean within(Box other, FactDictionary dictionary) {
    return isEmpty()
        || other.sets.entrySet().stream()
            .allMatch(set -> of(dictionary.require(set.getKey())).within(set.getValue()));
  }

  /** What lies in it and not in the other, as boxes that do not overlap. */
  List<Box> minus(Box other, FactDictionary dictionary) {
    List<Box> rest = new ArrayList<>();
    Box left = this;
    for (Map.Entry<String, FactSet> set : other.sets.entrySet()) {
      FactSet mine = left.of(dictionary.require(set.getKey()));
      FactSet outside = mine.minus(set.getValue());
      if (!outside.isEmpty()) {
        rest.add(left.replacing(set.getKey(), outside));
      }
      left = left.replacing(set.getKey(), mine.and(set.getValue()));
      if (left.isEmpty()) {
        return rest;
      }
    }
    return rest;
  }

  /** What lies in it and in none of the others. */
  List<Box> minus(List<Box> others, FactDictionary dictionary) {
    List<Box> rest = isEmpty() ? List.of() : List.of(this);
    for (Box other : others) {
      rest = rest.stream().flatMap(box -> box.minus(other, dictionary).stream()).toList();
    }
    return rest;
  }

  /** Whether the facts of a zone lie in it. */
  boolean has(FactView view) {
    return sets.entrySet().stream()
        .allMatch(set -> set.getValue().has(view.fact(set.getKey()).value()));
  }

  /** In words. */
  String text() {
    return sets.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(set -> set.getKey() + " " + set.getValue().text())
        .collect(Collectors.joining(", "));
  }
}
