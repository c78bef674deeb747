package underhold.consult.turning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactValue;

/**
 * One fact changed.
 *
 * @param was the fact as it is
 * @param tried a value for which the answer turns
 * @param from the least value for which it turns; null for words and where the range does not end
 * @param to the greatest value for which it turns; null for words and where the range does not end
 * @param atFrom whether it turns at {@code from} itself
 * @param atTo whether it turns at {@code to} itself
 * @param alike values without a range that turn it alike, the one tried first
 */
public record Change(
    Fact was,
    FactValue tried,
    @Nullable Quantity from,
    @Nullable Quantity to,
    boolean atFrom,
    boolean atTo,
    List<FactValue> alike) {
  private static final double FAR = 4;

  /** A fact that takes another word, or one value of which no range is known. */
  static Change to(Fact was, FactValue tried) {
    return new Change(was, tried, null, null, false, false, List.of(tried));
  }

  /** The same change by other values as well. */
  Change or(Change other) {
    List<FactValue> both = new ArrayList<>(alike);
    both.addAll(other.alike);
    return new Change(was, tried, from, to, atFrom, atTo, List.copyOf(both));
  }

  public FactDefinition fact() {
    return was.definition();
  }

  /** Whether nobody knows the fact as yet. */
  public boolean open() {
    return was.value() == null;
  }

  /**
   * Whether an amount that somebody stated would have to be more than four times as large
   * (judgement).
   */
  boolean farFetched() {
    if (!(was.value() instanceof FactValue.Amount before)
        || !(tried instanceof FactValue.Amount after)
        || before.quantity().measure() == Measure.SPEED) {
      return false;
    }
    double now = Math.abs(before.quantity().si());
    return now > 0 && Math.abs(after.quantity().si()) > FAR * now;
  }

  /** Whether it is a decision, or what the job is, rather than something that can turn out so. */
  public boolean decided() {
    return Costs.decided(was.name()) && !open();
  }

  /** Whether values are known between which the answer turns. */
  public boolean ranged() {
    return from != null || to != null;
  }

  /** Whether the answer turns for a value, as far as this change tells. */
  public boolean covers(FactValue value) {
    if (!(value instanceof FactValue.Amount amount) || !ranged()) {
      return value.equals(tried);
    }
    double si = amount.quantity().si();
    boolean above = from == null || (atFrom ? si >= from.si() : si > from.si());
    boolean below = to == null || (atTo ? si <= to.si() : si < to.si());
    return above && below;
  }
}
