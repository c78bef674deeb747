package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.FactValue;

/**
 * The values of a fact that some rules tell apart: one word of each set of words that all
 * conditions treat alike; each limit, an amount in each range between limits; and that nobody knows
 * it. What holds for these holds for all values, for the rules can see no difference.
 */
final class Cells {
  private Cells() {}

  /** One value of each cell; null where nobody knows the fact. */
  static List<@Nullable FactValue> of(
      FactDefinition fact, FactSet within, List<Rule> rules, Trying trying) {
    List<Condition> conditions =
        rules.stream()
            .flatMap(rule -> rule.conditions().stream())
            .filter(condition -> condition.fact().equals(fact.name()))
            .toList();
    List<@Nullable FactValue> cells = new ArrayList<>();
    if (fact.kind().isNumber()) {
      numbers(fact, within, conditions, trying).forEach(cells::add);
    } else {
      words(within, conditions).forEach(cells::add);
    }
    if (within.unknown()) {
      cells.add(null);
    }
    return cells;
  }

  private static List<FactValue> words(FactSet within, List<Condition> conditions) {
    Map<String, FactValue> bySignature = new LinkedHashMap<>();
    for (String word : within.words().stream().sorted().toList()) {
      StringBuilder signature = new StringBuilder();
      conditions.forEach(condition -> signature.append(condition.words().contains(word)));
      bySignature.putIfAbsent(signature.toString(), new FactValue.Choice(word));
    }
    return List.copyOf(bySignature.values());
  }

  private static List<FactValue> numbers(
      FactDefinition fact, FactSet within, List<Condition> conditions, Trying trying) {
    if (fact.kind() == FactKind.SLOPE) {
      return List.of();
    }
    FactDefinition.Range range = fact.requireRange();
    TreeSet<Double> cuts = new TreeSet<>(List.of(range.min(), range.max()));
    conditions.stream()
        .filter(condition -> condition.operator().isNumeric())
        .map(Condition::threshold)
        .filter(limit -> limit > range.min() && limit < range.max())
        .forEach(cuts::add);
    TreeSet<Double> values = new TreeSet<>(cuts);
    Optional<Double> before = Optional.empty();
    for (double cut : cuts) {
      before.ifPresent(last -> values.add((last + cut) / 2));
      before = Optional.of(cut);
    }
    return values.stream()
        .filter(value -> within.numbers().has(value))
        .map(value -> trying.amount(fact, value))
        .toList();
  }
}
