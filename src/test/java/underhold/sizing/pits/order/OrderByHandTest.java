package underhold.sizing.pits.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows, rules, rounds and calendars small enough to be worked by hand; own cases throughout. */
class OrderByHandTest {
  /** 2.5 days of a crew, 6 days open. */
  private static final PitTimes TIMES = new PitTimes(2, 0.5, 1, 0.5, 2);

  private static OrderRules rules(double clear, double share, int crews) {
    return new OrderRules(clear, share, crews, TIMES);
  }

  @Test
  void times_add_up() {
    assertThat(TIMES.crewDays()).isEqualTo(2.5);
    assertThat(TIMES.openDays()).isEqualTo(6);
    PitTimes bare = new PitTimes(1, 0, 0, 0, 0);
    assertThat(bare.crewDays()).isEqualTo(1);
    assertThat(bare.openDays()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
  void times_and_spacing_below_nothing_are_refused(double bad) {
    refused(() -> new PitTimes(bad, 0, 0, 0, 0), "digging takes " + bad + " days");
    refused(() -> new PitTimes(1, bad, 0, 0, 0), "a time of " + bad + " days");
    refused(() -> new PitTimes(1, 0, bad, 0, 0), "a time of " + bad + " days");
    refused(() -> new PitTimes(1, 0, 0, bad, 0), "a time of " + bad + " days");
    refused(() -> new PitTimes(1, 0, 0, 0, bad), "a time of " + bad + " days");
    refused(() -> rules(bad, 0.25, 1), "clear spacing is " + bad);
    refused(() -> PitRow.equal(2, bad), "pit width is " + bad);
  }

  private static void refused(Runnable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessageStartingWith(start);
  }

  @Test
  void limits_of_the_rules_themselves_are_accepted() {
    assertThat(rules(0, 1, 1).openShare()).isEqualTo(1);
    refused(() -> rules(0, 1.001, 1), "open share is 1.001");
    refused(() -> rules(0, 0, 1), "open share is 0");
    refused(() -> rules(0, Double.NaN, 1), "open share is NaN");
    refused(() -> rules(0, 1, 0), "there are 0 crews");
    refused(() -> new PitTimes(0, 0, 0, 0, 0), "digging takes 0.0 days");
    refused(() -> PitRow.equal(1, 0), "pit width is 0.0 m");
  }

  @Test
  void a_row_knows_its_distances() {
    PitRow row = new PitRow(List.of(0.5, 1.0, 1.5, 0.75));
    assertThat(row.lengthMetres()).isEqualTo(3.75);
    assertThat(row.clearDistance(0, 2)).isEqualTo(1.0);
    assertThat(row.clearDistance(3, 0)).isEqualTo(2.5);
    assertThat(row.clearDistance(1, 2)).isZero();
    assertThat(row.lengthOf(List.of(0, 3))).isEqualTo(1.25);
    assertThat(row.width(2)).isEqualTo(1.5);
    assertThat(row.count()).isEqualTo(4);
    assertThat(PitRow.equal(3, 1.2).widthsMetres()).containsExactly(1.2, 1.2, 1.2);
  }

  @Test
  void distance_that_just_reaches_the_rule_is_no_conflict() {
    PitRow row = new PitRow(List.of(1.0, 1.0, 1.0, 1.0, 1.5));
    assertThat(rules(2, 1, 1).conflict(row, 0, 3)).isFalse(); // 2 m clear of 2 x 1
    assertThat(rules(2.001, 1, 1).conflict(row, 0, 3)).isTrue();
    assertThat(rules(2, 1, 1).conflict(row, 3, 0)).isFalse();
    assertThat(rules(2, 1, 1).conflict(row, 0, 4)).isFalse(); // 3 m clear of 2 x 1.5
    assertThat(rules(2, 1, 1).conflict(row, 1, 4)).isTrue(); // 2 m clear of 2 x 1.5
    assertThat(rules(0, 1, 1).conflict(row, 1, 2)).isTrue(); // neighbours always
    assertThat(rules(0, 1, 1).conflict(row, 2, 1)).isTrue();
    assertThat(rules(0, 1, 1).conflict(row, 1, 3)).isFalse();
  }

  @Test
  void share_that_is_just_used_up_is_kept_and_one_pit_may_always_open() {
    PitRow row = PitRow.equal(8, 1);
    assertThat(rules(3, 0.25, 1).shareKept(row, 2)).isTrue();
    assertThat(rules(3, 0.25, 1).shareKept(row, 2.001)).isFalse();
    assertThat(rules(3, 0.25, 1).mayOpen(row, List.of(0), 4)).isTrue();
    assertThat(rules(3, 0.2499, 1).mayOpen(row, List.of(0), 4)).isFalse();
    assertThat(rules(3, 0.25, 1).mayOpen(row, List.of(0), 3)).isFalse();
    assertThat(rules(3, 0.01, 1).mayOpen(row, List.of(), 3)).isTrue();
  }

  @Test
  void rounds_are_taken_as_described() {
    PitRow row = PitRow.equal(9, 1);
    assertThat(Rounds.everyNth(row, 4))
        .containsExactly(List.of(0, 4, 8), List.of(2, 6), List.of(1, 5), List.of(3, 7));
    assertThat(Rounds.everyNth(PitRow.equal(2, 1), 5)).containsExactly(List.of(0), List.of(1));
    assertThat(Rounds.plain(row, rules(3, 1, 1)))
        .containsExactly(List.of(0, 5), List.of(3, 8), List.of(1, 6), List.of(4), List.of(2, 7));
    // a share of one pit breaks each group up
    assertThat(Rounds.plain(PitRow.equal(6, 1), rules(3, 0.1, 1)))
        .containsExactly(List.of(0), List.of(5), List.of(3), List.of(1), List.of(4), List.of(2));
    assertThat(Rounds.firstFit(row, rules(3, 1, 1)))
        .containsExactly(List.of(0, 4, 8), List.of(1, 5), List.of(2, 6), List.of(3, 7));
    assertThat(Rounds.lawful(row, rules(3, 1, 1), Rounds.everyNth(row, 4))).isTrue();
    assertThat(Rounds.lawful(row, rules(3, 1, 1), Rounds.everyNth(row, 3))).isFalse();
  }

  @Test
  @DisplayName(
      "Own case: 9 pits in four rounds, two crews: rounds in step begin on days 0, 8.5, 14.5 and"
          + " 20.5")
  void calendar_in_step() {
    PitRow row = PitRow.equal(9, 1);
    OrderRules two = rules(3, 1, 2);
    DiggingPlan plan = Calendars.inStep(row, two, Rounds.everyNth(row, 4));
    // round 1: pits 1 and 5 on day 0, pit 9 after 2.5 days, carries on 8.5
    assertThat(plan.startDays()).containsExactly(0.0, 14.5, 8.5, 20.5, 0.0, 14.5, 8.5, 20.5, 2.5);
    assertThat(plan.calendarDays()).isEqualTo(26.5);
    assertThat(plan.inStep()).isTrue();
    assertThat(plan.roundCount()).isEqualTo(4);
    assertThat(plan.doneDay(8)).isEqualTo(8.5);
    assertThat(plan.greatestOpenMetres()).isEqualTo(3);
  }

  @Test
  @DisplayName(
      "Own case: the same nine pits rolling on: a crew is free every 2.5 days, a pit carries after"
          + " 6")
  void calendar_rolling() {
    PitRow row = PitRow.equal(9, 1);
    DiggingPlan plan = Calendars.rolling(row, rules(3, 1, 1), Rounds.everyNth(row, 4));
    // one crew: pits 1, 5, 9 on 0, 2.5, 5; 3 waits for 5 (day 8.5), 7 for 9 (11), 2 for 3 (14.5),
    // 6 for 7 (17), 4 for 6 (23), 8 for the crew (25.5)
    assertThat(plan.startDays()).containsExactly(0.0, 14.5, 8.5, 23.0, 2.5, 17.0, 11.0, 25.5, 5.0);
    assertThat(plan.inStep()).isFalse();
    assertThat(plan.calendarDays()).isEqualTo(31.5);
    assertThat(PlanChecker.violations(plan)).isEmpty();
  }

  @Test
  @DisplayName("Own cases: the bound is the greatest of crowd, share and crews")
  void bound_by_hand() {
    // 4 pits that all conflict, 6 days each
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(3, 0.5, 8))).isEqualTo(24);
    // a share of one eighth: 8 turns of 6 days
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(0, 0.125, 8))).isEqualTo(48);
    // a share of less than one pit still takes one at a time
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(0, 0.1, 8))).isEqualTo(48);
    // a share of three eighths: 3 turns of 6 days
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(0, 0.375, 8))).isEqualTo(18);
    // one crew: 8 turns of 2.5 days, and 3.5 days more for the last pit
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(0, 1, 1))).isEqualTo(23.5);
    // three crews: 3 turns, 7.5 + 3.5 = 11, below the 12 of two neighbours
    assertThat(CalendarBound.days(PitRow.equal(8, 1), rules(0, 1, 3))).isEqualTo(12);
    // the share holds the two narrow pits (1.4 of 3.4 m at 0.42 m share), so 4 pits take 2 turns
    PitRow uneven = new PitRow(List.of(0.7, 1.0, 0.7, 1.0));
    assertThat(CalendarBound.days(uneven, rules(0, 1.4 / 3.4, 4))).isEqualTo(12);
    assertThat(CalendarBound.days(uneven, rules(0, 1.39 / 3.4, 4))).isEqualTo(24);
    assertThat(CalendarBound.days(PitRow.equal(1, 1), rules(3, 0.25, 2))).isEqualTo(6);
  }

  @Test
  void open_length_ends_when_a_pit_carries() {
    PitRow row = PitRow.equal(9, 1);
    OrderRules any = rules(3, 1, 2);
    List<List<Integer>> rounds = Rounds.everyNth(row, 4);
    DiggingPlan touching =
        new DiggingPlan(
            row, any, rounds, List.of(0.0, 30.0, 12.0, 42.0, 0.0, 36.0, 18.0, 48.0, 6.0), false);
    // day 0: pits 1 and 5; day 6: pit 9 begins as they carry
    assertThat(touching.greatestOpenMetres()).isEqualTo(2);
    assertThat(PlanChecker.violations(touching)).isEmpty();
    DiggingPlan overlapping =
        new DiggingPlan(
            row, any, rounds, List.of(0.0, 30.0, 12.0, 42.0, 0.0, 36.0, 18.0, 48.0, 5.9), false);
    assertThat(overlapping.greatestOpenMetres()).isEqualTo(3);
  }

  @Test
  @DisplayName(
      "Own cases: the checker names the pits, the day, the length and the crews of each breach")
  void checker_by_hand() {
    PitRow row = PitRow.equal(5, 1);
    List<List<Integer>> single =
        List.of(List.of(0), List.of(1), List.of(2), List.of(3), List.of(4));
    List<Double> lawful = List.of(0.0, 6.0, 12.0, 18.0, 24.0);
    OrderRules rules = rules(3, 0.25, 1);
    assertThat(violations(row, rules, single, lawful)).isEmpty();
    // pit 2 a day early: still open beside pit 1
    assertThat(violations(row, rules, single, List.of(0.0, 5.0, 12.0, 18.0, 24.0)))
        .containsExactly(
            "pits 1 and 2 are open together and too close",
            "on day 5.0 an open length of 2.0 m is more than the share");
    // pit 5 with pit 1: 3 m clear is enough, the share of 0.4 holds 2 m, one crew digs both
    OrderRules wide = rules(3, 0.4, 1);
    assertThat(violations(row, wide, single, List.of(0.0, 8.0, 14.0, 20.0, 2.0)))
        .containsExactly("on day 2.0 2 pits are dug by 1 crews");
    assertThat(violations(row, wide, single, List.of(0.0, 8.5, 14.5, 20.5, 2.5))).isEmpty();
    assertThat(violations(row, rules(3, 0.39, 1), single, List.of(0.0, 8.5, 14.5, 20.5, 2.5)))
        .containsExactly("on day 2.5 an open length of 2.0 m is more than the share");
    assertThat(violations(row, rules(3.1, 0.4, 1), single, List.of(0.0, 8.5, 14.5, 20.5, 2.5)))
        .containsExactly("pits 1 and 5 are open together and too close");
    assertThat(violations(row, rules, single.subList(0, 4), lawful))
        .containsExactly("the plan digs 4 of 5 pits");
    assertThat(violations(row, rules, single, lawful.subList(0, 4)))
        .containsExactly("the plan digs 5 of 5 pits");
    List<List<Integer>> twice = List.of(List.of(0), List.of(1), List.of(2), List.of(3), List.of(3));
    assertThat(violations(row, rules, twice, lawful))
        .containsExactly("pit 5 is missing or dug twice");
    assertThat(violations(row, rules, single, List.of(-1.0, 6.0, 12.0, 18.0, 24.0)))
        .containsExactly("pit 1 begins on day -1.0");
    assertThat(violations(row, rules, single, List.of(0.0, 6.0, 12.0, 18.0, Double.NaN)))
        .containsExactly("pit 5 begins on day NaN");
    assertThat(violations(row, rules, single, List.of(0.0, 6.0, 12.0, 18.0, 1 / 0.0)))
        .containsExactly("pit 5 begins on day Infinity");
  }

  @Test
  void checker_looks_at_rounds_whatever_their_dates() {
    PitRow row = new PitRow(List.of(1.0, 1.0, 1.0, 1.5));
    List<Double> apart = List.of(0.0, 6.0, 12.0, 18.0);
    List<List<Integer>> rounds = List.of(List.of(0, 3), List.of(1), List.of(2));
    // 2 m clear, the wider pit 1.5 m: 1.3 widths are 1.95 m, 1.4 are 2.1 m; 2.5 of 4.5 m is 0.5556
    assertThat(violations(row, rules(1.3, 0.56, 1), rounds, apart)).isEmpty();
    assertThat(violations(row, rules(1.4, 0.56, 1), rounds, apart))
        .containsExactly("a round holds pits 1 and 4, which are too close");
    assertThat(violations(row, rules(1.3, 0.55, 1), rounds, apart))
        .containsExactly("a round opens 2.5 m, more than the share");
    List<List<Integer>> beside = List.of(List.of(0), List.of(1, 2), List.of(3));
    assertThat(violations(row, rules(0, 1, 1), beside, apart))
        .containsExactly("a round holds pits 2 and 3, which are too close");
  }

  private static List<String> violations(
      PitRow row, OrderRules rules, List<List<Integer>> rounds, List<Double> starts) {
    return PlanChecker.violations(new DiggingPlan(row, rules, rounds, starts, false));
  }

  @Test
  @DisplayName("Own cases: plans of a wall of 7 pits with one and with many crews")
  void plans_by_hand() {
    PitRow row = PitRow.equal(7, 1);
    // a share of 0.3 holds two pits: 4 rounds at least; 7 pits need 4 turns of 6 days
    DiggingPlan many = DiggingOrder.find(row, rules(3, 0.3, 7));
    assertThat(many.rounds())
        .containsExactly(List.of(0, 4), List.of(2, 6), List.of(1, 5), List.of(3));
    assertThat(many.calendarDays()).isEqualTo(24);
    assertThat(many.inStep()).isTrue();
    // the plain order takes rounds of 1 6, 4, 2 7, 5, 3: five of them
    DiggingPlan plain = DiggingOrder.plain(row, rules(3, 0.3, 7));
    assertThat(plain.rounds())
        .containsExactly(List.of(0, 5), List.of(3), List.of(1, 6), List.of(4), List.of(2));
    assertThat(plain.calendarDays()).isEqualTo(30);
  }
}
