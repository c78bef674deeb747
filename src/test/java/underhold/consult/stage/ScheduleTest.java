package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Days of a small net, worked out by hand. */
class ScheduleTest {
  private static PlanStage stage(String id, double days, String... after) {
    return new PlanStage(
        id,
        "",
        Optional.empty(),
        StageKind.BUILD,
        id,
        List.of(),
        List.of(),
        Moves.NONE,
        List.of(after).stream().map(one -> new Link(one, "")).toList(),
        new StageTime(days, "own case"),
        List.of(),
        List.of(),
        List.of());
  }

  @Test
  void starts_floats_and_the_longest_chain() {
    // a 3; b 4 and c 2 after a; d 5 after c; e 1 after b and d: a c d e = 11, a b e = 8.
    Schedule schedule =
        Schedule.of(
            List.of(
                stage("a", 3),
                stage("b", 4, "a"),
                stage("c", 2, "a"),
                stage("d", 5, "c"),
                stage("e", 1, "b", "d")));

    assertThat(schedule.days()).isEqualTo(11);
    assertThat(schedule.criticalPath()).containsExactly("a", "c", "d", "e");
    assertThat(schedule.start("e")).isEqualTo(10);
    assertThat(schedule.floats().get("b")).isEqualTo(3); // may end on day 10 instead of day 7
    assertThat(schedule.isCritical("b")).isFalse();
    assertThat(schedule.isCritical("d")).isTrue();
  }

  @Test
  void a_chain_of_nothing_lasts_no_time() {
    Schedule schedule = Schedule.of(List.of(stage("a", 0), stage("b", 0, "a")));

    assertThat(schedule.days()).isZero();
    assertThat(schedule.criticalPath()).containsExactly("a", "b");
  }
}
