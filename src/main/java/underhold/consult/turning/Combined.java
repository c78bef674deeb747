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
import underhold.threads.AllProcessors;

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
    Ahead ahead = new Ahead(goal, combinations, found.keySet());
    for (int i = 0; i < combinations.size(); i++) {
      List<Promise.Part> parts = combinations.get(i);
      Set<String> names = names(parts);
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
      if (ahead.reaches(i) && needsAll(goal, parts)) {
        Map<String, FactValue> values = values(parts);
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
      if (reaches(goal, fewer)) {
        return false;
      }
    }
    return true;
  }

  private boolean reaches(Goal goal, List<Promise.Part> parts) {
    Map<String, FactValue> values = values(parts);
    return goal.met(trying, values) && trying.possible(values);
  }

  /** Tries the next few combinations side by side; those of facts already found are left out. */
  private final class Ahead {
    private static final int FEW = 12;

    private final Goal goal;
    private final List<List<Promise.Part>> combinations;
    private final Set<Set<String>> found;
    private final Map<Integer, Boolean> known = new HashMap<>();
    private int next;

    Ahead(Goal goal, List<List<Promise.Part>> combinations, Set<Set<String>> found) {
      this.goal = goal;
      this.combinations = combinations;
      this.found = found;
    }

    boolean reaches(int place) {
      if (!known.containsKey(place)) {
        next = Math.max(next, place);
        List<Integer> few = new ArrayList<>();
        for (; few.size() < FEW && next < combinations.size(); next++) {
          if (!found.contains(names(combinations.get(next)))) {
            few.add(next);
          }
        }
        List<Boolean> tried =
            AllProcessors.each(few, one -> Combined.this.reaches(goal, combinations.get(one)));
        for (int i = 0; i < few.size(); i++) {
          known.put(few.get(i), tried.get(i));
        }
      }
      return Boolean.TRUE.equals(known.get(place));
    }
  }

  private static Set<String> names(List<Promise.Part> parts) {
    Set<String> names = new HashSet<>();
    parts.forEach(part -> names.add(part.name()));
    return names;
  }

  private static Map<String, FactValue> values(List<Promise.Part> parts) {
    Map<String, FactValue> values = new LinkedHashMap<>();
    parts.forEach(part -> values.put(part.name(), part.single().value()));
    return values;
  }
}
