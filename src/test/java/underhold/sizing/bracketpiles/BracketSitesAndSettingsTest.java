package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.bracketpiles.PlatformEdge.*;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.StageDetail;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases of what the site says of edge and ground, what is asked, and settings. */
class BracketSitesAndSettingsTest {
  private static List<String> missing(Sheet sheet) {
    return sheet.missing().stream().map(MissingInput::name).toList();
  }

  private static void by(Sheet sheet, Map<String, Double> hand) {
    hand.forEach(
        (id, value) ->
            assertThat(step(sheet, id)).as(id).isCloseTo(value, within(1e-3 * Math.abs(value))));
  }

  @Test
  void without_a_load_the_sheet_asks_and_holds_no_number() {
    Sheet sheet = BracketSites.size(EDGE.replace("\"lineLoad\": \"60 kN/m\",", ""), FREE);
    assertThat(missing(sheet)).containsExactly("lineLoad");
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.quantities()).isEmpty();
  }

  @Test
  void without_layers_the_sheet_asks() {
    int from = EDGE.indexOf("\"ground\"");
    int to = EDGE.indexOf("\"zones\"");
    Sheet sheet = BracketSites.size(EDGE.substring(0, from) + EDGE.substring(to), FREE);
    assertThat(missing(sheet)).containsExactly("ground");
    assertThat(sheet.steps()).isEmpty();
  }

  @Test
  void an_area_or_a_structure_passed_under_is_no_edge() {
    assertThat(missing(BracketSites.size(with("cantilevered-edge", "area"))))
        .contains("loadPattern");
    assertThat(
            missing(
                BracketSites.size(
                    with("\"beside\"", "\"wholly-under\"")
                        .replace("\"gapToExcavation\": \"2.5 m\",", ""))))
        .contains("excavationPosition");
    String nothing =
        EDGE.replace("\"foundingDepth\": \"0.9 m\",", "")
            .replace("\"footingStrength\": \"strong-concrete\",", "");
    assertThat(missing(BracketSites.size(nothing))).contains("foundingDepth", "footingStrength");
  }

  @Test
  void a_column_shares_its_load_among_brackets() {
    String column =
        with("\"lineLoad\": \"60 kN/m\"", "\"columnLoad\": \"400 kN\"")
            .replace("cantilevered-edge", "concentrated");
    Sheet sheet = BracketSites.size(column, "moment-path=couple");
    StepProof.redo(sheet);
    assertThat(step(sheet, "bracket-load")).isCloseTo(200, within(1e-9));
    assertThat(sheet.check("edge-span")).isEmpty();
    assertThat(sheet.check("pile-spacing")).isEmpty();
    assertThat(sheet.step("twist")).isEmpty();
    assertThat(sheet.quantities().get(0).amount().si()).isEqualTo(2);
    Sheet four = BracketSites.size(column, "moment-path=couple", "brackets-per-column=4");
    assertThat(step(four, "bracket-load")).isCloseTo(100, within(1e-9));
  }

  @Test
  void a_rubble_edge_is_referred_even_where_the_pressure_is_low() {
    String rubble = with("strong-concrete", "rubble");
    Sheet sheet = BracketSites.size(rubble, FREE, "masonry-bearing=3 MPa");
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(BracketSites.size(rubble, FREE), "seat-bearing").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void soft_ground_at_the_head_is_referred_unless_the_structure_carries_the_moment() {
    String soft =
        EDGE.replace("\"stiff-clay\"", "\"soft-clay\"").replace("\"90 kPa\"", "\"15 kPa\"");
    Sheet sheet = BracketSites.size(soft, FREE);
    StepProof.redo(sheet);
    assertThat(check(sheet, "head-ground").verdict()).isEqualTo(Verdict.REFER);
    assertThat(sheet.input("soil-reaction-at-head").orElseThrow().amount().orElseThrow().si())
        .isCloseTo(67 * 15, within(1e-9));
    assertThat(BracketSites.size(soft, "moment-path=couple").check("head-ground")).isEmpty();
  }

  @Test
  @DisplayName(
      "Own case: peat along the pile, 500 kPa, is softer than the 668 kPa that keeps 5.5 x 0.361 in from buckling: referred; no bond in peat")
  void peat_neither_braces_nor_bonds() {
    Sheet sheet = BracketSites.size(with("\"dense-sand\"", "\"peat\""), "moment-path=tied");
    assertThat(step(sheet, "buckling-stiffness")).isCloseTo(668.3, within(0.5));
    assertThat(check(sheet, "soft-ground-buckling").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "pile-bond").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void a_span_nobody_stated_refers_all_that_rests_on_it() {
    Sheet sheet = BracketSites.size(EDGE.replace("\"clearSpan\": \"1.8 m\",", ""), FREE);
    assertThat(sheet.input("clear-span").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(check(sheet, "edge-span").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "pile-bond").verdict()).isEqualTo(Verdict.REFER);
  }

  @ParameterizedTest(name = "{0} as assumed by nobody: condition {0} gives {1}")
  @CsvSource({"good, PASSES", "fair, PASSES", "poor, REFER", "dangerous, REFER"})
  void poor_condition_refers_the_span(String condition, Verdict verdict) {
    Sheet sheet =
        BracketSites.size(
            with(
                "\"structureCondition\": \"good\"",
                "\"structureCondition\": \"" + condition + "\""),
            FREE);
    assertThat(check(sheet, "edge-span").verdict()).isEqualTo(verdict);
  }

  @Test
  @DisplayName(
      "Own case: edge of 40 kN m and 80 kN, 1.6 x 60 = 96 kN/m: sqrt(320/96) = 1.826 m, 160/96 = 1.667 m: spacing 1.65 m")
  void strength_of_the_edge_limits_the_spacing() {
    Sheet sheet = BracketSites.size(EDGE, FREE, "edge-moment=40 kN·m", "edge-shear=80 kN");
    StepProof.redo(sheet);
    by(sheet, Map.of("span-by-moment", 1.826, "span-by-shear", 1.667, "bracket-load", 99.0));
    Sheet wide = BracketSites.size(EDGE, FREE, "spacing=2.5 m");
    assertThat(check(wide, "edge-span").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(step(wide, "bracket-load")).isCloseTo(150, within(1e-9));
  }

  @Test
  void masonry_and_plain_strips_have_caps() {
    String longer = with("\"clearSpan\": \"1.8 m\"", "\"clearSpan\": \"5 m\"");
    String brick = longer.replace("\"reinforced-concrete\"", "\"unreinforced-masonry\"");
    assertThat(check(BracketSites.size(brick, FREE), "edge-span").capacity().si())
        .isCloseTo(2.4, within(1e-9));
    assertThat(
            check(BracketSites.size(brick, FREE, "sound-wall-height=1 m"), "edge-span")
                .capacity()
                .si())
        .isCloseTo(1.5, within(1e-9));
    assertThat(
            check(
                    BracketSites.size(longer.replace("strong-concrete", "plain-concrete"), FREE),
                    "edge-span")
                .capacity()
                .si())
        .isCloseTo(1.8, within(1e-9));
    assertThat(check(BracketSites.size(longer, FREE), "edge-span").capacity().si())
        .isCloseTo(5, within(1e-9));
  }

  @Test
  void a_stated_offset_and_a_survey_change_the_eccentricity() {
    String offset = with("\"gapToExcavation\"", "\"loadOffset\": \"0.15 m\", \"gapToExcavation\"");
    assertThat(step(BracketSites.size(offset, FREE), "eccentricity"))
        .isCloseTo(0.15 + 0.0254 + 0.0762, within(1e-9));
    assertThat(step(BracketSites.size(offset, FREE, "pile-position=surveyed"), "eccentricity"))
        .isCloseTo(0.15 + 0.0254, within(1e-9));
  }

  @Test
  void an_eccentricity_beyond_judgement_is_referred_and_beyond_strength_fails() {
    Sheet far = BracketSites.size(EDGE, FREE, "pile-gap=120 mm", "casing=9.625 x 0.545 in");
    assertThat(check(far, "bracket-eccentricity").verdict()).isEqualTo(Verdict.REFER);
    Sheet weak = BracketSites.size(EDGE, FREE, "casing=5.5 x 0.361 in");
    assertThat(check(weak, "bracket-eccentricity").verdict()).isEqualTo(Verdict.FAILS);
    // 0.6 x greatest moment beside 108 kN: (1 - 0.1108) x 303370 x 115.2e-6 = 31.08; x 0.6 / 108
    assertThat(check(weak, "bracket-eccentricity").capacity().si()).isCloseTo(0.1727, within(5e-4));
  }

  @Test
  void a_permanent_pile_loses_wall_and_a_longer_life_never_helps() {
    Sheet temporary = BracketSites.size(EDGE, FREE, "casing=7 x 0.5 in");
    Sheet permanent =
        BracketSites.size(with("\"temporary\"", "\"permanent\""), FREE, "casing=7 x 0.5 in");
    assertThat(step(permanent, "casing-area")).isLessThan(step(temporary, "casing-area"));
    assertThat(step(permanent, "combined")).isGreaterThan(step(temporary, "combined"));
    // 6.875 x 0.4375 in: 8.849 in2
    assertThat(step(permanent, "casing-area")).isCloseTo(8.849 * 0.00064516, within(3e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pile-head", "couple", "paired", "tied"})
  void us_and_si_readers_get_the_same_sheet(String path) {
    Sheet us =
        BracketSites.size(
            EDGE.replace("60 kN/m", "4 kip/ft")
                .replace("1.8 m", "6 ft")
                .replace("90 kPa", "2000 psf"),
            "moment-path=" + path);
    Sheet si =
        BracketSites.size(
            EDGE.replace("60 kN/m", "58.375611593 kN/m")
                .replace("1.8 m", "1.8288 m")
                .replace("90 kPa", "95.760517960678 kPa"),
            "moment-path=" + path);
    assertThat(us.steps()).hasSameSizeAs(si.steps());
    for (int i = 0; i < us.steps().size(); i++) {
      double value = si.steps().get(i).result().si();
      assertThat(us.steps().get(i).result().si())
          .as(us.steps().get(i).id())
          .isCloseTo(value, within(1e-8 * Math.abs(value)));
    }
    for (int i = 0; i < us.checks().size(); i++) {
      assertThat(us.checks().get(i).verdict()).isEqualTo(si.checks().get(i).verdict());
    }
    assertThat(us.steps())
        .allSatisfy(
            step ->
                assertThat(step.calculation(UnitSystem.US))
                    .doesNotContain(" kPa", " MPa", " kN", " mm"));
    assertThat(us.checks())
        .allSatisfy(
            one ->
                assertThat(one.demand().in(UnitSystem.US) + one.capacity().in(UnitSystem.US))
                    .doesNotContain("Pa", "kN", "mm"));
  }

  @Test
  void the_stages_end_with_digging_and_each_has_a_hold_point() {
    Sheet sheet = BracketSites.size(EDGE, FREE);
    assertThat(sheet.stages().stream().map(one -> one.title()))
        .containsExactly(
            "Before drilling",
            "Install",
            "Cure and test",
            "Brackets",
            "Preload",
            "Shims",
            "Release of the jacks",
            "Dig");
    assertThat(sheet.stages()).allSatisfy(one -> assertThat(one.holdPoints()).isNotEmpty());
    // 75 % of 108 kN in quarters, each load a step of its own
    assertThat(((StageDetail.LoadSteps) sheet.stages().get(4).detail()).steps())
        .extracting(step -> step.in(UnitSystem.SI).replaceAll("[^0-9.]*([0-9.]+ kN).*", "$1"))
        .containsExactly("20.25 kN", "40.5 kN", "60.75 kN", "81 kN");
    assertThat(sheet.notCovered()).anyMatch(one -> one.contains("uplift"));
  }

  @Test
  void every_setting_can_be_read_and_a_wrong_one_is_explained() {
    assertThat(BracketSettings.TABLE.names())
        .contains("moment-path", "proof-level", "casing", "bar");
    assertThat(BracketSettings.TABLE.parse(List.of("moment-path=maybe")).problems())
        .singleElement()
        .asString()
        .contains("undecided, pile-head, couple, paired, tied");
    assertThat(BracketSettings.CASING.words()).contains("11.875 x 0.582 in").hasSize(13);
    assertThat(new BracketPilesMethod().id()).isEqualTo("bracket-piles");
    Amount yield = BracketSettings.TABLE.number("casing-yield").orElseThrow().fallback();
    assertThat(yield.in(UnitSystem.US)).isEqualTo("80000 psi");
  }

  @Test
  @DisplayName(
      "The head leans no further than the structure may move: 6 mm here, 12.7 mm elsewhere")
  void the_head_is_held_to_the_limit_of_the_structure() {
    String strict = BracketSites.text().replace("\"10 mm\"", "\"6 mm\"");
    String loose = BracketSites.text().replace("\"10 mm\"", "\"20 mm\"");
    assertThat(BracketSites.size(strict).check("head-sideways").orElseThrow().capacity().si())
        .isEqualTo(0.006);
    assertThat(BracketSites.size(loose).check("head-sideways").orElseThrow().capacity().si())
        .isEqualTo(0.0127);
  }
}
