package underhold.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import underhold.site.FactView;

/**
 * Finds the rules whose conditions all hold by looking at each fact once: for every value of a fact
 * it is known beforehand which rules it makes fail. So twice the rules take little longer.
 */
final class RuleIndex {
  private final int count;
  private final List<Row> rows = new ArrayList<>();

  /** A condition of a rule. */
  private record Use(int rule, Condition condition) {}

  /**
   * What the values of one fact do.
   *
   * @param fact its place in the dictionary
   * @param words for each word that a rule compares it with, the rules that fail with it
   * @param otherwise the rules that fail with any other word
   * @param limits the limits that rules compare it with, in order
   * @param between the rules that fail below the first limit, at it, between it and the next, and
   *     so on
   * @param unknown the rules that do not hold while nobody knows it
   */
  private record Row(
      int fact,
      Map<String, BitSet> words,
      BitSet otherwise,
      double[] limits,
      BitSet[] between,
      BitSet unknown) {}

  RuleIndex(List<Rule> rules) {
    this.count = rules.size();
    Map<Integer, List<Use>> uses = new TreeMap<>();
    for (int i = 0; i < rules.size(); i++) {
      for (Condition condition : rules.get(i).conditions()) {
        uses.computeIfAbsent(condition.index(), fact -> new ArrayList<>())
            .add(new Use(i, condition));
      }
    }
    uses.forEach((fact, list) -> rows.add(row(fact, list)));
  }

  private static Row row(int fact, List<Use> uses) {
    double[] limits =
        uses.stream()
            .filter(use -> use.condition().operator().isNumeric())
            .mapToDouble(use -> use.condition().threshold())
            .sorted()
            .distinct()
            .toArray();
    BitSet[] between = new BitSet[2 * limits.length + 1];
    for (int place = 0; place < between.length; place++) {
      between[place] = new BitSet();
    }
    Map<String, BitSet> words = new HashMap<>();
    uses.forEach(use -> use.condition().words().forEach(word -> words.put(word, new BitSet())));
    BitSet otherwise = new BitSet();
    BitSet unknown = new BitSet();
    for (Use use : uses) {
      Condition condition = use.condition();
      if (condition.operator() == Condition.Operator.UNKNOWN) {
        words.values().forEach(failing -> failing.set(use.rule()));
        otherwise.set(use.rule());
        Arrays.stream(between).forEach(failing -> failing.set(use.rule()));
        continue;
      }
      unknown.set(use.rule());
      if (condition.operator().isNumeric()) {
        int at = 2 * Arrays.binarySearch(limits, condition.threshold()) + 1;
        for (int place = 0; place < between.length; place++) {
          between[place].set(
              use.rule(), between[place].get(use.rule()) || !holds(condition, place - at));
        }
      } else {
        otherwise.set(use.rule());
        words.forEach(
            (word, failing) -> {
              if (!condition.words().contains(word)) {
                failing.set(use.rule());
              }
            });
      }
    }
    return new Row(fact, words, otherwise, limits, between, unknown);
  }

  /** Whether a numeric condition holds for values on that side of its limit: below, at or above. */
  private static boolean holds(Condition condition, int side) {
    return switch (condition.operator()) {
      case BELOW -> side < 0;
      case AT_MOST -> side <= 0;
      case ABOVE -> side > 0;
      case AT_LEAST -> side >= 0;
      case IS, IN, UNKNOWN ->
          throw new IllegalStateException(condition.text() + " compares no numbers");
    };
  }

  /** The places of the rules all of whose conditions hold for a view. */
  BitSet holding(FactView view) {
    BitSet not = new BitSet(count);
    for (Row row : rows) {
      not.or(failing(row, view));
    }
    not.flip(0, count);
    return not;
  }

  private static BitSet failing(Row row, FactView view) {
    String word = view.word(row.fact());
    if (word != null) {
      BitSet known = row.words().get(word);
      return known == null ? row.otherwise() : known;
    }
    Double number = view.number(row.fact());
    return number == null ? row.unknown() : row.between()[place(row.limits(), number)];
  }

  private static int place(double[] limits, double number) {
    int found = Arrays.binarySearch(limits, number);
    return found >= 0 ? 2 * found + 1 : 2 * (-found - 1);
  }
}
