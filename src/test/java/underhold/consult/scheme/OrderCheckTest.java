package underhold.consult.scheme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.advice.PairOrder;
import underhold.consult.Consultation;
import underhold.consult.RandomZones;

/** Orders that can be kept at once, and those that close a circle, by reasoning in words. */
class OrderCheckTest {
  private static final List<ZoneChoice> ZONES = zones();

  private static List<ZoneChoice> zones() {
    Consultation advice = RandomZones.advise(new RandomZones(1).site(2, 0));
    return advice.zones().stream()
        .map(zone -> new ZoneChoice(zone, java.util.Optional.empty(), "own case"))
        .toList();
  }

  private static OrderWanted order(int first, int second, PairOrder order) {
    return new OrderWanted("zone " + first, "zone " + second, order, "own", false);
  }

  @Test
  void each_may_carry_before_the_other_is_dug() {
    assertThat(
            OrderCheck.contradiction(
                ZONES,
                List.of(
                    order(1, 2, PairOrder.CARRIES_BEFORE_DIGS),
                    order(2, 1, PairOrder.CARRIES_BEFORE_DIGS))))
        .isEmpty();
  }

  @Test
  void neither_can_be_complete_before_the_other_starts() {
    OrderWanted late = order(2, 1, PairOrder.COMPLETE_BEFORE_STARTS);
    assertThat(
            OrderCheck.contradiction(
                ZONES, List.of(order(1, 2, PairOrder.COMPLETE_BEFORE_STARTS), late)))
        .contains(late);
  }

  @Test
  void a_zone_reached_only_through_another_cannot_wait_for_it_to_carry() {
    OrderWanted late = order(2, 1, PairOrder.CARRIES_BEFORE_OPENS);
    assertThat(
            OrderCheck.contradiction(
                ZONES, List.of(order(1, 2, PairOrder.COMPLETE_BEFORE_STARTS), late)))
        .as("zone 1 complete, then zone 2 starts and carries, then zone 1 digs: this can be")
        .isEmpty();
    OrderWanted never = order(2, 1, PairOrder.COMPLETE_BEFORE_STARTS);
    assertThat(
            OrderCheck.keepable(
                ZONES,
                List.of(order(1, 2, PairOrder.COMPLETE_BEFORE_STARTS)),
                List.of(late, never)))
        .containsExactly(late);
  }

  @Test
  void pits_that_are_not_open_together_may_come_in_either_order() {
    assertThat(
            OrderCheck.contradiction(
                ZONES,
                List.of(
                    order(1, 2, PairOrder.NOT_OPEN_TOGETHER),
                    order(2, 1, PairOrder.NOT_OPEN_TOGETHER))))
        .isEmpty();
  }
}
