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

  /** What the values of one fact do. */
  private static final class Row {
    private final int fact;

    /** For each word that a rule compares it with, the rules that fail with it. */
    private final Map<String, BitSet> words = new HashMap<>();

    /** The rules that fail with any other word. */
    private final BitSet otherwise = new BitSet();

    /** The rules that do not hold while nobody knows it. */
    private final BitSet unknown = new BitSet();

    /** The limits that rules compare it with, in order. */
    private final double[] limits;

    /** The rules that fail below the first limit, at it, between it and the next, and so on. */
    private final BitSet[] between;

    Row(int fact, List<Use> uses) {
      this.fact = fact;
      this.limits =
          uses.stream()
              .filter(use -> use.condition().operator().isNumeric())
              .mapToDouble(use -> use.condition().threshold())
              .sorted()
              .distinct()
              .toArray();
      this.between = new BitSet[2 * limits.length + 1];
      Arrays.setAll(between, place -> new BitSet());
      uses.forEach(use -> use.condition().words().forEach(word -> words.put(word, new BitSet())));
      uses.forEach(this::enter);
    }

    private void enter(Use use) {
      Condition condition = use.condition();
      if (condition.operator() == Condition.Operator.UNKNOWN) {
        words.values().forEach(failing -> failing.set(use.rule()));
        otherwise.set(use.rule());
        Arrays.stream(between).forEach(failing -> failing.set(use.rule()));
        return;
      }
      unknown.set(use.rule());
      if (condition.operator().isNumeric()) {
        int at = place(condition.threshold());
        for (int place = 0; place < between.length; place++) {
          if (!holds(condition, place - at)) {
            between[place].set(use.rule());
          }
        }
        return;
      }
      otherwise.set(use.rule());
      words.forEach(
          (word, failing) -> {
            if (!condition.words().contains(word)) {
              failing.set(use.rule());
            }
          });
    }

    /** The rules that fail, or are open, in a view because of this fact. */
    BitSet failing(FactView view) {
      String word = view.word(fact);
      if (word != null) {
        BitSet known = words.get(word);
        return known == null ? otherwise : known;
      }
      Double number = view.number(fact);
      return number == null ? unknown : between[place(number)];
    }

    /** Where a number lies: odd at a limit, even between two. A nought has no sign. */
    private int place(double number) {
      int found = Arrays.binarySearch(limits, number + 0.0);
      return found >= 0 ? 2 * found + 1 : 2 * (-found - 1);
    }
  }

  RuleIndex(List<Rule> rules) {
    this.count = rules.size();
    Map<Integer, List<Use>> uses = new TreeMap<>();
    for (int i = 0; i < rules.size(); i++) {
      for (Condition condition : rules.get(i).conditions()) {
        uses.computeIfAbsent(condition.index(), fact -> new ArrayList<>())
            .add(new Use(i, condition));
      }
    }
    uses.forEach((fact, list) -> rows.add(new Row(fact, list)));
  }

  /**
   * The places of the rules that do not hold because of one single fact: among them are all that
   * miss by one condition, and some that ask for two things of that fact.
   */
  BitSet missedByOneFact(FactView view) {
    BitSet once = new BitSet(count);
    BitSet more = new BitSet(count);
    for (Row row : rows) {
      BitSet failing = row.failing(view);
      if (failing.intersects(once)) {
        BitSet again = (BitSet) failing.clone();
        again.and(once);
        more.or(again);
      }
      once.or(failing);
    }
    once.andNot(more);
    return once;
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
      not.or(row.failing(view));
    }
    not.flip(0, count);
    return not;
  }
}
