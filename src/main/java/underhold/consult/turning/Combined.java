package underhold.consult.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.consult.trial.Outcome;
import underhold.site.FactValue;

/**
 * Changes of two or three facts together, none of which could be left out. Pairs that cannot reach
 * the goal even if every rule they touch counted in full are not tried; the others are tried from
 * the smallest on until enough are found or the number of trials is spent.
 */
final class Combined {
  private static final int MOST_TRIALS = 600;
  private static final int PART_OF_TRIPLES = 24;

  private final Trying trying;
  private final Singles singles;
  private boolean spent;

  Combined(Trying trying, Singles singles) {
    this.trying = trying;
    this.singles = singles;
  }

  /** Whether some combinations were left untried. */
  boolean spent() {
    return spent;
  }

  /** Pairs that reach a goal, the smallest first, one for each two facts. */
  List<TurningPoint> pairs(Goal goal, int wanted) {
    Promise promise = new Promise(trying, goal);
    List<Promise.Part> parts = parts(goal, promise);
    List<List<Promise.Part>> combinations = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        if (!parts.get(i).name().equals(parts.get(j).name())
            && promise.mayReach(parts.get(i), parts.get(j))) {
          combinations.add(List.of(parts.get(i), parts.get(j)));
        }
      }
    }
    return tried(goal, combinations, wanted);
  }

  /** Triples that reach a goal, the smallest first, of the changes that promise most. */
  List<TurningPoint> triples(Goal goal, int wanted) {
    Promise promise = new Promise(trying, goal);
    List<Promise.Part> parts =
        parts(goal, promise).stream()
            .filter(part -> part.gain() > 0 || promise.unblocks(part))
            .sorted(
                Comparator.comparing((Promise.Part part) -> promise.unblocks(part) ? 0 : 1)
                    .thenComparing(part -> -part.gain())
                    .thenComparing(part -> part.single().cost()))
            .limit(PART_OF_TRIPLES)
            .toList();
    List<List<Promise.Part>> combinations = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        for (int k = j + 1; k < parts.size(); k++) {
          List<Promise.Part> three = List.of(parts.get(i), parts.get(j), parts.get(k));
          Set<String> names = new HashSet<>();
          three.forEach(part -> names.add(part.name()));
          if (names.size() == three.size() && promise.mayReach(three)) {
            combinations.add(three);
          }
        }
      }
    }
    return tried(goal, combinations, wanted);
  }

  /** One change for each fact and each thing it does; those that reach the goal alone left out. */
  private List<Promise.Part> parts(Goal goal, Promise promise) {
    List<Promise.Part> parts = new ArrayList<>();
    for (List<Single> fact : singles.byFact()) {
      Map<Object, Promise.Part> kinds = new HashMap<>();
      for (Single single : fact) {
        if (goal.met(single.outcome()) && single.possible()) {
          continue;
        }
        Promise.Part part = promise.part(single);
        if (part.moves()) {
          kinds.merge(part.kind(), part, (a, b) -> a.single().cost() <= b.single().cost() ? a : b);
        }
      }
      parts.addAll(kinds.values());
    }
    parts.sort(Comparator.comparing(part -> part.single().cost()));
    return parts;
  }

  private List<TurningPoint> tried(Goal goal, List<List<Promise.Part>> combinations, int wanted) {
    combinations.sort(
        Comparator.comparing(parts -> parts.stream().mapToDouble(p -> p.single().cost()).sum()));
    Map<Set<String>, TurningPoint> found = new LinkedHashMap<>();
    int trials = 0;
    for (List<Promise.Part> parts : combinations) {
      Set<String> names = new HashSet<>();
      parts.forEach(part -> names.add(part.name()));
      if (found.containsKey(names)) {
        continue;
      }
      if (found.size() == wanted) {
        break;
      }
      if (trials++ == MOST_TRIALS) {
        spent = true;
        break;
      }
      Map<String, FactValue> values = values(parts);
      if (goal.met(trying.leading(values)) && trying.possible(values) && needsAll(goal, parts)) {
        Outcome outcome = trying.outcome(values);
        List<Change> changes =
            parts.stream().map(p -> Change.to(p.single().was(), p.single().value())).toList();
        found.put(names, trying.point(changes, outcome, Set.of(goal.option())));
      }
    }
    return List.copyOf(found.values());
  }

  /** Whether no two of three changes reach the goal by themselves. */
  private boolean needsAll(Goal goal, List<Promise.Part> parts) {
    for (int left = 0; parts.size() > 2 && left < parts.size(); left++) {
      List<Promise.Part> fewer = new ArrayList<>(parts);
      fewer.remove(left);
      Map<String, FactValue> values = values(fewer);
      if (goal.met(trying.leading(values)) && trying.possible(values)) {
        return false;
      }
    }
    return true;
  }

  private static Map<String, FactValue> values(List<Promise.Part> parts) {
    Map<String, FactValue> values = new LinkedHashMap<>();
    parts.forEach(part -> values.put(part.name(), part.single().value()));
    return values;
  }
}
