package underhold.classroom;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import underhold.advice.PairOrder;
import underhold.consult.scheme.OrderWanted;

/** The words for an order of work between two zones. */
public final class OrderWords {
  private OrderWords() {}

  /** All of them, with what they mean. */
  public static List<Named> all() {
    return Arrays.stream(PairOrder.values())
        .map(order -> new Named(word(order), order.sentence("ONE", "OTHER")))
        .toList();
  }

  /** The word for an order that the rules ask for. */
  public static String word(OrderWanted wanted) {
    return word(wanted.order());
  }

  /** The order of that word. */
  static Optional<PairOrder> find(String word) {
    return Arrays.stream(PairOrder.values()).filter(order -> word(order).equals(word)).findFirst();
  }

  /** {@code carries-before-digs}. */
  static String word(PairOrder order) {
    return order.word().replace("first-", "").replace("second-", "");
  }
}
