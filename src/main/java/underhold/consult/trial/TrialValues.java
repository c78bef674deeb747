package underhold.consult.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import underhold.advice.Condition;
import underhold.advice.Limits;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.FactValue;

/**
 * The values tried for an unknown fact: every word of the dictionary; for an amount the limits the
 * rules compare it with, just below, at and above, and a spread over its range.
 */
public final class TrialValues {
  private static final double[] SPREAD = {0.0, 0.01, 0.03, 0.06, 0.1, 0.2, 0.5};
  private static final double NEAR = 0.1;

  private final RulePack pack;
  private final TypedAmounts amounts;
  private final Map<String, List<FactValue>> known = new ConcurrentHashMap<>();

  /** The values for the rules of a pack, amounts in a system of units. */
  public TrialValues(RulePack pack, UnitSystem units) {
    this.pack = pack;
    this.amounts = new TypedAmounts(units);
  }

  /** The values worth trying, in the order of the dictionary or by size. */
  public List<FactValue> of(FactDefinition definition) {
    return known.computeIfAbsent(definition.name(), name -> made(definition));
  }

  private List<FactValue> made(FactDefinition definition) {
    if (!definition.kind().isNumber()) {
      return definition.values().stream()
          .map(allowed -> (FactValue) new FactValue.Choice(allowed.value()))
          .toList();
    }
    if (definition.kind() == FactKind.SLOPE) {
      return List.of();
    }
    FactDefinition.Range range = definition.requireRange();
    List<FactValue> values = new ArrayList<>();
    for (double si : numbers(definition, range)) {
      values.add(amounts.of(definition, si));
    }
    return values.stream().distinct().toList();
  }

  private TreeSet<Double> numbers(FactDefinition definition, FactDefinition.Range range) {
    TreeSet<Double> numbers = new TreeSet<>();
    Limits limits = pack.limits();
    for (Rule rule : pack.rules()) {
      for (Condition condition : rule.conditions()) {
        if (condition.fact().equals(definition.name()) && condition.operator().isNumeric()) {
          double limit = limits.require(condition.limitName()).si();
          double step = limit == 0 ? NEAR : NEAR * Math.abs(limit);
          numbers.add(amounts.round(definition, limit - step));
          numbers.add(limit);
          numbers.add(amounts.round(definition, limit + step));
        }
      }
    }
    if (numbers.isEmpty()) {
      for (double part : SPREAD) {
        numbers.add(amounts.round(definition, range.min() + part * (range.max() - range.min())));
      }
    }
    numbers.removeIf(si -> si < range.min() || si > range.max());
    return numbers;
  }
}
