package underhold.sizing.monitoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.monitoring.MonitoringSites.mill;
import static underhold.sizing.monitoring.MonitoringSites.sheet;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Measure;
import underhold.sizing.Basis;
import underhold.sizing.BillItem;
import underhold.sizing.Caution;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/**
 * Own case: a wall of reinforced masonry, 20 m long and two storeys high, beside an excavation 4 m
 * deep; numbers worked by hand, apart from the program.
 */
class MonitoringByHandTest {
  private static final String[] SETTINGS = {
    "fade-depths=1.5",
    "sideways-share=50 %",
    "bending=hogging",
    "distortion-author=bjerrum",
    "point-spacing=4 m",
    "target-rows=3",
    "work-time=3 weeks",
    "work-interval=12 h",
    "after-time=4 weeks"
  };

  private static Map<String, String> dyeWorks(String... changes) {
    Map<String, String> facts =
        mill(
            "structureMaterial",
            "reinforced-masonry",
            "storeys",
            "2",
            "excavationDepth",
            "4 m",
            "excavationBelowFooting",
            "2 m",
            "gapToExcavation",
            "3 m",
            "wallLength",
            "20 m",
            "predictedMovement",
            "3 mm",
            "movementLimit",
            "12 mm",
            "tiltLimit",
            "1 in 400");
    for (int i = 0; i < changes.length; i += 2) {
      facts.put(changes[i], changes[i + 1]);
    }
    facts.values().removeIf(String::isEmpty);
    return facts;
  }

  private static Sheet works(String... changes) {
    return sheet(dyeWorks(changes), SETTINGS);
  }

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id)).result().si();
  }

  private static Verdict verdict(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id)).verdict();
  }

  private static double slot(Phrase phrase, String name) {
    return phrase.amounts().get(name).si();
  }

  private static Caution caution(Sheet sheet, String hazard) {
    return sheet.cautions().stream()
        .filter(one -> one.hazard().equals(hazard))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no caution " + hazard));
  }

  @Test
  @DisplayName("Own case by hand: fade 6 m, strain 0.0927 % at 10 mm, 0.0278 % at 3 mm, category 0")
  void steps_by_hand() {
    Sheet sheet = works();
    StepProof.redo(sheet);
    Map<String, Double> byHand =
        Map.ofEntries(
            Map.entry("fade-length", 6.0), // min(1.5 x 4, 20 / 2)
            Map.entry("angular-distortion", 0.0005), // 3 mm / 6 m
            Map.entry("wall-height", 6.0), // 2 x 3
            Map.entry("bent-length", 12.0),
            Map.entry("deflection-ratio", 4.166667e-4), // 10 mm / 2 / 12 m
            Map.entry("horizontal-strain", 8.333333e-4), // 0.5 x 10 mm / 6 m
            Map.entry("hogging-bending-factor", 0.816667), // 12 / 72 + 6 x 2.6 / 24
            Map.entry("hogging-diagonal-factor", 1.256410), // 1 + 144 / (6 x 36 x 2.6)
            Map.entry("hogging-bending-strain", 1.343537e-3), // 5.102041e-4 + 8.333333e-4
            Map.entry("hogging-diagonal-strain", 9.267911e-4), // 2.916667e-4 + 6.351244e-4
            Map.entry("tensile-strain", 1.343537e-3),
            Map.entry("predicted-strain", 4.030612e-4), // x 3 / 10
            Map.entry("movement-category-0", 3.721519e-3), // 10 mm x 0.05 / 0.13435374
            Map.entry("movement-category-1", 5.582278e-3), // x 1.5
            Map.entry("movement-category-2", 1.116456e-2), // x 3
            Map.entry("movement-category-3", 2.232911e-2), // x 6
            Map.entry("point-strain", 4.045085e-4), // (0.25 + sqrt(0.0625 + 0.25)) / 2 per mille
            Map.entry("movement-limit", 0.012),
            Map.entry("distortion-limit", 0.002), // 1 in 500 below the stated 1 in 400
            Map.entry("alert-level", 0.006),
            Map.entry("action-level", 0.0096),
            Map.entry("stop-level", 0.012),
            Map.entry("differential-limit", 0.008), // 4 m / 500
            Map.entry("alert-difference", 0.004),
            Map.entry("action-difference", 0.0064),
            Map.entry("stop-difference", 0.008),
            Map.entry("accuracy-needed", 0.002),
            Map.entry("zone-stress-overlap", 1.154701),
            Map.entry("zone-ten-on-six", 3.333333),
            Map.entry("zone-berm", 7.0), // 2 + 2 x (2 + 0.5)
            Map.entry("zone-monitoring-depth", 4.0),
            Map.entry("in-zone", -4.0)); // 3 - 7
    byHand.forEach(
        (id, value) ->
            assertThat(step(sheet, id)).as(id).isCloseTo(value, within(1e-6 * Math.abs(value))));
    assertThat(sheet.check("damage-category").orElseThrow().note().template())
        .contains("category 0, negligible.");
    assertThat(sheet.step("movement-category-3").orElseThrow().note().template())
        .contains("several above");
    assertThat(sheet.step("movement-category-2").orElseThrow().note().template())
        .doesNotContain("several above");
    assertThat(sheet.verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName("Own case: at the limit of 12 mm it passes, a hundredth of a millimetre above fails")
  void the_edge_of_the_movement_limit() {
    assertThat(verdict(works("predictedMovement", "12 mm"), "forecast-movement"))
        .isEqualTo(Verdict.PASSES);
    assertThat(verdict(works("predictedMovement", "12.01 mm"), "forecast-movement"))
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "Own case over 6 m: 12 mm is the published 1 in 500 and passes, 15 mm the stated 1 in 400:"
          + " refers up to it, fails above")
  void the_edges_of_the_distortion_limits() {
    String id = "angular-distortion";
    assertThat(verdict(wide("12 mm"), id)).isEqualTo(Verdict.PASSES);
    assertThat(verdict(wide("12.01 mm"), id)).isEqualTo(Verdict.REFER);
    assertThat(verdict(wide("14.99 mm"), id)).isEqualTo(Verdict.REFER);
    assertThat(verdict(wide("15.01 mm"), id)).isEqualTo(Verdict.FAILS);
  }

  private static Sheet wide(String predicted) {
    return works("predictedMovement", predicted, "movementLimit", "20 mm");
  }

  @Test
  @DisplayName("Own case: category 1 ends at 5.5823 mm of movement")
  void the_edge_of_the_damage_category() {
    Sheet below = works("predictedMovement", "5.58 mm");
    assertThat(verdict(below, "damage-category")).isEqualTo(Verdict.PASSES);
    assertThat(below.check("damage-category").orElseThrow().note().template())
        .contains("category 1, very slight");
    Sheet above = works("predictedMovement", "5.59 mm");
    assertThat(verdict(above, "damage-category")).isEqualTo(Verdict.FAILS);
    assertThat(above.check("damage-category").orElseThrow().note().template())
        .contains("category 2, slight");
    assertThat(verdict(works("predictedMovement", "5.59 mm", "storeys", ""), "damage-category"))
        .as("two storeys are only assumed")
        .isEqualTo(Verdict.REFER);
    assertThat(
            works("predictedMovement", "40 mm", "movementLimit", "50 mm")
                .check("damage-category")
                .orElseThrow()
                .note()
                .template())
        .contains("or very severe");
  }

  @Test
  @DisplayName("Own case: a third of the 6 mm alert level is 2 mm: such an instrument just serves")
  void the_edge_of_the_accuracy() {
    String[] just = SETTINGS.clone();
    just[8] = "instrument-accuracy=2 mm";
    assertThat(verdict(sheet(dyeWorks(), just), "instrument-accuracy")).isEqualTo(Verdict.PASSES);
    // sqrt(2) x 2 mm = 2.83 mm below the alert difference of 4 mm
    assertThat(verdict(sheet(dyeWorks(), just), "difference-accuracy")).isEqualTo(Verdict.PASSES);
    just[8] = "instrument-accuracy=2.01 mm";
    assertThat(verdict(sheet(dyeWorks(), just), "instrument-accuracy")).isEqualTo(Verdict.FAILS);
    just[8] = "instrument-accuracy=2.9 mm"; // 4.10 mm
    assertThat(verdict(sheet(dyeWorks(), just), "difference-accuracy")).isEqualTo(Verdict.REFER);
    assertThat(sheet(dyeWorks(), just).check("difference-accuracy").orElseThrow().capacity().si())
        .isCloseTo(0.004, within(1e-12));
  }

  @Test
  @DisplayName("Own case: the berm rule serves down to 4 m below the footing, reach 2 + 2 x 4.5 m")
  void the_edge_of_the_berm_rule() {
    Sheet at = works("excavationBelowFooting", "4 m", "excavationDepth", "5 m");
    assertThat(step(at, "zone-berm")).isCloseTo(11, within(1e-9));
    assertThat(at.step("in-zone").orElseThrow().note().template())
        .doesNotContain("berm rule ends")
        .doesNotContain("faces without a wall");
    Sheet beyond = works("excavationBelowFooting", "4.01 m", "excavationDepth", "5 m");
    assertThat(beyond.step("zone-berm")).isEmpty();
    assertThat(beyond.step("in-zone").orElseThrow().note().template()).contains("berm rule ends");
    Sheet walled =
        works(
            "excavationBelowFooting",
            "4.01 m",
            "excavationDepth",
            "5 m",
            "excavationWall",
            "stiff");
    assertThat(walled.step("in-zone").orElseThrow().note().template())
        .contains("The berm rule is for faces without a wall.")
        .doesNotContain("berm rule ends");
  }

  @Test
  void a_far_dig_is_outside_by_every_rule() {
    Sheet far = works("gapToExcavation", "20 m");
    assertThat(step(far, "in-zone")).isCloseTo(13, within(1e-9));
    assertThat(far.step("in-zone").orElseThrow().note().template())
        .startsWith("Inside by: none. Outside by: ");
    assertThat(far.step("zone-berm").orElseThrow().note().template()).contains("is outside");
    Sheet touching = works("gapToExcavation", "0 m");
    assertThat(touching.step("in-zone").orElseThrow().note().template())
        .contains("Outside by: none.");
  }

  @Test
  @DisplayName("Own case by hand: 20 m at 4 m: 6 points, 18 targets, 5 gauges; 42 sets, then 4")
  void quantities_by_hand() {
    Sheet sheet = works();
    assertThat(sheet.quantities().stream().map(BillItem::name))
        .containsExactly(
            "levelling points at the foot",
            "position targets on the face",
            "crack gauges",
            "datum points",
            "vibration monitors",
            "condition survey",
            "sets of readings before",
            "sets of readings during the work",
            "sets of readings after");
    assertThat(sheet.quantities().stream().map(one -> one.amount().si()))
        .containsExactly(6.0, 18.0, 5.0, 2.0, 2.0, 1.0, 3.0, 42.0, 4.0);
    assertThat(sheet.time().stream().map(one -> Math.round(one.amount().si())))
        .containsExactly(336L, 504L, 672L, 1512L); // 2, 3, 4 and 9 weeks
  }

  @Test
  void the_stages_carry_their_numbers() {
    List<Stage> stages = works().stages();
    Stage before = stages.get(0);
    assertThat(before.work()).hasSize(5);
    assertThat(slot(before.work().get(3), "p")).isEqualTo(4);
    assertThat(slot(before.work().get(4), "n")).isEqualTo(3);
    assertThat(slot(before.work().get(4), "t")).isCloseTo(336, within(1e-9));
    Stage during = stages.get(1);
    assertThat(slot(during.work().get(0), "t")).isCloseTo(12, within(1e-9));
    assertThat(slot(during.work().get(3), "a")).isCloseTo(0.006, within(1e-12));
    assertThat(slot(stages.get(2).work().get(0), "a")).isCloseTo(0.006, within(1e-12));
    assertThat(slot(stages.get(3).work().get(0), "a")).isCloseTo(0.0096, within(1e-12));
    assertThat(slot(stages.get(4).work().get(0), "a")).isCloseTo(0.012, within(1e-12));
    Phrase after = stages.get(5).work().get(0);
    assertThat(slot(after, "t")).isCloseTo(168, within(1e-9));
    assertThat(slot(after, "all")).isCloseTo(672, within(1e-9));
    assertThat(stages.stream().flatMap(stage -> stage.holdPoints().stream()))
        .extracting(HoldPoint::releasedBy)
        .containsExactly(
            "engineer of record",
            "engineer of record",
            "engineer of record",
            "engineer of record",
            "engineer of record",
            "owner of the structure, with the engineer of record",
            "engineer of record");
  }

  @Test
  void the_cautions_carry_their_numbers() {
    Sheet sheet = works("predictedMovement", "7 mm");
    assertThat(slot(caution(sheet, "digging below the footing").advice(), "d")).isEqualTo(2);
    Phrase rings = caution(sheet, "prediction above the alert level").advice();
    assertThat(slot(rings, "s")).isCloseTo(0.007, within(1e-12));
    assertThat(slot(rings, "a")).isCloseTo(0.006, within(1e-12));
    assertThat(slot(caution(sheet, "plan and survey as duties").advice(), "h")).isEqualTo(27.432);
    assertThat(slot(caution(sheet, "ground treatment nearby").advice(), "a")).isEqualTo(0.015);
    assertThat(sheet.cautions())
        .extracting(Caution::hazard)
        .doesNotContain("live rail", "protected fabric", "no prediction");
    Sheet bent = works("structureKind", "elevated-rail-bent");
    assertThat(slot(caution(bent, "live rail").advice(), "a")).isEqualTo(0.003);
    assertThat(bent.notCovered())
        .hasSize(works().notCovered().size() + 1)
        .anyMatch(line -> line.startsWith("Strain and damage category"));
  }

  @Test
  void without_an_excavation_the_sheet_says_that_no_zone_is_drawn() {
    Sheet none =
        works(
            "excavationPosition",
            "no-excavation",
            "gapToExcavation",
            "",
            "excavationBelowFooting",
            "",
            "excavationDepth",
            "");
    assertThat(none.notCovered()).anyMatch(line -> line.startsWith("Zones of influence: no"));
    assertThat(none.cautions())
        .extracting(Caution::hazard)
        .doesNotContain("digging below the footing");
    assertThat(step(none, "fade-length")).isEqualTo(10);
  }

  @Test
  @DisplayName(
      "Rankin, 10 mm for negligible risk; USACE EM 1110-1-1904 Table 2-1 (secondary): 3 in for long"
          + " plain brick walls")
  void published_settlements_stand_by_for_comparison() {
    Sheet sheet = works();
    assertThat(step(sheet, "rankin-negligible")).isEqualTo(0.010);
    assertThat(step(sheet, "average-settlement")).isCloseTo(0.0762, within(1e-12));
    assertThat(sheet.step("average-settlement").orElseThrow().title()).contains("plain brick");
    Sheet concrete = works("structureMaterial", "reinforced-concrete");
    assertThat(concrete.step("average-settlement").orElseThrow().title())
        .contains("fram")
        .doesNotContain("plain brick");
  }

  @Test
  @DisplayName(
      "Sowers and Hutchings (secondary) by storeys and frame: the row of the structure, and no"
          + " other")
  void the_rows_of_the_structure() {
    assertThat(rows(works())).contains("high continuous brick walls").doesNotContain("one-storey");
    assertThat(rows(works("storeys", "1")))
        .contains("one-storey brick buildings")
        .doesNotContain("high continuous brick walls");
    String concrete = "reinforced-concrete";
    assertThat(rows(works("structureMaterial", concrete)))
        .contains("curtain walls", "steel and reinforced concrete frames")
        .doesNotContain("brick");
    assertThat(rows(works("structureMaterial", concrete, "structureKind", "building-frame")))
        .contains("Sowers, reinforced concrete frames")
        .doesNotContain("curtain walls");
    assertThat(rows(works("structureMaterial", "steel", "structureKind", "building-frame")))
        .contains("continuous steel frames", "steel and reinforced concrete frames");
    assertThat(rows(works("structureMaterial", "timber", "structureKind", "building-frame")))
        .doesNotContain("Sowers", "Hutchings");
  }

  private static String rows(Sheet sheet) {
    return sheet.steps().stream()
        .filter(one -> one.id().startsWith("distortion-limit-b"))
        .map(one -> one.title())
        .collect(Collectors.joining("; "));
  }

  @Test
  void the_movement_limit_says_whether_it_is_stated() {
    Sheet stated = works();
    assertThat(stated.step("movement-limit-s1").orElseThrow().title())
        .contains("stated for the site");
    assertThat(stated.step("movement-limit-s1").orElseThrow().source().basis())
        .isEqualTo(Basis.SITE_FACT);
    Sheet assumed = works("movementLimit", "");
    assertThat(assumed.step("movement-limit-s1").orElseThrow().title())
        .contains("assumed until it is agreed");
    assertThat(assumed.step("movement-limit-s1").orElseThrow().source().basis())
        .isEqualTo(Basis.JUDGEMENT);
    assertThat(stated.step("movement-limit").orElseThrow().result().measure())
        .isEqualTo(Measure.LENGTH);
    assertThat(stated.step("distortion-limit").orElseThrow().result().measure())
        .isEqualTo(Measure.RATIO);
  }
}
