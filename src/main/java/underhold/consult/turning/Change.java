package underhold.consult.turning;

import org.jspecify.annotations.Nullable;
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
 */
public record Change(
    Fact was,
    FactValue tried,
    @Nullable Quantity from,
    @Nullable Quantity to,
    boolean atFrom,
    boolean atTo) {

  /** A fact that takes another word, or one value of which no range is known. */
  static Change to(Fact was, FactValue tried) {
    return new Change(was, tried, null, null, false, false);
  }

  public FactDefinition fact() {
    return was.definition();
  }

  /** Whether nobody knows the fact as yet. */
  public boolean open() {
    return was.value() == null;
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
