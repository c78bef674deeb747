package underhold.sizing.monitoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.monitoring.MonitoringSites.mill;
import static underhold.sizing.monitoring.MonitoringSites.sheet;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.sizing.Basis;
import underhold.sizing.BillItem;
import underhold.sizing.Caution;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases; numbers worked by hand, apart from the program. */
class MonitoringSheetTest {
  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id)).result().si();
  }

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static double quantity(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(item -> item.name().equals(name))
        .map(BillItem::amount)
        .findFirst()
        .orElseThrow()
        .si();
  }

  @Test
  @DisplayName(
      "Own case by hand: brick wall 12 x 9 m, excavation 5 m deep, 5 of 10 mm: 1/1000, strain 0.1325 %, category 1 at 2.83 mm")
  void a_wall_by_hand() {
    Sheet sheet = sheet(mill());
    StepProof.redo(sheet);
    Map<String, Double> byHand =
        Map.ofEntries(
            Map.entry("fade-length", 5.0),
            Map.entry("angular-distortion", 0.001),
            Map.entry("wall-height", 9.0),
            Map.entry("bent-length", 10.0),
            Map.entry("deflection-ratio", 0.0005),
            Map.entry("horizontal-strain", 0.002),
            Map.entry("sagging-bending-factor", 0.770185),
            Map.entry("sagging-diagonal-factor", 1.316556),
            Map.entry("hogging-bending-factor", 1.262593),
            Map.entry("hogging-diagonal-factor", 1.079139),
            Map.entry("sagging-bending-strain", 2.649195e-3),
            Map.entry("sagging-diagonal-strain", 2.054338e-3),
            Map.entry("hogging-bending-strain", 2.396010e-3),
            Map.entry("hogging-diagonal-strain", 2.080100e-3),
            Map.entry("tensile-strain", 2.649195e-3),
            Map.entry("predicted-strain", 1.324597e-3),
            Map.entry("movement-category-0", 1.887366e-3),
            Map.entry("movement-category-1", 2.831049e-3),
            Map.entry("movement-category-2", 5.662098e-3),
            Map.entry("movement-category-3", 1.132420e-2),
            Map.entry("point-strain", 1.207107e-3),
            Map.entry("alert-level", 0.005),
            Map.entry("action-level", 0.008),
            Map.entry("stop-level", 0.010),
            Map.entry("differential-limit", 0.0025),
            Map.entry("alert-difference", 0.00125),
            Map.entry("action-difference", 0.002),
            Map.entry("stop-difference", 0.0025),
            Map.entry("accuracy-needed", 0.005 / 3),
            Map.entry("difference-accuracy", 1.414214e-3),
            Map.entry("vibration-limit", 0.005),
            Map.entry("in-zone", -6.0));
    byHand.forEach(
        (id, value) ->
            assertThat(step(sheet, id)).as(id).isCloseTo(value, within(1e-6 * Math.abs(value))));
  }

  @Test
  @DisplayName("Own case by hand: demands, capacities and verdicts of that wall")
  void checks_by_hand() {
    Sheet sheet = sheet(mill());
    Check forecast = check(sheet, "forecast-movement");
    assertThat(forecast.demand().si()).isEqualTo(0.005);
    assertThat(forecast.capacity().si()).isEqualTo(0.010);
    assertThat(forecast.verdict()).isEqualTo(Verdict.PASSES);
    Check distortion = check(sheet, "angular-distortion");
    assertThat(distortion.demand().si()).isCloseTo(0.001, within(1e-12));
    assertThat(distortion.capacity().si()).isEqualTo(0.0005);
    assertThat(distortion.verdict()).isEqualTo(Verdict.REFER);
    assertThat(distortion.source().citation()).contains("Sowers");
    Check damage = check(sheet, "damage-category");
    assertThat(damage.capacity().si()).isEqualTo(0.00075);
    // Sagging 0.1325 % and hogging 0.1198 % both break the limit.
    assertThat(damage.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(damage.note().template()).contains("category 2, slight");
    // At 3 mm sagging breaks it (0.0795 %), hogging does not (0.0719 %): an engineer decides.
    Sheet less = sheet(mill("predictedMovement", "3 mm"));
    assertThat(check(less, "damage-category").verdict()).isEqualTo(Verdict.REFER);
    Check instrument = check(sheet, "instrument-accuracy");
    assertThat(instrument.demand().si()).isEqualTo(0.001);
    assertThat(instrument.verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "difference-accuracy").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void hogging_alone_passes_and_more_movement_fails_both_ways() {
    Sheet hogging = sheet(mill("predictedMovement", "3 mm"), "bending=hogging");
    assertThat(check(hogging, "damage-category").demand().si())
        .isCloseTo(0.718803e-3, within(1e-9)); // 2.396010e-3 x 3 / 10
    assertThat(check(hogging, "damage-category").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(hogging.step("sagging-bending-factor")).isEmpty();
    Sheet more = sheet(mill("predictedMovement", "6 mm"));
    assertThat(check(more, "damage-category").verdict()).isEqualTo(Verdict.FAILS);
    Sheet sagging = sheet(mill(), "bending=sagging");
    assertThat(check(sagging, "damage-category").verdict()).isEqualTo(Verdict.FAILS);
    Sheet accepted = sheet(mill(), "damage-category=slight"); // 0.1325 of 0.15 %
    assertThat(check(accepted, "damage-category").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(accepted, "damage-category").capacity().si()).isEqualTo(0.0015);
  }

  @ParameterizedTest(name = "Own case by hand: zone by {0}: reach {1} m, element at 4 m is {2}")
  @CsvSource({
    "zone-stress-overlap, 2.020726, outside",
    "zone-forty-five-degrees, 3.5, outside",
    "zone-clearance-as-depth, 3.5, outside",
    "zone-one-on-one, 3.5, outside",
    "zone-one-on-one-and-a-half, 5.25, inside",
    "zone-ten-on-six, 5.833333, inside",
    "zone-one-on-two, 7, inside",
    "zone-firm-ground-1914, 7, inside",
    "zone-berm, 10, inside",
    "zone-monitoring-depth, 5, inside"
  })
  void zones_side_by_side(String id, double reach, String where) {
    Sheet sheet = sheet(mill());
    assertThat(step(sheet, id)).isCloseTo(reach, within(1e-6));
    assertThat(sheet.step(id).orElseThrow().note().template()).contains("is " + where);
    assertThat(sheet.step("zone-monitoring-historic")).isEmpty();
  }

  @Test
  void a_wall_at_the_face_leaves_the_berm_rule_out_and_a_deep_dig_ends_it() {
    Sheet walled = sheet(mill("excavationWall", "stiff"));
    assertThat(walled.step("zone-berm")).isEmpty();
    assertThat(step(walled, "in-zone")).isCloseTo(4 - 7, within(1e-9));
    Sheet deep = sheet(mill("excavationBelowFooting", "4.5 m", "excavationDepth", "6 m"));
    assertThat(deep.step("zone-berm")).isEmpty();
    assertThat(deep.step("in-zone").orElseThrow().note().template()).contains("berm rule ends");
    Sheet above = sheet(mill("excavationBelowFooting", "-1 m", "gapToExcavation", "9 m"));
    assertThat(step(above, "zone-one-on-two")).isZero();
    assertThat(step(above, "zone-berm")).isZero();
    assertThat(step(above, "in-zone")).isCloseTo(4, within(1e-9));
    StepProof.redo(above);
  }

  @Test
  void a_small_dig_far_enough_is_not_watched_by_code() {
    Sheet small = sheet(mill("excavationDepth", "1.5 m", "excavationBelowFooting", "0.5 m"));
    assertThat(step(small, "zone-monitoring-depth")).isZero();
    StepProof.redo(small);
  }

  @Test
  @DisplayName(
      "NYC TPPN 10/88 (secondary): 0.25 in and 0.5 in/s for historic structures; DIN 4150-3 3 mm/s governs")
  void a_listed_wall_has_stricter_limits() {
    Sheet sheet = sheet(mill("heritage", "listed", "predictedMovement", "7 mm"));
    assertThat(step(sheet, "movement-limit")).isCloseTo(0.00635, within(1e-9));
    assertThat(check(sheet, "forecast-movement").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(sheet, "forecast-movement").source().citation()).contains("10/88");
    assertThat(step(sheet, "vibration-v1")).isEqualTo(0.003);
    assertThat(step(sheet, "vibration-v2")).isCloseTo(0.003048, within(1e-9));
    assertThat(step(sheet, "vibration-v3")).isCloseTo(0.0127, within(1e-9));
    assertThat(step(sheet, "vibration-limit")).isEqualTo(0.003);
    assertThat(step(sheet, "zone-monitoring-historic")).isCloseTo(27.432, within(1e-9));
    assertThat(sheet.cautions()).extracting(Caution::hazard).contains("protected fabric");
    StepProof.redo(sheet);
  }

  @Test
  void the_stated_limit_governs_where_it_is_stricter_than_the_historic_one() {
    Sheet sheet = sheet(mill("heritage", "landmark", "movementLimit", "5 mm"));
    assertThat(step(sheet, "movement-limit")).isEqualTo(0.005);
    assertThat(step(sheet, "movement-limit-s2")).isCloseTo(0.00635, within(1e-9));
  }

  @Test
  void
      without_a_prediction_every_movement_check_refers_and_the_sheet_says_what_each_category_needs() {
    Sheet sheet = sheet(mill("predictedMovement", ""));
    for (String id : new String[] {"forecast-movement", "damage-category", "angular-distortion"}) {
      assertThat(check(sheet, id).verdict()).as(id).isEqualTo(Verdict.REFER);
      assertThat(check(sheet, id).note().template()).contains("No movement is predicted");
    }
    assertThat(check(sheet, "forecast-movement").demand().si()).isEqualTo(0.010);
    assertThat(step(sheet, "movement-category-1")).isCloseTo(2.831049e-3, within(1e-9));
    assertThat(step(sheet, "angular-distortion")).isCloseTo(0.002, within(1e-12));
    assertThat(sheet.step("predicted-strain")).isEmpty();
    assertThat(sheet.cautions()).extracting(Caution::hazard).contains("no prediction");
  }

  @Test
  void above_a_stated_limit_a_movement_fails_above_an_assumed_one_it_refers() {
    assertThat(check(sheet(mill("predictedMovement", "11 mm")), "forecast-movement").verdict())
        .isEqualTo(Verdict.FAILS);
    Sheet assumed = sheet(mill("movementLimit", "", "predictedMovement", "11 mm"));
    assertThat(check(assumed, "forecast-movement").verdict()).isEqualTo(Verdict.REFER);
    Sheet passes = sheet(mill("movementLimit", "", "predictedMovement", "4 mm"));
    assertThat(check(passes, "forecast-movement").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(passes, "forecast-movement").note().template()).contains("nobody stated");
  }

  @Test
  void above_a_stated_slope_a_distortion_fails_above_a_published_one_it_refers() {
    Sheet above = sheet(mill("predictedMovement", "11 mm", "movementLimit", "20 mm"));
    assertThat(check(above, "angular-distortion").verdict()).isEqualTo(Verdict.FAILS);
    Sheet between = sheet(mill("predictedMovement", "9 mm", "movementLimit", "20 mm"));
    assertThat(check(between, "angular-distortion").verdict()).isEqualTo(Verdict.REFER);
    Sheet below = sheet(mill("predictedMovement", "2 mm"));
    assertThat(check(below, "angular-distortion").verdict()).isEqualTo(Verdict.PASSES);
  }

  @ParameterizedTest(name = "distortion limit by {0} beside a stated 1 in 500: {1}")
  @CsvSource({
    "strictest, 0.0005",
    "sowers, 0.0005",
    "hutchings, 0.001",
    "bjerrum, 0.002",
    "skempton-macdonald, 0.002"
  })
  void author_of_the_distortion_limit(String author, double limit) {
    Sheet sheet = sheet(mill(), "distortion-author=" + author);
    assertThat(check(sheet, "angular-distortion").capacity().si()).isCloseTo(limit, within(1e-12));
  }

  @ParameterizedTest(name = "{0} of {1}, {2} storeys: strictest published distortion {3}")
  @CsvSource({
    "building-wall, unreinforced-masonry, 1, 0.001",
    "building-wall, rubble, 2, 0.0005",
    "building-wall, reinforced-concrete, 4, 0.002",
    "building-frame, reinforced-concrete, 4, 0.002",
    "building-frame, steel, 4, 0.002",
    "building-frame, timber, 2, 0.002",
    "tower-or-monument, reinforced-masonry, 3, 0.0005"
  })
  void published_distortions_follow_the_structure(
      String kind, String material, String storeys, double limit) {
    Sheet sheet =
        sheet(
            mill(
                "structureKind",
                kind,
                "structureMaterial",
                material,
                "storeys",
                storeys,
                "tiltLimit",
                ""));
    assertThat(step(sheet, "distortion-limit")).isCloseTo(limit, within(1e-12));
    assertThat(sheet.step("distortion-limit-b0")).isEmpty();
    StepProof.redo(sheet);
  }

  @Test
  void one_author_without_a_row_for_the_structure_gives_way_to_the_strictest() {
    Sheet sheet =
        sheet(
            mill("structureKind", "building-frame", "structureMaterial", "timber", "tiltLimit", ""),
            "distortion-author=sowers");
    assertThat(step(sheet, "distortion-limit")).isEqualTo(0.002);
  }

  @Test
  void a_tunnel_gets_no_damage_category_and_only_a_stated_slope() {
    Sheet stated =
        sheet(mill("structureKind", "tunnel-box", "structureMaterial", "reinforced-concrete"));
    assertThat(stated.check("damage-category")).isEmpty();
    assertThat(stated.step("rankin-negligible")).isEmpty();
    assertThat(check(stated, "angular-distortion").capacity().si()).isEqualTo(0.002);
    Sheet none =
        sheet(
            mill(
                "structureKind",
                "tunnel-box",
                "structureMaterial",
                "reinforced-concrete",
                "tiltLimit",
                ""));
    assertThat(none.check("angular-distortion")).isEmpty();
    assertThat(none.check("difference-accuracy")).isEmpty();
    assertThat(none.check("forecast-movement")).isPresent();
    assertThat(none.notCovered()).anyMatch(line -> line.contains("its owner must state one"));
  }

  @Test
  void frames_use_their_own_stiffness_and_materials_their_own_vibration() {
    Sheet frame = sheet(mill("structureKind", "building-frame", "structureMaterial", "steel"));
    // 10 / 108 + 9 × 12.5 / 20
    assertThat(step(frame, "hogging-bending-factor")).isCloseTo(5.717593, within(1e-6));
    assertThat(step(frame, "vibration-v1")).isEqualTo(0.020);
    assertThat(step(frame, "vibration-v2")).isCloseTo(0.0127, within(1e-9));
    Sheet reinforced = sheet(mill("structureMaterial", "reinforced-masonry"));
    assertThat(step(reinforced, "vibration-v2")).isCloseTo(0.00762, within(1e-9));
    Sheet rubble = sheet(mill("structureMaterial", "rubble"));
    assertThat(step(rubble, "vibration-v1")).isEqualTo(0.003);
    Sheet quick = sheet(mill(), "vibration-frequency=30");
    assertThat(step(quick, "vibration-v1")).isCloseTo(0.010, within(1e-12));
    assertThat(step(quick, "vibration-limit")).isCloseTo(0.00508, within(1e-9));
  }

  @Test
  @DisplayName(
      "Engineer's page on a monitored job: targets of 3 mm cannot police an alert level of 1/8 in; 1 mm can")
  void three_millimetres_cannot_police_an_eighth_of_an_inch() {
    Map<String, String> facts = mill("movementLimit", "0.25 in", "predictedMovement", "1 mm");
    Sheet coarse = sheet(facts, "instrument-accuracy=3 mm");
    assertThat(step(coarse, "alert-level")).isCloseTo(0.0254 / 8, within(1e-9));
    assertThat(check(coarse, "instrument-accuracy").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(sheet(facts), "instrument-accuracy").verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  void quantities_and_time_by_hand() {
    Sheet sheet = sheet(mill());
    assertThat(quantity(sheet, "levelling points at the foot")).isEqualTo(4); // 12 / 5 up, + 1
    assertThat(quantity(sheet, "position targets on the face")).isEqualTo(8);
    assertThat(quantity(sheet, "crack gauges")).isEqualTo(3);
    assertThat(quantity(sheet, "datum points")).isEqualTo(2);
    assertThat(quantity(sheet, "sets of readings before")).isEqualTo(3);
    assertThat(quantity(sheet, "sets of readings during the work")).isEqualTo(56);
    assertThat(quantity(sheet, "sets of readings after")).isEqualTo(8);
    assertThat(sheet.time().get(3).amount().si()).isCloseTo(18 * 168, within(1e-9));
    Sheet close = sheet(mill("wallLength", "15 m"), "point-spacing=5 m", "target-rows=3");
    assertThat(quantity(close, "levelling points at the foot")).isEqualTo(4);
    assertThat(quantity(close, "position targets on the face")).isEqualTo(12);
    Sheet least = sheet(mill("wallLength", "2 m"));
    assertThat(quantity(least, "levelling points at the foot")).isEqualTo(3);
    assertThat(step(least, "fade-length")).isEqualTo(1);
  }

  @Test
  void no_work_before_the_baseline_and_each_level_says_who_acts() {
    Sheet sheet = sheet(mill());
    assertThat(sheet.stages().get(0).holdPoints().get(0).condition().template())
        .contains("Baseline")
        .contains("no work before");
    assertThat(sheet.stages().stream().map(stage -> stage.title()))
        .containsExactly(
            "Before any work",
            "While work goes on",
            "At the alert level",
            "At the action level",
            "At the stop level",
            "After the work");
    assertThat(sheet.stages())
        .allSatisfy(
            stage -> {
              assertThat(stage.holdPoints()).isNotEmpty();
              assertThat(stage.holdPoints()).allMatch(hold -> !hold.releasedBy().isBlank());
            });
  }

  @Test
  void a_prediction_above_the_alert_level_is_pointed_out() {
    assertThat(sheet(mill()).cautions())
        .extracting(Caution::hazard)
        .doesNotContain("prediction above the alert level");
    assertThat(sheet(mill("predictedMovement", "5.1 mm")).cautions())
        .extracting(Caution::hazard)
        .contains("prediction above the alert level");
  }

  @Test
  void soil_taken_from_under_the_element_fails_and_says_so() {
    Sheet sheet = sheet(mill("excavationPosition", "partly-under", "gapToExcavation", ""));
    assertThat(check(sheet, "soil-stays").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(sheet.input("gap").orElseThrow().amount().orElseThrow().si()).isZero();
    assertThat(sheet.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(sheet(mill()).check("soil-stays")).isEmpty();
    assertThat(sheet(mill()).cautions())
        .extracting(Caution::hazard)
        .contains("digging below the footing");
    assertThat(sheet(mill("excavationBelowFooting", "0 m")).cautions())
        .extracting(Caution::hazard)
        .doesNotContain("digging below the footing");
  }

  @Test
  void without_an_excavation_there_is_no_zone_and_the_movement_fades_over_half_the_wall() {
    Sheet sheet =
        sheet(
            mill(
                "excavationPosition",
                "no-excavation",
                "gapToExcavation",
                "",
                "excavationBelowFooting",
                "",
                "excavationDepth",
                "",
                "excavationWall",
                ""));
    assertThat(sheet.complete()).isTrue();
    assertThat(sheet.step("in-zone")).isEmpty();
    assertThat(step(sheet, "fade-length")).isEqualTo(6);
    StepProof.redo(sheet);
  }

  @Test
  void what_is_missing_is_asked_for_and_no_number_is_shown() {
    Sheet sheet =
        sheet(
            mill(
                "structureKind",
                "",
                "gapToExcavation",
                "",
                "excavationBelowFooting",
                "",
                "excavationDepth",
                ""));
    assertThat(sheet.missing().stream().map(MissingInput::name))
        .containsExactlyInAnyOrder(
            "structureKind", "gapToExcavation", "excavationBelowFooting", "excavationDepth");
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.quantities()).isEmpty();
    assertThat(sheet.missing()).allMatch(one -> one.question().endsWith("?"));
  }

  @Test
  void a_wall_of_unstated_length_or_height_never_passes_on_the_guess() {
    Sheet sheet = sheet(mill("wallLength", "", "storeys", "", "predictedMovement", "1 mm"));
    assertThat(check(sheet, "damage-category").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "damage-category").note().template())
        .contains("length of the wall", "storeys");
    assertThat(check(sheet, "forecast-movement").verdict()).isEqualTo(Verdict.PASSES);
    Sheet unprotected = sheet(mill("heritage", "", "predictedMovement", "7 mm"));
    assertThat(check(unprotected, "forecast-movement").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void what_rests_on_a_guess_never_fails() {
    Sheet sheet =
        sheet(
            mill(
                "wallLength",
                "",
                "storeys",
                "",
                "movementLimit",
                "",
                "tiltLimit",
                "1 in 500",
                "predictedMovement",
                "20 mm"),
            "instrument-accuracy=3 mm");
    assertThat(sheet.checks()).allMatch(one -> one.verdict() == Verdict.REFER);
    Sheet stated =
        sheet(
            mill("predictedMovement", "20 mm", "tiltLimit", "1 in 500"),
            "instrument-accuracy=3 mm");
    assertThat(stated.checks().stream().filter(one -> one.verdict() == Verdict.FAILS))
        .extracting(Check::id)
        .containsExactlyInAnyOrder(
            "forecast-movement", "damage-category", "angular-distortion", "instrument-accuracy");
  }

  @Test
  void live_rail_is_cautioned_by_its_published_job() {
    Optional<Caution> rail =
        sheet(mill("liveUse", "rail")).cautions().stream()
            .filter(caution -> caution.hazard().equals("live rail"))
            .findFirst();
    assertThat(rail.orElseThrow().source().basis()).isEqualTo(Basis.PUBLISHED);
    assertThat(sheet(mill("liveUse", "none")).cautions())
        .extracting(Caution::hazard)
        .doesNotContain("live rail");
  }
}
