package underhold.consult.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.PairOrder;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.Scheme;
import underhold.site.FactValue;
import underhold.site.Relation;
import underhold.site.StatedFact;
import underhold.sizing.Setting;
import underhold.sizing.Settings;

/**
 * Links between the stages of different zones: orders of rules, zones to decide, rigs and crews.
 */
final class BetweenZones {
  private final PlanBuilder plan;
  private final Scheme scheme;
  private final Map<String, ZoneStages> zones;
  private final List<OrderWanted> unkept = new ArrayList<>();

  BetweenZones(PlanBuilder plan, Scheme scheme, Map<String, ZoneStages> zones) {
    this.plan = plan;
    this.scheme = scheme;
    this.zones = zones;
  }

  /** Orders that would close a circle. */
  List<OrderWanted> unkept() {
    return unkept;
  }

  /** The orders that rules ask for, the certain ones first. */
  void orders() {
    scheme.best().orders().stream()
        .sorted(Comparator.comparing(OrderWanted::assumed))
        .forEach(this::order);
    unkept.addAll(scheme.best().dropped());
  }

  private void order(OrderWanted order) {
    ZoneStages first = zones.get(order.first());
    ZoneStages second = zones.get(order.second());
    if (first == null || second == null) {
      return;
    }
    String why = order.ruleId() + (order.assumed() ? ", until it is known" : "");
    boolean kept =
        switch (order.order()) {
          case NOT_OPEN_TOGETHER -> oneAfterTheOther(first, second, why);
          case BRACES_BEFORE_LIFTS -> liftsFollow(first, second, why);
          default -> link(before(order.order(), first), later(order.order(), second), why);
        };
    if (!kept) {
      unkept.add(order);
    }
  }

  private boolean link(Optional<String> before, Optional<String> later, String why) {
    return before.isEmpty() || later.isEmpty() || plan.link(before.get(), later.get(), why);
  }

  private static Optional<String> before(PairOrder order, ZoneStages zone) {
    return switch (order) {
      case DRILLS_BEFORE_PITS -> zone.drilled();
      case CLOSED_BEFORE_DIGS -> zone.closed();
      default -> zone.carries();
    };
  }

  private static Optional<String> later(PairOrder order, ZoneStages zone) {
    return switch (order) {
      case CARRIES_BEFORE_OPENS -> zone.opens();
      case CARRIES_BEFORE_DIGS, CLOSED_BEFORE_DIGS, BRACES_BEFORE_LIFTS -> zone.digs();
      case DRILLS_BEFORE_PITS, NOT_OPEN_TOGETHER -> zone.first(StageKind.PITS);
      case COMPLETE_BEFORE_STARTS -> zone.starts();
    };
  }

  /**
   * The lift i of n at the second zone waits for the brace at the first that stands as far down, by
   * their numbers: the (i m / n)th of m, rounded up. Levels are not compared: judgement.
   */
  private boolean liftsFollow(ZoneStages first, ZoneStages second, String why) {
    List<String> braces = first.braces();
    List<String> lifts = second.of(StageKind.DIG);
    boolean kept = true;
    for (int lift = 1; lift <= lifts.size() && !braces.isEmpty(); lift++) {
      int brace = (lift * braces.size() + lifts.size() - 1) / lifts.size();
      kept &= plan.link(braces.get(brace - 1), lifts.get(lift - 1), why);
    }
    return kept;
  }

  private boolean oneAfterTheOther(ZoneStages one, ZoneStages other, String why) {
    List<String> these = one.of(StageKind.PITS);
    List<String> those = other.of(StageKind.PITS);
    if (these.isEmpty() || those.isEmpty()) {
      return true;
    }
    return plan.link(last(these), those.get(0), why) || plan.link(last(those), these.get(0), why);
  }

  /** What opens ground waits for every zone that must be decided and may act on it. */
  void waitForUndecided(Map<String, String> decisions) {
    decisions.forEach(
        (zone, decision) ->
            zones.forEach(
                (name, stages) ->
                    stages
                        .opens()
                        .filter(opens -> mayAct(zone, name))
                        .filter(opens -> plan.link(decision, opens, zone + " is decided first"))
                        .ifPresent(opens -> plan.waits(opens, List.of(zone)))));
  }

  /** Unless it is stated that neither structure nor edge is common to the two. */
  private boolean mayAct(String zone, String other) {
    Optional<Relation> relation = scheme.site().relation(zone, other);
    return relation.isEmpty()
        || !(saysNo(relation.get(), "oneStructure")
            && saysNo(relation.get(), "sharedEdge")
            && saysNo(relation.get(), "sameWallLine"));
  }

  private static boolean saysNo(Relation relation, String fact) {
    StatedFact stated = relation.facts().get(fact);
    return stated != null
        && stated.value() instanceof FactValue.Choice choice
        && choice.text().equals("no");
  }

  /** One rig drills zone after zone, one crew digs pits zone after zone, or as many as are set. */
  void crews(Settings settings) {
    inTurn(StageKind.DRILL, settings.get(PlanSettings.RIGS), PlanSettings.RIGS);
    inTurn(StageKind.PITS, settings.get(PlanSettings.PIT_ZONES), PlanSettings.PIT_ZONES);
  }

  /**
   * The first of a kind in a zone waits for the last in the zone as many places before it as there
   * are crews. Zones stand in an order that the links so far allow.
   */
  private void inTurn(StageKind kind, double crews, Setting setting) {
    List<String> order = Reach.of(plan.stages()).order();
    List<ZoneStages> busy =
        zones.values().stream()
            .filter(zone -> !zone.of(kind).isEmpty())
            .sorted(Comparator.comparingInt(zone -> order.indexOf(zone.of(kind).get(0))))
            .toList();
    int atOnce = (int) Math.floor(crews);
    for (int i = atOnce; i < busy.size(); i++) {
      List<String> earlier = busy.get(i - atOnce).of(kind);
      plan.link(last(earlier), busy.get(i).of(kind).get(0), setting.name() + " " + atOnce);
    }
  }

  private static String last(List<String> ids) {
    return ids.get(ids.size() - 1);
  }
}
