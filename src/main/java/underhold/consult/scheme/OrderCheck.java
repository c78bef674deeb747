package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.PairOrder;
import underhold.advice.SupportOption;

/**
 * Whether orders between zones can all be kept at once. Each zone passes six moments, in an order
 * that its method sets: work starts, drilling ends, pits open, supports carry, pits are closed to
 * one wall, the dig goes down. Orders that close a circle contradict each other.
 */
final class OrderCheck {
  private enum Moment {
    STARTS,
    DRILLED,
    OPENS,
    CARRIES,
    CLOSED,
    DIGS
  }

  private record Node(String zone, Moment moment) {}

  private final Map<Node, Set<Node>> after = new HashMap<>();

  private OrderCheck(List<ZoneChoice> zones) {
    zones.forEach(zone -> moments(zone.name(), zone.method()));
  }

  /** The first order that contradicts those before it; empty where all can be kept. */
  static Optional<OrderWanted> contradiction(List<ZoneChoice> zones, List<OrderWanted> orders) {
    OrderCheck check = new OrderCheck(zones);
    return orders.stream().filter(order -> !check.add(order)).findFirst();
  }

  /**
   * The orders that can be kept, one after the other; whatever would close a circle is left out.
   */
  static List<OrderWanted> keepable(
      List<ZoneChoice> zones, List<OrderWanted> firm, List<OrderWanted> wished) {
    OrderCheck check = new OrderCheck(zones);
    firm.forEach(check::add);
    return wished.stream().filter(check::add).toList();
  }

  private void moments(String zone, Optional<SupportOption> method) {
    List<Moment> order = new ArrayList<>(List.of(Moment.STARTS, Moment.DRILLED));
    boolean pitsAreTheSupport = method.filter(SupportOption.PITS::equals).isPresent();
    order.add(pitsAreTheSupport ? Moment.OPENS : Moment.CARRIES);
    order.add(pitsAreTheSupport ? Moment.CARRIES : Moment.OPENS);
    order.add(Moment.CLOSED);
    order.add(Moment.DIGS);
    for (int i = 1; i < order.size(); i++) {
      link(new Node(zone, order.get(i - 1)), new Node(zone, order.get(i)));
    }
  }

  private boolean add(OrderWanted wanted) {
    if (wanted.order() == PairOrder.NOT_OPEN_TOGETHER) {
      return true; // either may come first
    }
    Node before = new Node(wanted.first(), before(wanted.order()));
    Node later = new Node(wanted.second(), later(wanted.order()));
    if (reaches(later, before, new HashSet<>())) {
      return false;
    }
    link(before, later);
    return true;
  }

  private static Moment before(PairOrder order) {
    return switch (order) {
      case DRILLS_BEFORE_PITS -> Moment.DRILLED;
      case CLOSED_BEFORE_DIGS -> Moment.CLOSED;
      case BRACES_BEFORE_LIFTS -> Moment.DIGS;
      case CARRIES_BEFORE_OPENS, CARRIES_BEFORE_DIGS, COMPLETE_BEFORE_STARTS, NOT_OPEN_TOGETHER ->
          Moment.CARRIES;
    };
  }

  private static Moment later(PairOrder order) {
    return switch (order) {
      case CARRIES_BEFORE_DIGS, CLOSED_BEFORE_DIGS, BRACES_BEFORE_LIFTS -> Moment.DIGS;
      case COMPLETE_BEFORE_STARTS -> Moment.STARTS;
      case CARRIES_BEFORE_OPENS, DRILLS_BEFORE_PITS, NOT_OPEN_TOGETHER -> Moment.OPENS;
    };
  }

  private void link(Node before, Node later) {
    after.computeIfAbsent(before, key -> new HashSet<>()).add(later);
  }

  private boolean reaches(Node from, Node to, Set<Node> seen) {
    if (from.equals(to)) {
      return true;
    }
    return seen.add(from)
        && after.getOrDefault(from, Set.of()).stream().anyMatch(next -> reaches(next, to, seen));
  }
}
