package underhold.consult.scheme;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.PairOrder;
import underhold.advice.SupportOption;

/**
 * One method for each zone, with what the rules between zones say of them together.
 *
 * @param zones the choices, in the order of the site
 * @param points the points of the zones and of the pairs together
 * @param pairPoints those of the pairs alone
 * @param findings what is known to hold between zones
 * @param open what waits for an answer
 * @param orders the orders of work that can be kept: those known, then those kept until an answer
 *     frees them
 * @param dropped orders that nobody's answer has confirmed and that contradict the others
 */
public record Combination(
    List<ZoneChoice> zones,
    int points,
    int pairPoints,
    List<PairFinding> findings,
    List<OpenPairRule> open,
    List<OrderWanted> orders,
    List<OrderWanted> dropped) {
  public Combination {
    zones = List.copyOf(zones);
    findings = List.copyOf(findings);
    open = List.copyOf(open);
    orders = List.copyOf(orders);
    dropped = List.copyOf(dropped);
  }

  /** The combination of choices; empty where a rule rules it out or its orders contradict. */
  static Optional<Combination> of(List<ZoneChoice> zones, PairScreen screen) {
    List<PairVerdict> verdicts = verdicts(zones, screen);
    if (verdicts.stream().anyMatch(PairVerdict::ruledOut)) {
      return Optional.empty();
    }
    List<PairFinding> findings =
        verdicts.stream().flatMap(verdict -> verdict.findings().stream()).toList();
    List<OpenPairRule> open = verdicts.stream().flatMap(v -> v.open().stream()).toList();
    List<OrderWanted> firm = findings.stream().flatMap(Combination::order).toList();
    if (OrderCheck.contradiction(zones, firm).isPresent()) {
      return Optional.empty();
    }
    List<OrderWanted> wished =
        oneWayOnly(zones, firm, open.stream().flatMap(Combination::order).toList());
    List<OrderWanted> kept = OrderCheck.keepable(zones, firm, wished);
    int pairs = verdicts.stream().mapToInt(PairVerdict::points).sum();
    int own = zones.stream().mapToInt(ZoneChoice::points).sum();
    return Optional.of(
        new Combination(
            zones,
            own + pairs,
            pairs,
            findings,
            open,
            Stream.concat(firm.stream(), kept.stream()).toList(),
            wished.stream().filter(order -> !kept.contains(order)).toList()));
  }

  private static List<PairVerdict> verdicts(List<ZoneChoice> zones, PairScreen screen) {
    List<PairVerdict> verdicts = new java.util.ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      for (int j = i + 1; j < zones.size(); j++) {
        verdicts.add(screen.of(zones.get(i), zones.get(j)));
      }
    }
    return verdicts;
  }

  /**
   * Without those of which nobody can say yet which zone comes first: the same order both ways
   * round, where both cannot be. They are asked about and not kept.
   */
  private static List<OrderWanted> oneWayOnly(
      List<ZoneChoice> zones, List<OrderWanted> firm, List<OrderWanted> wished) {
    return wished.stream()
        .filter(
            order ->
                wished.stream()
                    .filter(other -> isTurned(order, other))
                    .noneMatch(other -> contradict(zones, firm, order, other)))
        .toList();
  }

  private static boolean isTurned(OrderWanted one, OrderWanted other) {
    return one.ruleId().equals(other.ruleId())
        && one.first().equals(other.second())
        && one.second().equals(other.first());
  }

  private static boolean contradict(
      List<ZoneChoice> zones, List<OrderWanted> firm, OrderWanted one, OrderWanted other) {
    List<OrderWanted> all = Stream.concat(firm.stream(), Stream.of(one, other)).toList();
    return OrderCheck.contradiction(zones, all).isPresent();
  }

  private static Stream<OrderWanted> order(PairFinding finding) {
    return finding.order().stream()
        .map(order -> wanted(finding.first(), finding.second(), order, finding.id(), false));
  }

  private static Stream<OrderWanted> order(OpenPairRule open) {
    return open.order().stream()
        .map(order -> wanted(open.first(), open.second(), order, open.rule().id(), true));
  }

  private static OrderWanted wanted(
      String first, String second, PairOrder order, String rule, boolean assumed) {
    return new OrderWanted(first, second, order, rule, assumed);
  }

  /** The choice for a zone. */
  public ZoneChoice of(String zone) {
    return zones.stream()
        .filter(choice -> choice.name().equals(zone))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no zone " + zone));
  }

  /** Whether a rule that could rule it out waits for an answer. */
  public boolean held() {
    return open.stream().anyMatch(OpenPairRule::holds);
  }

  /** How many zones have no method yet. */
  public long undecided() {
    return zones.stream().filter(zone -> zone.method().isEmpty()).count();
  }

  List<Optional<SupportOption>> methods() {
    return zones.stream().map(ZoneChoice::method).toList();
  }
}
