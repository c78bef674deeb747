package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.report.Stages;

/** What people on site are told in order: the plans of whole sites, each read for one danger. */
class SitePlansTest {
  private static StagePlan plan(String demo) {
    return planOf(text(demo));
  }

  private static String text(String demo) {
    try {
      return Files.readString(Path.of("cases/demo", demo + ".site.json"), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static StagePlan planOf(String text) {
    return DemoPlanTest.plan(DemoPlanTest.scheme(text));
  }

  private static int first(StagePlan plan, StageKind kind) {
    return plan.stages().stream()
        .filter(stage -> stage.kind() == kind)
        .mapToInt(stage -> plan.number(stage.id()))
        .min()
        .orElseThrow();
  }

  private static PlanStage titled(StagePlan plan, String start) {
    return plan.stages().stream()
        .filter(stage -> stage.title().startsWith(start))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no stage " + start));
  }

  private static String work(PlanStage stage) {
    return stage.work().stream()
        .map(phrase -> phrase.in(UnitSystem.SI))
        .collect(Collectors.joining(" "));
  }

  private static String holds(PlanStage stage) {
    return stage.holds().stream()
        .map(hold -> hold.condition().in(UnitSystem.SI))
        .collect(Collectors.joining(" "));
  }

  @Test
  void seats_inside_the_influence_line_stop_load_and_digging_until_they_are_resolved() {
    StagePlan plan = plan("ferry-street-column");
    PlanStage seats = titled(plan, "Not resolved: seats");

    assertThat(plan.number(seats.id()))
        .isLessThan(first(plan, StageKind.LOAD))
        .isLessThan(first(plan, StageKind.DIG));
    assertThat(work(seats)).contains("178 %");
    assertThat(holds(seats)).contains("No load on the seats and no excavation before shoring");
    assertThat(work(titled(plan, "Cut free"))).contains("inside their influence line");
    String deeper = text("ferry-street-column").replace("\"26 ft\"", "\"60 ft\"");
    assertThat(planOf(deeper).stages())
        .as("60 ft are more than the 46.2 ft that the line asks for")
        .noneMatch(stage -> stage.title().startsWith("Not resolved"));
  }

  @Test
  void needles_carry_beside_the_new_support_until_they_are_drawn_after_its_hold() {
    StagePlan plan = plan("ferry-street-column");
    PlanStage returned = titled(plan, "Return of the load");
    PlanStage drawn = titled(plan, "Needles out");

    assertThat(work(returned)).contains("Lower the jacks").doesNotContain("Draw the needles");
    assertThat(holds(returned)).contains("before a needle is drawn");
    assertThat(plan.carriers(returned)).contains("needles", "new support");
    assertThat(plan.number(drawn.id())).isGreaterThan(plan.number(returned.id()));
    assertThat(plan.carriers(drawn)).containsExactly("new support");
    assertThat(work(titled(plan, "Step 1"))).doesNotContain("24 h");
    assertThat(work(titled(plan, "Locked off"))).contains("24 h");
    // the sheet counts the drawing among its days of return
    assertThat(drawn.time().days()).isZero();
    // no new base on the spot of the old one: where the column stands for good is not told
    assertThat(holds(titled(plan, "New support"))).contains("The needles stay until that support");
  }

  @Test
  void edge_pits_keep_what_goes_before_the_piles_that_they_stand_on() {
    StagePlan plan = plan("orchard-line-box");
    PlanStage before = titled(plan, "Before the work");

    assertThat(work(before)).contains("Probe every pit", "Bore to", "Drill a trial pile");
    assertThat(holds(before)).contains("takes no ground from under the structure");
    assertThat(work(titled(plan, "Level 1 of braces")))
        .contains("sized with bracing in two directions");
    assertThat(holds(titled(plan, "Level 2 of braces"))).contains("bracing between the piles");
  }

  @Test
  void the_wall_of_the_excavation_and_the_water_are_held_before_the_first_lift() {
    StagePlan plan = plan("harbour-mill-columns");
    PlanStage others = titled(plan, "Wall of the excavation and ground water");

    assertThat(plan.number(others.id())).isLessThan(first(plan, StageKind.DIG));
    assertThat(work(others))
        .as("4.6 m of digging, water at 1.5 m")
        .contains("3.1 m below ground water", "this plan proves neither")
        .contains("water is cut off inside a wall that is watertight, and not lowered outside it");
    assertThat(others.holds()).hasSize(2);
    assertThat(holds(others)).contains("level of its props or ties carries", "uplift");
    String none =
        text("harbour-mill-columns")
            .replace("\"excavationWall\": \"flexible\"", "\"excavationWall\": \"none\"");
    assertThat(titled(planOf(none), "Ground water at the excavation").holds()).hasSize(1);
  }

  @Test
  void nothing_is_filled_where_nothing_is_dug_and_the_baseline_counts_once() {
    StagePlan plan = plan("college-green-library");
    PlanStage last = plan.stages().get(plan.stages().size() - 1);

    assertThat(work(last)).doesNotContain("Fill");
    assertThat(plan.schedule().days()).as("18 weeks of five days by its sheet").isEqualTo(90);
    assertThat(work(titled(plan("harbour-mill-columns"), "Backfill")))
        .contains("Fill working spaces")
        .doesNotContain("approach pits");
  }

  @Test
  @DisplayName("What its sheet leaves open is a hold before anything is built on it")
  void what_does_not_pass_is_held_before_the_work() {
    StagePlan plan = plan("alder-row-party-wall");

    // 12 checks of the pits do not pass: the fullest three by name, for the hold must be read
    assertThat(holds(titled(plan, "Before digging")))
        .contains("has settled what does not pass on its sheets")
        .contains("Pier alone, pressure under the toe", "and 9 more");
    assertThat(plan.number(titled(plan, "Free ends of the wall shored").id()))
        .isLessThan(first(plan, StageKind.PITS));
    List<PlanStage> rounds =
        plan.stages().stream().filter(stage -> stage.kind() == StageKind.PITS).toList();
    assertThat(work(rounds.get(0)))
        .contains("Dig pits 1, 6, 11; no more than 2 of them are dug at one time")
        .doesNotContain("open at one time");
  }

  @Test
  void end_pits_of_an_edge_are_cast_against_a_wall_that_stands() {
    StagePlan plan = plan("orchard-line-box");

    assertThat(plan.number(titled(plan, "Wall of the excavation").id()))
        .isLessThan(first(plan, StageKind.PITS));
    assertThat(work(titled(plan, "Pits, round 1"))).contains("Cast an end pit against the side");
    assertThat(work(titled(plan, "Closing the wall"))).doesNotContain("Cast the last pit");
  }

  @Test
  void readings_before_the_work_go_on_from_those_of_the_survey() {
    StagePlan plan = plan("alder-row-party-wall");

    assertThat(Stages.watch(plan, titled(plan, "Survey"))).startsWith("baseline sets until steady");
    assertThat(Stages.watch(plan, titled(plan, "Before digging")))
        .startsWith("baseline sets go on until steady; with those of the survey, ");
  }
}
