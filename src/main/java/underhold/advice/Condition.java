package underhold.advice;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/**
 * One plain condition of a rule: a fact, an operator, and a word, a list of words or a limit.
 *
 * @param fact the fact's name
 * @param operator how it is compared
 * @param words the words it is compared with; empty where it is compared with a limit or with null
 * @param limit the name of the limit; null where it is compared with words or with null
 * @param index the fact's place in the dictionary; -1 until it is looked up
 * @param threshold the limit in the inside unit of its measure; 0 where there is none
 */
public record Condition(
    String fact,
    Operator operator,
    List<String> words,
    @Nullable String limit,
    int index,
    double threshold) {
  private static final int NOT_LOOKED_UP = -1;

  public Condition {
    words = List.copyOf(words);
  }

  /** A condition as written, its fact and limit not yet looked up. */
  static Condition written(
      String fact, Operator operator, List<String> words, @Nullable String limit) {
    return new Condition(fact, operator, words, limit, NOT_LOOKED_UP, 0);
  }

  /** The same condition with its fact and limit looked up, once for all evaluations. */
  Condition lookedUp(FactDictionary dictionary, Limits limits) {
    double value = operator.isNumeric() ? limits.require(limitName()).si() : 0;
    return new Condition(fact, operator, words, limit, dictionary.require(fact).index(), value);
  }

  /** Whether it compares with words. */
  boolean isOfWords() {
    return operator == Operator.IS || operator == Operator.IN;
  }

  /** Whether it compares with one of the limits named. */
  boolean comparesWith(Set<String> limits) {
    return limit != null && limits.contains(limit);
  }

  /** The same condition, with the value of its limit if that is among those given. */
  Condition with(Map<String, Double> limits) {
    Double value = limit == null ? null : limits.get(limit);
    return value == null ? this : new Condition(fact, operator, words, limit, index, value);
  }

  /** The comparisons of the grammar. */
  public enum Operator {
    IS("=="),
    IN("in"),
    UNKNOWN("== null"),
    BELOW("<"),
    AT_MOST("<="),
    ABOVE(">"),
    AT_LEAST(">=");

    private final String symbol;

    Operator(String symbol) {
      this.symbol = symbol;
    }

    /** The operator as written in a rule. */
    public String symbol() {
      return symbol;
    }

    /** Whether it compares with a limit. */
    public boolean isNumeric() {
      return ordinal() >= BELOW.ordinal();
    }
  }

  /** Whether it holds for a view. */
  public Truth holds(FactView view) {
    if (operator == Operator.UNKNOWN) {
      return truth(view.fact(index).value() == null);
    }
    if (operator.isNumeric()) {
      Double number = view.number(index);
      return number == null ? Truth.OPEN : truth(compare(number));
    }
    String word = view.word(index);
    return word == null ? Truth.OPEN : truth(words.contains(word));
  }

  /** The name of the limit of a numeric condition. */
  public String limitName() {
    if (limit == null) {
      throw new IllegalStateException(fact + " is not compared with a limit");
    }
    return limit;
  }

  private boolean compare(double number) {
    return switch (operator) {
      case BELOW -> number < threshold;
      case AT_MOST -> number <= threshold;
      case ABOVE -> number > threshold;
      case AT_LEAST -> number >= threshold;
      case IS, IN, UNKNOWN -> throw new IllegalStateException(operator + " compares no numbers");
    };
  }

  private static Truth truth(boolean value) {
    return value ? Truth.TRUE : Truth.FALSE;
  }

  /** The condition as written in a rule. */
  public String text() {
    return switch (operator) {
      case IS -> fact + " == \"" + words.get(0) + '"';
      case UNKNOWN -> fact + " == null";
      case IN -> fact + " in (\"" + String.join("\", \"", words) + "\")";
      default -> fact + ' ' + operator.symbol() + " limit(\"" + limit + "\")";
    };
  }
}
