package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.site.FactDefinition;
import underhold.site.ZoneViews;

/**
 * Facts that follow from themselves. Value by value: a rule that derives a value because another
 * fact has a value which follows from the first. A rule that asks that its own fact is not yet
 * known makes no circle; nor do two facts each of which can give the other another value.
 */
final class DerivedCircles implements Analysis {
  static final String NAME = "circles";

  @Override
  public String name() {
    return NAME;
  }

  /** A fact with one value; any value where it follows by calculation. */
  private record Node(String fact, String value) {}

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Does any derived fact follow from itself?");
    Map<Node, Set<Node>> from = new LinkedHashMap<>();
    Map<Node, Set<String>> by = new LinkedHashMap<>();
    for (Rule rule : bench.reasoning().derivers()) {
      Node target = new Node(Reasoning.target(rule), Reasoning.value(rule));
      by.computeIfAbsent(target, node -> new TreeSet<>()).add(rule.id());
      for (Condition condition : rule.conditions()) {
        if (condition.operator() != Condition.Operator.UNKNOWN) {
          from.computeIfAbsent(target, node -> new LinkedHashSet<>())
              .addAll(nodes(condition, bench));
        }
      }
      found.result(Method.PROVED);
    }
    Set<Set<String>> told = new LinkedHashSet<>();
    for (Node start : from.keySet()) {
      List<Node> circle = circle(start, from);
      Set<String> rules = new TreeSet<>();
      circle.forEach(node -> rules.addAll(by.getOrDefault(node, Set.of())));
      if (!circle.isEmpty() && told.add(facts(circle))) {
        found.defect(
            Defect.proved(
                NAME,
                List.copyOf(rules),
                "A fact follows from itself: "
                    + String.join(
                        " from ", circle.stream().map(n -> n.fact + " " + n.value).toList())
                    + "."));
      }
    }
    found.note(
        "Calculated facts follow from amounts only, and no rule derives an amount; they cannot close a circle through rules.");
    return found.done();
  }

  private static Set<String> facts(List<Node> circle) {
    Set<String> facts = new TreeSet<>();
    circle.forEach(node -> facts.add(node.fact));
    return facts;
  }

  private static List<Node> nodes(Condition condition, Bench bench) {
    FactDefinition fact = bench.dictionary().require(condition.fact());
    if (!fact.kind().isNumber()) {
      return condition.words().stream().map(word -> new Node(fact.name(), word)).toList();
    }
    return ZoneViews.sources(fact.name()).stream().map(source -> new Node(source, "")).toList();
  }

  /** The way from a node back to itself, itself first and last; empty where there is none. */
  private static List<Node> circle(Node start, Map<Node, Set<Node>> from) {
    Map<Node, Node> reached = new LinkedHashMap<>();
    List<Node> open = new ArrayList<>(List.of(start));
    while (!open.isEmpty()) {
      Node node = open.remove(0);
      for (Node next : from.getOrDefault(node, Set.of())) {
        if (next.equals(start)) {
          List<Node> way = new ArrayList<>(List.of(start));
          for (Node back = node;
              !back.equals(start);
              back = Objects.requireNonNull(reached.get(back))) {
            way.add(1, back);
          }
          way.add(start);
          return way;
        }
        if (!next.equals(start) && reached.putIfAbsent(next, node) == null) {
          open.add(next);
        }
      }
    }
    return List.of();
  }
}
