package underhold.sizing.pits.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.quantity.Seeds;

class DiggingOrderTest {
  private static final PitTimes TIMES = new PitTimes(2, 0.5, 1, 0.5, 2);

  @Property(tries = 1000, seed = Seeds.BUILD)
  void every_plan_is_proved_by_the_checker_and_never_worse_than_the_plain_order(
      @ForAll @IntRange(min = 2, max = 200) int count,
      @ForAll @DoubleRange(min = 0.5, max = 1.6) double width,
      @ForAll @DoubleRange(min = 0.2, max = 1) double endOverWidth,
      @ForAll @IntRange(min = 0, max = 2) int narrowEnds,
      @ForAll @DoubleRange(min = 0, max = 12) double clearWidths,
      @ForAll @DoubleRange(min = 0.01, max = 1) double share,
      @ForAll @IntRange(min = 1, max = 40) int crews,
      @ForAll("times") PitTimes times) {
    PitRow row = row(count, width, endOverWidth * width, narrowEnds);
    OrderRules rules = new OrderRules(clearWidths, share, crews, times);
    DiggingPlan plan = DiggingOrder.find(row, rules);
    DiggingPlan plain = DiggingOrder.plain(row, rules);
    assertThat(PlanChecker.violations(plan)).isEmpty();
    assertThat(PlanChecker.violations(plain)).isEmpty();
    assertThat(plan.roundCount()).isLessThanOrEqualTo(plain.roundCount());
    assertThat(plan.calendarDays()).isLessThanOrEqualTo(plain.calendarDays() + 1e-6);
    assertThat(plan.calendarDays())
        .isGreaterThanOrEqualTo(DiggingOrder.fewestDays(row, rules) - 1e-6);
    assertThat(plan.greatestOpenMetres())
        .isLessThanOrEqualTo(
            Math.max(Collections.max(row.widthsMetres()), share * row.lengthMetres()) + 1e-6);
  }

  @Provide
  Arbitrary<PitTimes> times() {
    Arbitrary<Double> days = Arbitraries.doubles().between(0, 7);
    return Combinators.combine(Arbitraries.doubles().between(0.25, 8), days, days, days, days)
        .as(PitTimes::new);
  }

  @Property(tries = 1000, seed = Seeds.BUILD)
  void short_walls_of_any_widths_are_proved_too(
      @ForAll @Size(min = 2, max = 24) List<@DoubleRange(min = 0.4, max = 1.5) Double> widths,
      @ForAll @DoubleRange(min = 0, max = 6) double clearWidths,
      @ForAll @DoubleRange(min = 0.02, max = 1) double share,
      @ForAll @IntRange(min = 1, max = 8) int crews,
      @ForAll("times") PitTimes times) {
    PitRow row = new PitRow(widths);
    OrderRules rules = new OrderRules(clearWidths, share, crews, times);
    DiggingPlan plan = DiggingOrder.find(row, rules);
    DiggingPlan plain = DiggingOrder.plain(row, rules);
    assertThat(PlanChecker.violations(plan)).isEmpty();
    assertThat(plan.roundCount()).isLessThanOrEqualTo(plain.roundCount());
    assertThat(plan.calendarDays()).isLessThanOrEqualTo(plain.calendarDays() + 1e-6);
    assertThat(plan.calendarDays())
        .isGreaterThanOrEqualTo(DiggingOrder.fewestDays(row, rules) - 1e-6);
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void common_rules_give_the_fewest_rounds_there_can_be(
      @ForAll @IntRange(min = 4, max = 200) int count) {
    OrderRules rules = new OrderRules(3, 0.25, 200, TIMES);
    int atOnce = count / 4;
    int bound = Math.max(4, (count + atOnce - 1) / atOnce);
    assertThat(DiggingOrder.find(PitRow.equal(count, 1.2), rules).roundCount()).isEqualTo(bound);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void with_crews_for_every_open_pit_no_calendar_is_shorter(
      @ForAll @IntRange(min = 4, max = 200) int count) {
    OrderRules rules = new OrderRules(3, 0.25, count, TIMES);
    PitRow row = PitRow.equal(count, 1.2);
    double days = DiggingOrder.find(row, rules).calendarDays();
    assertThat(days).isEqualTo(DiggingOrder.fewestDays(row, rules));
  }

  @ParameterizedTest(name = "{0} pits, {1} crews")
  @DisplayName(
      "Own cases: with few crews the calendar comes within a tenth of the bound no order can pass")
  @CsvSource({
    "12, 1", "15, 1", "21, 2", "30, 2", "30, 3", "47, 2", "47, 3", "80, 2", "80, 4", "200, 3"
  })
  void few_crews_lose_little(int count, int crews) {
    OrderRules rules = new OrderRules(3, 0.25, crews, TIMES);
    PitRow row = PitRow.equal(count, 1.2);
    double days = DiggingOrder.find(row, rules).calendarDays();
    assertThat(days / DiggingOrder.fewestDays(row, rules)).isBetween(1 - 1e-9, 1.10);
  }

  @Test
  void the_same_wall_always_gets_the_same_order() {
    OrderRules rules = new OrderRules(3, 0.25, 2, TIMES);
    DiggingPlan once = DiggingOrder.find(PitRow.equal(17, 1), rules);
    DiggingPlan again = DiggingOrder.find(PitRow.equal(17, 1), rules);
    assertThat(again.rounds()).isEqualTo(once.rounds());
    assertThat(again.startDays()).isEqualTo(once.startDays());
  }

  @ParameterizedTest(name = "{0} pits, ends {1} of the width, share {2}, spacing {3}")
  @DisplayName("Own cases: no partition of up to 9 pits has fewer rounds (all partitions tried)")
  @CsvSource({
    "5, 1, 0.25, 3", "7, 1, 0.34, 3", "8, 1, 0.25, 3", "9, 1, 0.25, 3", "9, 0.5, 0.25, 3",
        "8, 0.5, 0.25, 3",
    "9, 0.6, 0.3, 2", "8, 0.4, 0.3, 2.5", "9, 0.3, 0.4, 1", "7, 0.5, 0.1667, 3", "9, 0.7, 0.5, 0",
        "3, 1, 0.25, 3",
    "2, 1, 0.25, 3", "6, 0.5, 0.34, 3"
  })
  void rounds_are_the_fewest(int count, double end, double share, double spacing) {
    PitRow row = row(count, 1.0, end, 2);
    OrderRules rules = new OrderRules(spacing, share, 9, TIMES);
    DiggingPlan plan = DiggingOrder.find(row, rules);
    assertThat(plan.roundCount()).isEqualTo(fewestByTrial(row, rules));
  }

  @Test
  @DisplayName(
      "Own case: 20 equal pits, a quarter open, three widths clear: 4 rounds of 5 against 5 of 4 in the plain order")
  void twenty_pits_take_four_rounds() {
    OrderRules rules = new OrderRules(3, 0.25, 5, TIMES);
    PitRow row = PitRow.equal(20, 1.2);
    DiggingPlan plan = DiggingOrder.find(row, rules);
    assertThat(plan.rounds()).hasSize(4);
    assertThat(plan.rounds().get(0)).containsExactly(0, 4, 8, 12, 16);
    assertThat(plan.calendarDays()).isEqualTo(24);
    assertThat(DiggingOrder.plain(row, rules).calendarDays()).isEqualTo(30);
  }

  @Test
  @DisplayName(
      "Trade order 1-4-2-5-3 (common practice): five pits, one open at a time, come out in that order")
  void plain_order_of_five() {
    DiggingPlan plain = DiggingOrder.plain(PitRow.equal(5, 1), new OrderRules(3, 0.25, 1, TIMES));
    assertThat(plain.rounds())
        .containsExactly(List.of(0), List.of(3), List.of(1), List.of(4), List.of(2));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void short_walls_are_dug_one_pit_at_a_time(int count) {
    DiggingPlan plan = DiggingOrder.find(PitRow.equal(count, 1), new OrderRules(3, 0.25, 2, TIMES));
    assertThat(plan.rounds()).allSatisfy(round -> assertThat(round).hasSize(1));
    assertThat(plan.calendarDays()).isEqualTo(count * TIMES.openDays());
  }

  @Test
  void the_checker_sees_every_kind_of_breach() {
    PitRow row = PitRow.equal(8, 1);
    OrderRules rules = new OrderRules(3, 0.25, 1, TIMES);
    List<List<Integer>> rounds =
        List.of(List.of(0, 4), List.of(2, 6), List.of(1, 5), List.of(3, 7));
    List<Double> fine = List.of(0.0, 14.0, 7.0, 21.0, 2.5, 16.5, 9.5, 23.5);
    assertThat(PlanChecker.violations(new DiggingPlan(row, rules, rounds, fine, false)))
        .anySatisfy(text -> assertThat(text).contains("open together"));
    List<Double> apart = List.of(0.0, 20.0, 10.0, 30.0, 2.5, 22.5, 12.5, 32.5);
    assertThat(PlanChecker.violations(new DiggingPlan(row, rules, rounds, apart, false))).isEmpty();
    List<Double> crowded = List.of(0.0, 20.0, 10.0, 30.0, 0.0, 22.5, 12.5, 32.5);
    assertThat(PlanChecker.violations(new DiggingPlan(row, rules, rounds, crowded, false)))
        .anySatisfy(text -> assertThat(text).contains("crews"));
    OrderRules sixth = new OrderRules(3, 1.0 / 6, 1, TIMES);
    assertThat(PlanChecker.violations(new DiggingPlan(row, sixth, rounds, apart, false)))
        .anySatisfy(text -> assertThat(text).contains("share"));
    assertThat(
            PlanChecker.violations(new DiggingPlan(row, rules, rounds.subList(0, 3), apart, false)))
        .anySatisfy(text -> assertThat(text).contains("6 of 8"));
    List<List<Integer>> close = List.of(List.of(0, 2), List.of(4, 6), List.of(1, 5), List.of(3, 7));
    assertThat(PlanChecker.violations(new DiggingPlan(row, rules, close, apart, false)))
        .anySatisfy(text -> assertThat(text).contains("too close"));
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> PitRow.equal(3, Double.NaN)).hasMessageContaining("pit width");
    assertThatThrownBy(() -> new OrderRules(3, 0, 1, TIMES)).hasMessageContaining("share");
    assertThatThrownBy(() -> new OrderRules(3, 0.2, 0, TIMES)).hasMessageContaining("crews");
    assertThatThrownBy(() -> new PitTimes(0, 1, 1, 1, 1)).hasMessageContaining("digging");
    assertThatThrownBy(() -> new PitRow(List.of())).hasMessageContaining("at least one");
  }

  private static PitRow row(int count, double width, double end, int narrowEnds) {
    List<Double> widths = new ArrayList<>(Collections.nCopies(count, width));
    if (narrowEnds > 0) {
      widths.set(0, end);
    }
    if (narrowEnds > 1) {
      widths.set(count - 1, end);
    }
    return new PitRow(widths);
  }

  private static int fewestByTrial(PitRow row, OrderRules rules) {
    for (int rounds = 1; rounds < row.count(); rounds++) {
      List<List<Integer>> groups = new ArrayList<>();
      if (divides(row, rules, rounds, 0, groups)) {
        return rounds;
      }
    }
    return row.count();
  }

  private static boolean divides(
      PitRow row, OrderRules rules, int most, int pit, List<List<Integer>> groups) {
    if (pit == row.count()) {
      return true;
    }
    for (List<Integer> group : new ArrayList<>(groups)) {
      if (allowed(row, rules, group, pit)) {
        group.add(pit);
        if (divides(row, rules, most, pit + 1, groups)) {
          return true;
        }
        group.remove((Integer) pit);
      }
    }
    if (groups.size() == most) {
      return false;
    }
    groups.add(new ArrayList<>(List.of(pit)));
    boolean found = divides(row, rules, most, pit + 1, groups);
    groups.remove(groups.size() - 1);
    return found;
  }

  /** Written out afresh, not through the rules' own method. */
  private static boolean allowed(PitRow row, OrderRules rules, List<Integer> group, int pit) {
    double open = row.width(pit);
    for (int other : group) {
      open += row.width(other);
      double clear = 0;
      for (int between = other + 1; between < pit; between++) {
        clear += row.width(between);
      }
      double needed = rules.clearWidths() * Math.max(row.width(other), row.width(pit));
      if (pit - other < 2 || clear < needed - 1e-9) {
        return false;
      }
    }
    return open <= rules.openShare() * row.lengthMetres() + 1e-9;
  }

  @Test
  void a_plan_kept_is_the_plan_reckoned_anew() {
    OrderRules rules = new OrderRules(2, 0.3, 2, new PitTimes(2, 1, 1, 0.5, 3));
    PitRow row = PitRow.equal(11, 1.2);

    DiggingPlan first = DiggingOrder.plan(row, rules);

    assertThat(DiggingOrder.plan(PitRow.equal(11, 1.2), rules)).isSameAs(first);
    assertThat(first.rounds()).isEqualTo(DiggingOrder.find(row, rules).rounds());
    assertThat(first.startDays()).isEqualTo(DiggingOrder.find(row, rules).startDays());
    OrderRules slower = new OrderRules(2, 0.3, 2, new PitTimes(3, 1, 1, 0.5, 3));
    assertThat(DiggingOrder.plan(row, slower).calendarDays()).isGreaterThan(first.calendarDays());
    assertThat(DiggingOrder.plan(PitRow.equal(12, 1.2), rules).row().count()).isEqualTo(12);
  }
}
