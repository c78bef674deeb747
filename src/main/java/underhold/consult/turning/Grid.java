package underhold.consult.turning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.consult.trial.Changes;
import underhold.consult.trial.TrialValues;
import underhold.consult.trial.Trials;
import underhold.consult.trial.TypedAmounts;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.FactValue;
import underhold.site.FactView;

/**
 * The values to which a fact is changed: every word of the dictionary; for an amount the values
 * worth trying, multiples of what it is, and the values at which an amount that follows from it
 * meets a limit of the rules.
 */
final class Grid {
  private static final double[] MULTIPLES = {0.25, 0.5, 0.67, 0.8, 0.9, 1.1, 1.25, 1.5, 2, 3};
  private static final double PROBE = 1e-3;
  private static final double BESIDE = 0.02;
  private static final double LEAST_BESIDE = 1e-4;

  private final Trials trials;
  private final Changes changes;
  private final TrialValues values;
  private final TypedAmounts amounts;
  private final Map<String, Set<Double>> limits = new HashMap<>();

  Grid(Trials trials, Changes changes) {
    this.trials = trials;
    this.changes = changes;
    RulePack pack = trials.rules().pack();
    this.values = new TrialValues(pack, trials.site().units());
    this.amounts = new TypedAmounts(trials.site().units());
    for (Rule rule : pack.rules()) {
      for (Condition condition : rule.conditions()) {
        if (condition.operator().isNumeric()) {
          limits
              .computeIfAbsent(condition.fact(), key -> new HashSet<>())
              .add(condition.threshold());
        }
      }
    }
  }

  /** The values to try, amounts by size; without the one it has. */
  List<FactValue> of(Fact was) {
    FactDefinition definition = was.definition();
    if (definition.kind() == FactKind.SLOPE) {
      return List.of();
    }
    if (!definition.kind().isNumber()) {
      return values.of(definition).stream().filter(value -> !value.equals(was.value())).toList();
    }
    TreeSet<Double> numbers = new TreeSet<>();
    values.of(definition).forEach(value -> numbers.add(si(value)));
    Double now = was.value() == null ? null : si(was.value());
    if (now != null) {
      for (double multiple : MULTIPLES) {
        numbers.add(now * multiple);
      }
    }
    FactDefinition.Range range = definition.requireRange();
    for (double crossing : crossings(definition, now)) {
      double beside =
          Math.max(BESIDE * Math.abs(crossing), LEAST_BESIDE * (range.max() - range.min()));
      numbers.addAll(List.of(crossing - beside, crossing, crossing + beside));
    }
    numbers.add(range.min());
    numbers.add(range.max());
    numbers.removeIf(number -> number < range.min() || number > range.max());
    if (now != null) {
      numbers.remove(now);
    }
    return numbers.stream().map(number -> amount(definition, number)).distinct().toList();
  }

  /** Where an amount that follows from this one meets a limit, if it follows in a straight line. */
  private List<Double> crossings(FactDefinition definition, @Nullable Double now) {
    FactDefinition.Range range = definition.requireRange();
    double at = now == null ? range.min() + (range.max() - range.min()) / 4 : now;
    double step = PROBE * Math.max(1, Math.abs(at));
    FactView here = view(definition, at);
    FactView there = view(definition, at + step);
    List<Double> crossings = new ArrayList<>();
    for (Map.Entry<String, Set<Double>> entry : limits.entrySet()) {
      int index = here.dictionary().require(entry.getKey()).index();
      Double before = here.number(index);
      Double after = there.number(index);
      if (index == definition.index() || before == null || after == null) {
        continue;
      }
      double slope = (after - before) / step;
      if (slope != 0) {
        entry.getValue().forEach(limit -> crossings.add(at + (limit - before) / slope));
      }
    }
    return crossings;
  }

  private FactView view(FactDefinition definition, double si) {
    return trials.view(changes.with(definition.name(), amount(definition, si)));
  }

  /** An amount of a fact as the site's user would type it. */
  FactValue amount(FactDefinition definition, double si) {
    return amounts.of(definition, si);
  }

  /** The unit in which the site's user reads an amount. */
  String unit(FactDefinition definition) {
    return amounts.unit(definition);
  }

  static double si(FactValue value) {
    if (value instanceof FactValue.Amount amount) {
      return amount.quantity().si();
    }
    throw new IllegalArgumentException(value.text() + " is not an amount");
  }
}
