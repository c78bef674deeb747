package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.sizing.Amount;
import underhold.sizing.BillItem;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;

/** Days from hours, shifts and closures, worked out by hand. */
class TimingTest {
  private static FactView facts(Map<String, String> typed) {
    FactDictionary dictionary = FactDictionary.standard();
    Map<String, Fact> facts = new HashMap<>();
    typed.forEach(
        (name, text) ->
            FactReader.read(dictionary.require(name), text)
                .fold(
                    value ->
                        facts.put(
                            name, new Fact(dictionary.require(name), Origin.STATED, value, "")),
                    () -> null,
                    rejected -> {
                      throw new IllegalArgumentException(rejected.explanation());
                    }));
    return FactView.of(dictionary, facts);
  }

  private static Sheet sheet(String item, Amount amount) {
    return new Sheet(
        "own case",
        "own",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(new BillItem(item, amount, Phrase.of(""))),
        List.of(),
        List.of(),
        List.of());
  }

  private static Timing timing(Map<String, String> facts, Sheet... sheets) {
    return new Timing(PlanSettings.TABLE.defaults(), facts(facts), List.of(sheets));
  }

  @Test
  void drilling_by_day_goes_by_shifts_of_eight_hours() {
    Sheet sheet = sheet(Timing.BRACKET_DRILLING, Amount.hours(41));
    assertThat(timing(Map.of(), sheet).drilling().days()).isEqualTo(6); // 41 / 8 = 5.1, begun
  }

  @Test
  void drilling_from_a_live_track_goes_by_closures_less_the_hour_lost_in_each() {
    Sheet sheet = sheet(Timing.BRACKET_DRILLING, Amount.hours(41));
    Map<String, String> track =
        Map.of("pilesFromTrackOnly", "yes", "nightClosure", "4.5 h", "liveUse", "rail");
    // 4.5 h less 1 h leave 3.5 h a night: 41 / 3.5 = 11.7, twelve nights
    assertThat(timing(track, sheet).drilling().days()).isEqualTo(12);
    assertThat(timing(track, sheet).drilling().source()).startsWith("night closures");
  }

  @Test
  void a_step_of_load_takes_a_closure_below_live_rail_and_else_the_default() {
    assertThat(timing(Map.of("liveUse", "rail", "nightClosure", "4 h")).step(4).days())
        .isEqualTo(1);
    assertThat(timing(Map.of("liveUse", "rail")).step(4).days())
        .as("no closure is stated")
        .isEqualTo(0.5);
    assertThat(timing(Map.of("liveUse", "occupied", "nightClosure", "4 h")).step(4).days())
        .isEqualTo(0.5);
  }

  @Test
  void curing_counts_days_of_24_hours_and_weeks_five_working_days() {
    assertThat(timing(Map.of(), sheet(Timing.BRACKET_CURE, Amount.hours(168))).cure().days())
        .isEqualTo(7);
    assertThat(
            timing(Map.of(), sheet(Timing.WATCH_DURING, Amount.hours(336)))
                .weeks(Timing.WATCH_DURING, PlanSettings.LIFT)
                .days())
        .isEqualTo(10);
  }

  @Test
  void what_no_sheet_gives_is_a_named_default_of_judgement() {
    StageTime time = timing(Map.of()).drilling();
    assertThat(time.days()).isEqualTo(10);
    assertThat(time.source()).isEqualTo("drill-days, judgement");
  }

  @Test
  void the_days_of_transfer_hold_the_lock_off_and_its_reading_after_a_day() {
    Timing needles = timing(Map.of(), sheet(Timing.NEEDLES_LOAD, Amount.count(2)));
    // two days in all, one of them for locking off and the reading after 24 h: a quarter a step
    double lockOff = PlanSettings.TABLE.defaults().get(PlanSettings.LOCK_OFF);
    assertThat(lockOff).isEqualTo(1);
    assertThat(4 * needles.step(4).days() + lockOff).isEqualTo(2);
  }

  @Test
  void a_trial_pile_and_a_cap_harden_before_they_are_loaded() {
    Timing brackets = timing(Map.of(), sheet(Timing.BRACKET_CURE, Amount.hours(168)));
    assertThat(brackets.preparing(true).days()).isEqualTo(5 + 7);
    assertThat(brackets.preparing(true).source())
        .contains("prepare-days, judgement", "hardening by the sheet");
    assertThat(brackets.preparing(false).days()).isEqualTo(5);
    assertThat(timing(Map.of()).preparing(true).days()).isEqualTo(5 + 5);
    assertThat(timing(Map.of()).building(1).days()).isEqualTo(5 + 5);
  }

  @Test
  void the_baseline_of_a_watched_zone_counts_the_days_of_the_survey_once() {
    // three weeks are fifteen working days; the survey of ten has read the first of them
    assertThat(timing(Map.of(), sheet(Timing.WATCH_BEFORE, Amount.hours(504))).baseline().days())
        .isEqualTo(5);
    assertThat(timing(Map.of(), sheet(Timing.WATCH_BEFORE, Amount.hours(168))).baseline().days())
        .isZero();
  }
}
