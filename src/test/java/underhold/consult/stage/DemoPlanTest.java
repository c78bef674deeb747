package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import underhold.advice.Effect;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.RandomZones;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.Part;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/** A box over a cut, the line where the cut ends below it, and an overhanging platform edge. */
class DemoPlanTest {
  private static final Path DEMO = Path.of("cases/demo/three-bridges-interchange.site.json");
  private static final String BOX = "box over the cut";
  private static final String EDGE = "end of the cut";
  private static final String PLATFORM = "platform edge";

  private static String text() {
    try {
      return Files.readString(DEMO, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Scheme scheme(String text) {
    Site site =
        SiteReader.read(text, "demo.site.json")
            .fold(
                SiteReading.Valid::site,
                invalid -> {
                  throw new IllegalArgumentException(invalid.problems().toString());
                });
    SchemeOutcome outcome = new SchemeDesk(RandomZones.engine()).scheme(RandomZones.advise(site));
    assertThat(outcome).isInstanceOf(SchemeOutcome.Made.class);
    return ((SchemeOutcome.Made) outcome).scheme();
  }

  static StagePlan plan(Scheme scheme) {
    PlanOutcome outcome = StagePlanner.plan(scheme, PlanSettings.TABLE.defaults());
    assertThat(outcome).isInstanceOf(PlanOutcome.Made.class);
    return ((PlanOutcome.Made) outcome).plan();
  }

  private static SupportOption method(Scheme scheme, String zone) {
    return scheme.best().of(zone).method().orElseThrow();
  }

  private static List<PlanStage> of(StagePlan plan, String zone, StageKind kind) {
    return plan.stages().stream()
        .filter(stage -> stage.zone().equals(zone) && stage.kind() == kind)
        .toList();
  }

  private static void comesBefore(StagePlan plan, List<PlanStage> these, List<PlanStage> those) {
    Reach reach = Reach.of(plan.stages());
    assertThat(these).isNotEmpty();
    assertThat(those).isNotEmpty();
    for (PlanStage one : these) {
      for (PlanStage other : those) {
        assertThat(reach.isBefore(one.id(), other.id()))
            .as(one.id() + " before " + other.id())
            .isTrue();
      }
    }
  }

  @Test
  void piles_carry_the_box_pits_close_the_earth_edge_brackets_prop_the_platform() {
    Scheme scheme = scheme(text());

    assertThat(method(scheme, BOX)).isEqualTo(SupportOption.DRILLED_PILES);
    assertThat(method(scheme, EDGE)).isEqualTo(SupportOption.EDGE_PITS);
    assertThat(method(scheme, PLATFORM)).isEqualTo(SupportOption.BRACKET_PILES);
    assertThat(scheme.primary()).contains(BOX);
    assertThat(scheme.isPrimary(BOX)).isTrue();
    assertThat(scheme.part(EDGE)).isEqualTo(Part.CLOSES_EDGE);
    assertThat(scheme.part(PLATFORM)).isEqualTo(Part.PROPS_EDGE);
    assertThat(scheme.best().findings()).extracting(PairFinding::id).contains("SCH-20");
    assertThat(scheme.questions()).isEmpty();
  }

  @Test
  void piles_are_loaded_before_edge_pits_and_brackets_hold_before_the_dig() {
    StagePlan plan = plan(scheme(text()));

    comesBefore(plan, of(plan, BOX, StageKind.ACCEPT), of(plan, EDGE, StageKind.PITS));
    comesBefore(plan, of(plan, EDGE, StageKind.ACCEPT), of(plan, EDGE, StageKind.PITS));
    comesBefore(plan, of(plan, EDGE, StageKind.CLOSE), of(plan, BOX, StageKind.DIG));
    comesBefore(plan, of(plan, PLATFORM, StageKind.ACCEPT), of(plan, PLATFORM, StageKind.DIG));
    comesBefore(plan, of(plan, PLATFORM, StageKind.ACCEPT), of(plan, BOX, StageKind.DIG));
    comesBefore(plan, of(plan, PLATFORM, StageKind.ACCEPT), of(plan, EDGE, StageKind.DIG));
    comesBefore(plan, of(plan, BOX, StageKind.DRILL), of(plan, EDGE, StageKind.PITS));
    assertThat(of(plan, BOX, StageKind.LOAD)).hasSize(4);
    assertThat(of(plan, PLATFORM, StageKind.LOAD)).hasSize(4);
    assertThat(plan.limit(EDGE)).isPresent();
    assertThat(of(plan, EDGE, StageKind.PITS))
        .isNotEmpty()
        .allSatisfy(
            round ->
                assertThat(round.moves().openMetres())
                    .isLessThanOrEqualTo(plan.limit(EDGE).orElseThrow().metres() + 1e-9));
  }

  @Test
  void a_stage_of_loading_holds_one_step_and_what_follows_has_stages_of_its_own() {
    Scheme scheme = scheme(text());
    StagePlan plan = plan(scheme);

    for (String zone : List.of(BOX, PLATFORM, EDGE)) {
      List<PlanStage> loads = of(plan, zone, StageKind.LOAD);
      assertThat(loads).hasSize(4);
      for (PlanStage load : loads) {
        // one jacking to one load, and nothing that belongs after the last hold point
        assertThat(load.work())
            .filteredOn(work -> work.template().matches("Jack (each pile|between) .*\\{.*"))
            .hasSize(1);
        assertThat(load.work().get(load.work().size() - 1).template()).startsWith("Jack ");
        assertThat(load.work())
            .noneMatch(
                work ->
                    work.template()
                        .toLowerCase(Locale.ROOT)
                        .matches(".*(release|weld|lock off|prove).*"));
        // nothing hangs on oil from one closure to the next
        boolean first = load.title().startsWith("Step 1");
        assertThat(load.work().stream().anyMatch(work -> work.template().contains("on oil alone")))
            .isEqualTo(first);
        assertThat(load.holds()).isNotEmpty();
      }
      List<PlanStage> accepts = of(plan, zone, StageKind.ACCEPT);
      comesBefore(plan, loads, accepts);
      assertThat(accepts).hasSizeGreaterThan(1);
      assertThat(accepts).allSatisfy(stage -> assertThat(stage.holds()).isNotEmpty());
      // only the last of them brings the support to bear
      assertThat(accepts.stream().filter(stage -> !stage.moves().accepts().isEmpty()))
          .containsExactly(accepts.get(accepts.size() - 1));
    }
  }

  @Test
  void piles_are_built_once_and_jacked_to_no_more_than_the_structure() {
    StagePlan plan = plan(scheme(text()));
    String jacked = words(of(plan, EDGE, StageKind.LOAD));

    assertThat(jacked)
        .doesNotContain("Build the", "pile loaded most")
        .contains("never lift more than the stated load");
    assertThat(of(plan, EDGE, StageKind.BUILD)).isNotEmpty();
  }

  @Test
  void braces_are_taken_away_from_the_lowest_up() {
    StagePlan plan = plan(scheme(text()));
    PlanStage away = of(plan, EDGE, StageKind.REMOVE).get(0);

    assertThat(away.moves().removes())
        .extracting(Support::name)
        .containsExactly(
            "brace level 3 of " + EDGE, "brace level 2 of " + EDGE, "brace level 1 of " + EDGE);
    assertThat(words(List.of(away)))
        .containsSubsequence("brace level 3", "brace level 2", "brace level 1");
  }

  private static String words(List<PlanStage> stages) {
    return stages.stream()
        .flatMap(stage -> stage.work().stream())
        .map(phrase -> phrase.in(UnitSystem.SI))
        .collect(Collectors.joining(" "));
  }

  @Test
  void a_night_closure_goes_to_each_step_of_load_below_live_rail() {
    Scheme scheme = scheme(text());
    StagePlan byClosure = plan(scheme);
    assertThat(of(byClosure, BOX, StageKind.LOAD))
        .allSatisfy(step -> assertThat(step.time().days()).isEqualTo(1));

    var free = PlanSettings.TABLE.parse(List.of("load-by-closure=no", "step-days=0.25"));
    assertThat(free.problems()).isEmpty();
    StagePlan plan = ((PlanOutcome.Made) StagePlanner.plan(scheme, free.settings())).plan();
    assertThat(of(plan, BOX, StageKind.LOAD))
        .allSatisfy(step -> assertThat(step.time().days()).isEqualTo(0.25));
  }

  @Test
  void a_second_rig_saves_days_and_breaks_no_order() {
    Scheme scheme = scheme(text());
    var two = PlanSettings.TABLE.parse(List.of("rigs=3"));
    StagePlan more = ((PlanOutcome.Made) StagePlanner.plan(scheme, two.settings())).plan();

    assertThat(more.schedule().days()).isLessThan(plan(scheme).schedule().days());
    comesBefore(more, of(more, BOX, StageKind.DRILL), of(more, EDGE, StageKind.PITS));
  }

  @Test
  void rock_at_the_edge_drops_the_edge_pits_and_says_why() {
    String rock =
        text()
            .replace(
                "\"edgeGround\": \"earth\"",
                "\"edgeGround\": \"rock\", \"rockJoints\": \"favourable\"")
            .replace(
                "\"name\": \"end of the cut\",",
                "\"name\": \"end of the cut\", \"ground\": {\"layers\": [{\"top\": \"0 m\", \"soil\":"
                    + " \"fill\"}, {\"top\": \"6 m\", \"soil\": \"rock\"}]},");
    Scheme scheme = scheme(rock);

    assertThat(method(scheme, EDGE)).isNotEqualTo(SupportOption.EDGE_PITS);
    var edge = scheme.best().of(EDGE).zone().ranking().of(SupportOption.EDGE_PITS);
    assertThat(edge.standing()).isNotEqualTo(Standing.LEADS);
    assertThat(edge.findings(Effect.AGAINST))
        .anyMatch(finding -> finding.rule().facts().contains("standingRockEdge"));
    assertThat(scheme.best().findings()).extracting(PairFinding::id).contains("SCH-22");
    assertThat(plan(scheme).stages()).noneMatch(stage -> stage.kind() == StageKind.PITS);
  }

  @Test
  void without_relations_the_plan_keeps_the_safe_orders_and_asks() {
    String all = text();
    Scheme scheme = scheme(all.substring(0, all.indexOf(",\n  \"relations\"")) + "}");
    StagePlan plan = plan(scheme);

    assertThat(scheme.best().pairPoints()).isZero();
    assertThat(scheme.questions()).isNotEmpty();
    assertThat(scheme.best().orders()).isNotEmpty().allMatch(order -> order.assumed());
    comesBefore(plan, of(plan, BOX, StageKind.ACCEPT), of(plan, EDGE, StageKind.PITS));
    comesBefore(plan, of(plan, PLATFORM, StageKind.ACCEPT), of(plan, BOX, StageKind.DIG));
  }

  @Test
  void the_sheets_still_give_the_times_that_the_plan_takes_from_them() {
    StagePlan plan = plan(scheme(text()));

    assertThat(of(plan, BOX, StageKind.DRILL).get(0).time().source()).contains("by the sheet");
    assertThat(of(plan, EDGE, StageKind.DRILL).get(0).time().source()).contains("by the sheet");
    assertThat(of(plan, PLATFORM, StageKind.DRILL).get(0).time().source())
        .contains("from the hours of the sheet");
    assertThat(of(plan, EDGE, StageKind.PITS))
        .allSatisfy(round -> assertThat(round.time().source()).contains("by the sheet"));
  }

  @Test
  void a_zone_without_a_method_is_only_investigated_and_its_neighbours_wait() {
    ObjectNode open = (ObjectNode) JsonMapper.shared().readTree(text());
    ObjectNode platform = (ObjectNode) open.get("zones").get(2);
    platform
        .putObject("facts")
        .put("loadPattern", "cantilevered-edge")
        .put("excavationPosition", "partly-under");
    open.remove("relations");
    Scheme scheme = scheme(open.toString());
    assertThat(scheme.best().of(PLATFORM).method()).isEmpty();
    StagePlan plan = plan(scheme);

    assertThat(plan.stages().stream().filter(stage -> stage.zone().equals(PLATFORM)))
        .extracting(PlanStage::kind)
        .containsExactly(StageKind.DECIDE);
    assertThat(scheme.part(PLATFORM)).isEqualTo(Part.OPEN);
    comesBefore(plan, of(plan, PLATFORM, StageKind.DECIDE), of(plan, EDGE, StageKind.PITS));
    assertThat(of(plan, EDGE, StageKind.PITS).get(0).waitsFor()).containsExactly(PLATFORM);
  }
}
