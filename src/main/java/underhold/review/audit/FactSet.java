package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import underhold.advice.Condition;
import underhold.site.FactDefinition;
import underhold.site.FactValue;
import underhold.site.ZoneViews;

/**
 * A set of values of one fact, that nobody knows it among them.
 *
 * @param words the words in it; empty for an amount
 * @param numbers the amounts in it, in the inside unit; empty for a fact of words
 * @param unknown whether "nobody knows" is in it
 */
record FactSet(Set<String> words, NumberSet numbers, boolean unknown) {
  FactSet {
    words = Set.copyOf(words);
  }

  /**
   * All that a fact can be. An amount that is only ever stated lies in its range; one that may
   * follow by calculation may lie outside, but a ratio or a depth that cannot be negative is not.
   */
  static FactSet all(FactDefinition fact) {
    if (!fact.kind().isNumber()) {
      return new FactSet(
          fact.values().stream().map(FactDefinition.Allowed::value).collect(Collectors.toSet()),
          NumberSet.NONE,
          true);
    }
    FactDefinition.Range range = fact.requireRange();
    boolean calculated = !ZoneViews.sources(fact.name()).isEmpty();
    NumberSet numbers =
        !calculated
            ? NumberSet.closed(range.min(), range.max())
            : fact.derived() && range.min() == 0 ? NumberSet.atLeast(0) : NumberSet.ALL;
    return new FactSet(Set.of(), numbers, true);
  }

  /** The values for which a condition holds, whether or not the fact can have them. */
  static FactSet of(Condition condition) {
    double limit = condition.threshold();
    return switch (condition.operator()) {
      case IS, IN -> words(new LinkedHashSet<>(condition.words()));
      case UNKNOWN -> new FactSet(Set.of(), NumberSet.NONE, true);
      case BELOW -> numbers(NumberSet.below(limit));
      case AT_MOST -> numbers(NumberSet.atMost(limit));
      case ABOVE -> numbers(NumberSet.above(limit));
      case AT_LEAST -> numbers(NumberSet.atLeast(limit));
    };
  }

  static FactSet words(Set<String> words) {
    return new FactSet(words, NumberSet.NONE, false);
  }

  static FactSet numbers(NumberSet numbers) {
    return new FactSet(Set.of(), numbers, false);
  }

  boolean isEmpty() {
    return words.isEmpty() && numbers.isEmpty() && !unknown;
  }

  /** Whether the fact is known throughout. */
  boolean known() {
    return !unknown;
  }

  FactSet and(FactSet other) {
    Set<String> both = new LinkedHashSet<>(words);
    both.retainAll(other.words);
    return new FactSet(both, numbers.and(other.numbers), unknown && other.unknown);
  }

  FactSet or(FactSet other) {
    Set<String> either = new LinkedHashSet<>(words);
    either.addAll(other.words);
    return new FactSet(either, numbers.or(other.numbers), unknown || other.unknown);
  }

  FactSet minus(FactSet other) {
    Set<String> rest = new LinkedHashSet<>(words);
    rest.removeAll(other.words);
    return new FactSet(rest, numbers.minus(other.numbers), unknown && !other.unknown);
  }

  boolean within(FactSet other) {
    return other.words.containsAll(words)
        && (other.unknown || !unknown)
        && numbers.within(other.numbers);
  }

  boolean has(@Nullable FactValue value) {
    if (value == null) {
      return unknown;
    }
    return value instanceof FactValue.Amount amount
        ? numbers.has(amount.quantity().si())
        : words.contains(value.text());
  }

  /** In words, amounts in the inside unit of their measure. */
  String text() {
    List<String> parts = new ArrayList<>();
    words.stream().sorted().forEach(parts::add);
    for (NumberSet.Part part : numbers.parts()) {
      parts.add(part(part));
    }
    if (unknown) {
      parts.add("unknown");
    }
    return parts.isEmpty() ? "nothing" : String.join(" or ", parts);
  }

  private static String part(NumberSet.Part part) {
    String low = shown(part.from().at());
    String high = shown(part.to().at());
    if (part.isPoint()) {
      return "exactly " + low;
    }
    boolean fromBottom = Double.isInfinite(part.from().at());
    boolean toTop = Double.isInfinite(part.to().at());
    if (fromBottom && toTop) {
      return "any amount";
    }
    String from = (part.from().above() ? "above " : "from ") + low;
    String to = (part.to().above() ? "up to " : "below ") + high;
    return fromBottom ? to : toTop ? from : from + " " + to;
  }

  private static String shown(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e9
        ? String.valueOf((long) number)
        : String.valueOf((float) number);
  }
}
