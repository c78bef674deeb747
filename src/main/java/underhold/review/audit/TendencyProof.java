package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.advice.Effect;
import underhold.advice.Points;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.advice.Truth;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.ZoneViews;

/**
 * Proves an expectation cause by cause: the points of an option are the sum of what each cause
 * gives, so if none gives more as the fact gets worse, the sum does not rise. Each cause is tried
 * on every combination of the values that its rules tell apart, of all facts that they and the
 * rules deriving their facts read; amounts that follow by calculation are free. Where a cause does
 * rise, or the combinations are too many, nothing is proved and sites are tried.
 */
final class TendencyProof {
  /** More combinations than this are not tried one by one. */
  private static final long MOST_COMBINATIONS = 40_000;

  private static final int MOST_KEPT = 12;

  private final Bench bench;
  private final Ladder ladder;
  private final Tendency tendency;
  private final Points points;
  private long combinations;
  private boolean covering;
  private final List<Map<String, FactValue>> contrary = new ArrayList<>();

  TendencyProof(Bench bench, Ladder ladder, Tendency tendency) {
    this.bench = bench;
    this.ladder = ladder;
    this.tendency = tendency;
    this.points = Points.of(bench.pack().weights());
  }

  /** The combinations tried. */
  long combinations() {
    return combinations;
  }

  /** Whether some cause was tried on a covering array instead of every combination. */
  boolean covering() {
    return covering;
  }

  /** Combinations of facts in which some cause rises: places to look at first. */
  List<Map<String, FactValue>> contrary() {
    return contrary;
  }

  /** Whether the expectation is proved. */
  boolean holds() {
    if (followsByCalculation() || tendency.options().contains(SupportOption.REFER)) {
      return false;
    }
    boolean proved = true;
    for (SupportOption option : tendency.options()) {
      for (List<Rule> together : units(option)) {
        proved &= unit(together, option);
      }
    }
    return proved;
  }

  /** Whether amounts are worked out from the fact: then a combination cannot keep them still. */
  private boolean followsByCalculation() {
    return bench.dictionary().all().stream()
            .anyMatch(fact -> ZoneViews.sources(fact.name()).contains(ladder.fact().name()))
        || ladder.fact().name().equals("excavationPosition");
  }

  /** Rules that have to be looked at together: those of one cause; each rule-out by itself. */
  private List<List<Rule>> units(SupportOption option) {
    Map<String, List<Rule>> units = new LinkedHashMap<>();
    for (Rule rule : bench.pack().rules()) {
      if (rule.phase() != Rule.Phase.SCREEN || !rule.action().options().contains(option)) {
        continue;
      }
      if (rule.effect() == Effect.RULE_OUT && tendency.watched().standing()) {
        units.computeIfAbsent("rule " + rule.id(), key -> new ArrayList<>()).add(rule);
      } else if (rule.effect().scores() && tendency.watched().score()) {
        units.computeIfAbsent("cause " + rule.cause(), key -> new ArrayList<>()).add(rule);
      }
    }
    units
        .values()
        .removeIf(
            rules ->
                rules.stream().noneMatch(r -> read(List.of(r)).contains(ladder.fact().name())));
    return List.copyOf(units.values());
  }

  /** The facts that rules read, through the rules that derive them. */
  private Set<String> read(List<Rule> rules) {
    Set<String> read = new LinkedHashSet<>();
    List<Rule> open = new ArrayList<>(rules);
    Set<Rule> seen = new LinkedHashSet<>(open);
    while (!open.isEmpty()) {
      for (String fact : open.remove(open.size() - 1).facts()) {
        read.add(fact);
        for (Rule deriver : bench.reasoning().derivers()) {
          if (Reasoning.target(deriver).equals(fact) && seen.add(deriver)) {
            open.add(deriver);
          }
        }
      }
    }
    return read;
  }

  private boolean unit(List<Rule> rules, SupportOption option) {
    Set<String> facts = read(rules);
    List<Rule> derivers =
        bench.reasoning().derivers().stream()
            .filter(rule -> facts.contains(Reasoning.target(rule)))
            .toList();
    List<Rule> all = new ArrayList<>(rules);
    all.addAll(derivers);
    Map<String, List<@Nullable FactValue>> cells = new LinkedHashMap<>();
    long product = ladder.values().size();
    for (String name : facts) {
      if (!bench.reasoning().isMade(name) && !name.equals(ladder.fact().name())) {
        FactDefinition fact = bench.dictionary().require(name);
        FactSet within = Objects.requireNonNullElse(ladder.given().get(name), FactSet.all(fact));
        List<@Nullable FactValue> values = Cells.of(fact, within, all, bench.trying());
        cells.put(name, values);
        product = Math.min(product * values.size(), MOST_COMBINATIONS + 1);
      }
    }
    List<Box> excluded =
        SiteRelations.EXCLUDED.stream().filter(box -> facts.containsAll(box.facts())).toList();
    List<Rule> outs =
        bench.pack().rules().stream()
            .filter(rule -> rule.effect() == Effect.RULE_OUT && !rules.contains(rule))
            .filter(rule -> rule.action().options().contains(option))
            .filter(rule -> facts.containsAll(rule.facts()))
            .toList();
    Unit unit = new Unit(rules, derivers, excluded, outs);
    if (product > MOST_COMBINATIONS) {
      pairs(new ArrayList<>(cells.entrySet()), unit);
      return false;
    }
    return every(new ArrayList<>(cells.entrySet()), 0, Trying.view(Map.of()), unit);
  }

  /**
   * Rules looked at together.
   *
   * @param derivers the rules that derive what they read
   * @param excluded what no site can be
   * @param outs rules that rule the option out on the same facts: what is out has no points
   */
  private record Unit(List<Rule> rules, List<Rule> derivers, List<Box> excluded, List<Rule> outs) {}

  /** Tries combinations in which each two values of any two facts stand together. */
  private void pairs(List<Map.Entry<String, List<@Nullable FactValue>>> cells, Unit unit) {
    covering = true;
    int[] sizes = cells.stream().mapToInt(cell -> cell.getValue().size()).toArray();
    for (int[] row : Pairwise.rows(sizes)) {
      Map<String, FactValue> values = new LinkedHashMap<>();
      for (int i = 0; i < row.length; i++) {
        FactValue value = cells.get(i).getValue().get(row[i]);
        if (value != null) {
          values.put(cells.get(i).getKey(), value);
        }
      }
      steady(Trying.view(values), unit);
    }
  }

  private boolean every(
      List<Map.Entry<String, List<@Nullable FactValue>>> cells, int at, FactView view, Unit unit) {
    if (at == cells.size()) {
      return steady(view, unit);
    }
    boolean steady = true;
    FactDefinition fact = bench.dictionary().require(cells.get(at).getKey());
    for (@Nullable FactValue value : cells.get(at).getValue()) {
      FactView next = value == null ? view : view.with(new Fact(fact, Origin.STATED, value, ""));
      steady &= every(cells, at + 1, next, unit);
    }
    return steady;
  }

  private boolean steady(FactView view, Unit unit) {
    double best = Double.POSITIVE_INFINITY;
    for (FactValue value : ladder.values()) {
      FactView stated = view.with(new Fact(ladder.fact(), Origin.STATED, value, ""));
      FactView complete = complete(stated, unit.derivers);
      combinations++;
      if (unit.excluded.stream().anyMatch(box -> box.has(complete))
          || unit.outs.stream().anyMatch(rule -> rule.holds(complete) == Truth.TRUE)) {
        continue;
      }
      double given = gives(unit, complete);
      if (given > best) {
        if (contrary.size() < MOST_KEPT) {
          contrary.add(values(stated));
        }
        return false;
      }
      best = Math.min(best, given);
    }
    return true;
  }

  private static Map<String, FactValue> values(FactView stated) {
    Map<String, FactValue> values = new LinkedHashMap<>();
    for (Fact fact : stated.present()) {
      fact.maybe().ifPresent(value -> values.put(fact.name(), value));
    }
    return values;
  }

  /** What the rules give the option: points for less against; less where one rules it out. */
  private double gives(Unit unit, FactView view) {
    double most = 0;
    double least = 0;
    for (Rule rule : unit.rules) {
      if (rule.holds(view) != Truth.TRUE) {
        continue;
      }
      if (rule.effect() == Effect.RULE_OUT) {
        return -1;
      }
      double weight = points.of(Objects.requireNonNull(rule.action().strength()));
      if (Speaking.speaksFor(rule)) {
        most = Math.max(most, weight);
      } else {
        least = Math.max(least, weight);
      }
    }
    return most - least;
  }

  private FactView complete(FactView start, List<Rule> derivers) {
    FactView view = start;
    boolean changed = true;
    while (changed) { // ends: each round makes at least one more fact known
      changed = false;
      List<Fact> found = new ArrayList<>();
      Set<String> names = new LinkedHashSet<>();
      for (Rule rule : derivers) {
        FactDefinition fact = bench.dictionary().require(Reasoning.target(rule));
        if (view.fact(fact.index()).value() == null
            && rule.holds(view) == Truth.TRUE
            && names.add(fact.name())) {
          FactValue value = new FactValue.Choice(Reasoning.value(rule));
          found.add(new Fact(fact, Origin.DERIVED, value, ""));
        }
      }
      if (!found.isEmpty()) {
        view = view.with(found);
        changed = true;
      }
    }
    return view;
  }
}
