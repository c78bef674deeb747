package underhold.consult.turning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import underhold.consult.trial.Outcome;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.site.FactDefinition;
import underhold.site.FactValue;

/**
 * From single changes of one fact to the words, and the ranges of an amount, that turn an answer.
 */
final class Runs {
  private static final int HALVINGS = 18;
  private static final int MOST_FIGURES = 6;
  private static final double NEAR = 1e-4;

  /** Nearer than this to the least or greatest value accepted is that value. */
  private static final double HAIR = 1e-3;

  private static final double BEYOND = 0.01;
  private static final double PART = 0.25;

  private final Trying trying;
  private final Grid grid;
  private final List<Single> singles;
  private final Predicate<Outcome> turns;
  private final Predicate<Map<String, FactValue>> turnsWith;

  /**
   * @param singles the changes of one fact, amounts by size
   * @param turns whether an outcome is what is looked for
   * @param turnsWith whether facts changed bring it about
   */
  Runs(
      Trying trying,
      Grid grid,
      List<Single> singles,
      Predicate<Outcome> turns,
      Predicate<Map<String, FactValue>> turnsWith) {
    this.trying = trying;
    this.grid = grid;
    this.singles = singles;
    this.turns = turns;
    this.turnsWith = turnsWith;
  }

  /** A change that turns, how the options stand then, and how large it is. */
  record Turn(Change change, Outcome after, double cost) {}

  List<Turn> turns() {
    List<Turn> found = new ArrayList<>();
    if (singles.isEmpty()) {
      return found;
    }
    if (!singles.get(0).was().definition().kind().isNumber()) {
      for (Single single : singles) {
        if (turned(single)) {
          Change change = Change.to(single.was(), single.value());
          found.add(new Turn(change, single.outcome(), single.cost()));
        }
      }
      return found;
    }
    for (int i = 0; i < singles.size(); i++) {
      if (turned(singles.get(i)) && (i == 0 || !follows(i - 1))) {
        int last = i;
        while (last + 1 < singles.size() && follows(last)) {
          last++;
        }
        found.add(run(i, last));
        i = last;
      }
    }
    return found;
  }

  private boolean turned(Single single) {
    return turns.test(single.outcome()) && single.possible();
  }

  /** Whether the change after this one belongs to the same run: the value of today ends a run. */
  private boolean follows(int index) {
    Single one = singles.get(index);
    Single next = singles.get(index + 1);
    boolean across =
        one.was().value() != null
            && Grid.si(one.value()) < Grid.si(one.was().value())
            && Grid.si(next.value()) > Grid.si(one.was().value());
    return turned(one) && turned(next) && !across;
  }

  private Turn run(int first, int last) {
    Single low = singles.get(first);
    Single high = singles.get(last);
    Double now = low.was().value() == null ? null : Grid.si(low.was().value());
    Double below = first > 0 ? (Double) Grid.si(singles.get(first - 1).value()) : null;
    Double above =
        last + 1 < singles.size() ? (Double) Grid.si(singles.get(last + 1).value()) : null;
    double least = Grid.si(low.value());
    double most = Grid.si(high.value());
    if (now != null && now < least && (below == null || below < now)) {
      below = now;
    }
    if (now != null && now > most && (above == null || above > now)) {
      above = now;
    }
    FactDefinition.Range range = low.was().definition().requireRange();
    boolean fromLeast = least <= range.min() + HAIR * Math.abs(range.min());
    boolean toMost = most >= range.max() - HAIR * Math.abs(range.max());
    Quantity from = below == null || fromLeast ? null : end(low, below, least);
    Quantity to = above == null || toMost ? null : end(high, above, most);
    boolean atFrom = from != null && turnsAt(low, from.si());
    boolean atTo = to != null && turnsAt(low, to.si());
    boolean upward = now == null || now < least;
    Single nearest = upward ? low : high;
    FactValue tried = upward ? tried(low, from, atFrom, least, 1) : tried(high, to, atTo, most, -1);
    Change change = new Change(low.was(), tried, from, to, atFrom, atTo, List.of(tried));
    Outcome after = trying.outcome(Map.of(low.name(), tried));
    return new Turn(change, after, nearest.cost());
  }

  /** The end of a run between a value that does not turn and one that does, by halving. */
  private Quantity end(Single single, double outside, double inside) {
    double not = outside;
    double does = inside;
    boolean whole = single.was().definition().requireRange().measure() == Measure.COUNT;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = whole ? Math.floor((not + does) / 2) : (not + does) / 2;
      if (whole && Math.abs(does - not) <= 1) {
        break;
      }
      if (turnsAt(single, middle)) {
        does = middle;
      } else {
        not = middle;
      }
    }
    FactDefinition definition = single.was().definition();
    double close = NEAR * Math.abs(inside - outside);
    if (!whole && Math.abs(does - outside) <= close) {
      return quantity(definition, outside); // it turns as soon as that value is passed
    }
    double found = does;
    Quantity neat =
        neat(
            definition,
            found,
            si -> Math.abs(si - found) <= NEAR * Math.max(Math.abs(found), NEAR));
    return neat == null ? quantity(definition, found) : neat;
  }

  /** A value inside a run near its end, in few figures where few will do. */
  private FactValue tried(
      Single single, @Nullable Quantity end, boolean atEnd, double fallback, int side) {
    FactDefinition definition = single.was().definition();
    if (end != null && atEnd && turnsAt(single, parsed(end).si())) {
      return new FactValue.Amount(parsed(end));
    }
    double start = end == null ? fallback : end.si();
    double beyond =
        start + side * Math.max(BEYOND * Math.abs(start), PART * Math.abs(fallback - start));
    for (double aim : new double[] {beyond, fallback}) {
      Quantity neat = neat(definition, aim, si -> turnsAt(single, si));
      if (neat != null) {
        return new FactValue.Amount(neat);
      }
    }
    return single.value();
  }

  /** The value in the fewest figures that will do, as it would be typed; null if none will. */
  private @Nullable Quantity neat(FactDefinition definition, double si, DoublePredicate wanted) {
    Quantity rough = quantity(definition, si);
    double inUnit = rough.in(rough.unit());
    for (int figures = 1; figures <= MOST_FIGURES; figures++) {
      BigDecimal rounded = new BigDecimal(inUnit).round(new MathContext(figures));
      String text = (rounded.toPlainString() + " " + rough.unit()).strip();
      Quantity typed = read(text, rough.measure());
      if (typed != null && wanted.test(typed.si())) {
        return typed;
      }
    }
    return null;
  }

  private Quantity quantity(FactDefinition definition, double si) {
    FactDefinition.Range range = definition.requireRange();
    return Quantity.of(si, range.measure(), grid.unit(definition));
  }

  private static Quantity parsed(Quantity quantity) {
    Quantity read = read(quantity.text(), quantity.measure());
    return read == null ? quantity : read;
  }

  private static @Nullable Quantity read(String text, Measure measure) {
    return Quantity.parse(text, measure).fold(parsed -> parsed.quantity(), rejected -> null);
  }

  private boolean turnsAt(Single single, double si) {
    FactDefinition.Range range = single.was().definition().requireRange();
    if (si < range.min() || si > range.max()) {
      return false;
    }
    FactValue value = new FactValue.Amount(quantity(single.was().definition(), si));
    Map<String, FactValue> values = Map.of(single.name(), value);
    return turnsWith.test(values) && trying.possible(values);
  }
}
