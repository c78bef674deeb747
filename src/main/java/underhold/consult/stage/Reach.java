package underhold.consult.stage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/** What comes before what in a plan, through any number of stages. */
final class Reach {
  private final Map<String, Set<String>> before;
  private final List<String> order;

  private Reach(Map<String, Set<String>> before, List<String> order) {
    this.before = before;
    this.order = order;
  }

  /** Reads the links between stages; those that name no stage are passed over. */
  static Reach of(Collection<PlanStage> stages) {
    Map<String, Integer> place = new LinkedHashMap<>();
    stages.forEach(stage -> place.putIfAbsent(stage.id(), place.size()));
    Map<String, List<String>> next = new HashMap<>();
    Map<String, Integer> waiting = new HashMap<>();
    for (PlanStage stage : stages) {
      List<String> links =
          stage.after().stream().map(Link::before).filter(place::containsKey).distinct().toList();
      waiting.put(stage.id(), links.size());
      links.forEach(id -> next.computeIfAbsent(id, key -> new ArrayList<>()).add(stage.id()));
    }
    return sorted(place, next, waiting);
  }

  /** Stage by stage, those without anything left before them; the first named first. */
  private static Reach sorted(
      Map<String, Integer> place, Map<String, List<String>> next, Map<String, Integer> waiting) {
    PriorityQueue<String> free =
        new PriorityQueue<>(Comparator.comparingInt(id -> place.getOrDefault(id, 0)));
    place.keySet().stream().filter(id -> waiting.getOrDefault(id, 0) == 0).forEach(free::add);
    Map<String, Set<String>> before = new HashMap<>();
    place.keySet().forEach(id -> before.put(id, new HashSet<>()));
    List<String> order = new ArrayList<>();
    while (!free.isEmpty()) {
      String id = free.remove();
      order.add(id);
      for (String later : next.getOrDefault(id, List.of())) {
        Set<String> known = before.computeIfAbsent(later, key -> new HashSet<>());
        known.add(id);
        known.addAll(before.getOrDefault(id, Set.of()));
        if (waiting.merge(later, -1, Integer::sum) == 0) {
          free.add(later);
        }
      }
    }
    return new Reach(before, order);
  }

  /** An order that keeps every link; shorter than the plan where links close a circle. */
  List<String> order() {
    return order;
  }

  /** Whether one stage always comes before another. */
  boolean isBefore(String one, String other) {
    return before.getOrDefault(other, Set.of()).contains(one);
  }

  /** Whether two different stages may go on at one time. */
  boolean mayOverlap(String one, String other) {
    return !one.equals(other) && !isBefore(one, other) && !isBefore(other, one);
  }

  /** Whether there is a way along the links from one stage to another. */
  static boolean leads(Map<String, List<String>> next, String from, String to) {
    Set<String> seen = new HashSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String id = open.pop();
      if (id.equals(to)) {
        return true;
      }
      if (seen.add(id)) {
        next.getOrDefault(id, List.of()).forEach(open::push);
      }
    }
    return false;
  }
}
