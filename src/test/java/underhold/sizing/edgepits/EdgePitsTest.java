package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;
import underhold.sizing.drilledpiles.DrilledPiles;

class EdgePitsTest {
  private static final Site BOX = EdgeSites.box();

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id)).result().si();
  }

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static Verdict verdict(Sheet sheet, String id) {
    return check(sheet, id).verdict();
  }

  @Test
  @DisplayName(
      "Own case worked apart from the program: a box at 3 m over a cut to 8 m: thrust 384.2, braces 68.6, 107.4, 117.2, toe 124.3 kN/m")
  void box_by_hand() {
    Sheet sheet = EdgeSites.size(BOX);
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    Map<String, Double> byHand = new LinkedHashMap<>();
    byHand.put("wall-height", 5.6);
    byHand.put("structure-on-wall", 72.0);
    byHand.put("earth-coefficient", 0.41221);
    byHand.put("vertical-at-top", 70.44);
    byHand.put("pressure-top-before", 62.0136);
    byHand.put("pressure-top-design", 45.5250);
    byHand.put("pressure-rise", 8.24429);
    byHand.put("water-below-top", 5.6);
    byHand.put("wall-weight", 118.758);
    byHand.put("wall-uplift", 0.0);
    byHand.put("force-before", 476.547);
    byHand.put("moment-before", 1213.68);
    byHand.put("force-partial", 384.211);
    byHand.put("force-after", 291.874);
    byHand.put("moment-after", 696.596);
    byHand.put("sliding-resistance-before", 47.6895); // 0.25 x 190.758
    byHand.put("sliding-resistance-after", 29.6895);
    byHand.put("righting-after", 53.4412);
    byHand.put("hinge-1", 68.5658);
    byHand.put("tributary-1", 66.1489);
    byHand.put("hinge-2", 106.652);
    byHand.put("tributary-2", 107.442);
    byHand.put("hinge-3", 117.249);
    byHand.put("tributary-3", 117.029);
    byHand.put("brace-line-2", 107.442);
    byHand.put("brace-3", 281.398); // 117.249 x 2.4
    byHand.put("foot-hinge", 69.7635);
    byHand.put("foot-tributary", 70.7562);
    byHand.put("toe-force", 124.284); // 70.756 + 384.211 - 330.682
    byHand.put("span-moment", 34.3183);
    byHand.put("joint-force", 55.0156); // (45.525 + 8.24429 x 5.6) x 1.2 / 2
    byHand.put("toe-pressure", 171.953); // (118.758 + 0.5 x 72) / 0.9
    byHand.put("toe-net", 159.953); // 171.953 - 20 x 0.6
    byHand.put("slab-strut", 198.854);
    byHand.put("first-cut-overturning", 202.751); // 15.2715 + 39.0582 x 4.8
    byHand.put("first-cut-righting", 487.757); // 23.5631 x 4.8^3 / 6 + 53.441
    byHand.put("first-cut-no-shear", 1.82077);
    byHand.put("first-cut-moment", 62.682);
    byHand.put("moment-over-first", 2.08573);
    byHand.put("wall-depth", 0.8492);
    byHand.put("wall-moment", 136.166); // 0.6 x 1,888.2 kPa x 0.8492^2 / 6
    byHand.put("wall-shear", 256.56);
    byHand.forEach(
        (id, value) ->
            assertThat(step(sheet, id))
                .as(id)
                .isCloseTo(value, within(1e-4 * value + 1e-9))); // six figures, rounded inputs
  }

  @Test
  @DisplayName("Own case by hand: demands and capacities of the box's checks")
  void box_checks_by_hand() {
    Sheet sheet = EdgeSites.size(BOX);
    demands(sheet, "sliding-before-transfer", 1.5 * 476.547, 47.6895);
    demands(sheet, "overturning-before-transfer", 1.5 * 1213.68, 190.758 * 0.45);
    demands(sheet, "sliding-partial-transfer", 1.5 * 384.211, 0.25 * 154.758);
    demands(sheet, "sliding-after-transfer", 1.5 * 291.874, 29.6895);
    demands(sheet, "overturning-after-transfer", 1.5 * 696.596, 53.4412);
    demands(sheet, "brace-capacity", 281.398, 0);
    demands(sheet, "first-cut", 1.5 * 202.751, 487.757);
    demands(sheet, "sliding-supported", 1.5 * 124.284, 29.6895);
    demands(sheet, "toe-bearing", 159.953, 95.7605);
    demands(sheet, "wall-flexure", 1.6 * 62.682, 136.166);
    demands(sheet, "wall-shear", 1.6 * 71.357, 256.56); // foot of the length from 1.8 to 3.8 m
    demands(sheet, "joint-key", 1.6 * 55.0156, 0.6 * 503.52 * 0.3);
    demands(sheet, "open-length", 2.4, 2.4);
  }

  private static void demands(Sheet sheet, String id, double demand, double capacity) {
    Check check = check(sheet, id);
    assertThat(check.demand().si()).as(id).isCloseTo(demand, within(1e-4 * demand));
    assertThat(check.capacity().si()).as(id).isCloseTo(capacity, within(1e-4 * capacity + 1e-9));
  }

  @Test
  @DisplayName(
      "Own case: braces 0.3, 1.8 and 3.3 m down hold the wall; alone it fails once the piles carry")
  void box_verdicts() {
    Sheet sheet = EdgeSites.size(BOX);
    assertThat(verdict(sheet, "primary-piles")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "sliding-before-transfer")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "sliding-partial-transfer")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "sliding-after-transfer")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "overturning-after-transfer")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "bracing-possible")).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "bracing-possible").demand().si()).isEqualTo(3);
    assertThat(verdict(sheet, "first-cut")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "sliding-supported")).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "sliding-supported").note().in(UnitSystem.SI)).contains("base slab");
    assertThat(verdict(sheet, "toe-bearing")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "wall-flexure")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "wall-shear")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "joint-key")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "brace-capacity")).isEqualTo(Verdict.REFER);
    assertThat(verdict(sheet, "stand-up")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "water")).isEqualTo(Verdict.PASSES);
    assertThat(sheet.check("base-heave")).isEmpty(); // sand
    assertThat(sheet.check("piping")).isEmpty(); // water below the base
    assertThat(sheet.check("toe-dowels")).isEmpty(); // no rock
  }

  @Test
  @DisplayName(
      "Own case by hand: a wall of 250 kN/m along 3 m of pits: sliding 1.67 before, 0.34 after the piles take the load")
  void load_taken_away_loses_the_wall() {
    Site wall = EdgeSites.with(BOX, "loadPattern", "continuous");
    wall = EdgeSites.with(wall, "excavationPosition", "partly-under");
    wall = EdgeSites.with(wall, "lineLoad", "250 kN/m");
    wall = EdgeSites.with(wall, "footingWidth", "0.9 m");
    wall = EdgeSites.with(wall, "foundingDepth", "1 m");
    wall = EdgeSites.with(wall, "excavationDepth", "3.4 m");
    Sheet sheet = EdgeSites.size(wall, "earth-pressure=active", "edge-runs=along");
    StepProof.redo(sheet);
    // Ka 0.25962; q 30.44; 0.25962 x (30.44 x 3 + 20 x 4.5) = 47.07; 0.25 x (63.62 + 250) = 78.41
    assertThat(step(sheet, "force-before")).isCloseTo(47.074, within(0.005));
    assertThat(step(sheet, "force-after")).isCloseTo(47.074, within(0.005));
    assertThat(step(sheet, "sliding-resistance-before")).isCloseTo(78.405, within(0.01));
    assertThat(step(sheet, "sliding-resistance-after")).isCloseTo(15.905, within(0.01));
    assertThat(verdict(sheet, "sliding-before-transfer")).isEqualTo(Verdict.PASSES);
    assertThat(verdict(sheet, "sliding-after-transfer")).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "sliding-after-transfer").note().in(UnitSystem.SI))
        .contains("1.666", "0.3379", "brace or tie the wall");
  }

  @Test
  @DisplayName(
      "Own case: piles that leave a tenth of the load on the soil leave it behind the wall")
  void share_left_by_the_piles_counts() {
    Sheet sheet = EdgeSites.size(BOX, EdgeSites.piles(0.8, 0.1));
    assertThat(step(sheet, "share-after")).isCloseTo(0.1, within(1e-12));
    assertThat(step(sheet, "share-design")).isEqualTo(0.5);
    // 0.41221 x (70.44 + 8) = 32.334
    assertThat(step(sheet, "pressure-top-after")).isCloseTo(32.334, within(0.001));
    Sheet more = EdgeSites.size(BOX, EdgeSites.piles(0.8, 0.7));
    assertThat(step(more, "share-design")).isCloseTo(0.7, within(1e-12));
  }

  @Test
  void primary_piles_are_shown_by_their_own_sheet() {
    Sheet sheet = EdgeSites.size(BOX, EdgeSites.piles(1.3));
    Check piles = check(sheet, "primary-piles");
    assertThat(piles.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(piles.demand().si()).isCloseTo(1.3, within(1e-12));
    assertThat(piles.note().in(UnitSystem.SI)).contains("[column]", "column fails");
    assertThat(sheet.input("primary-piles").flatMap(one -> one.amount()).map(Amount::si))
        .contains(12.0);
    assertThat(sheet.input("primary-pile-load").flatMap(one -> one.amount()).map(Amount::si))
        .contains(640.0);
    assertThat(sheet.input("primary-pile-load").orElseThrow().origin()).isEqualTo(Origin.DERIVED);
  }

  @Test
  @DisplayName("The real sheet of drilled piles stands behind the edge")
  void real_piles_are_taken() {
    Sheet sheet = EdgeSites.size(BOX, PileSizer.with(DrilledPiles.TABLE.defaults()));
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    assertThat(check(sheet, "primary-piles").note().in(UnitSystem.SI))
        .contains("Governs:", "pile-bared");
    assertThat(new EdgePitsMethod().id()).isEqualTo("edge-pits");
  }

  @Test
  @DisplayName(
      "Statics: all jacks together lift the structure's load and no more; the pile's design load holds allowances")
  void piles_are_jacked_to_what_they_carry_of_the_structure() {
    Sheet sheet = EdgeSites.size(BOX, PileSizer.with(DrilledPiles.TABLE.defaults()));
    Map<String, Amount> jacked =
        sheet.stages().stream()
            .filter(one -> one.role() == StageRole.CARRY)
            .findFirst()
            .orElseThrow()
            .work()
            .get(1)
            .amounts();
    double piles = sheet.input("primary-piles").orElseThrow().amount().orElseThrow().si();
    double sized = sheet.input("primary-pile-load").orElseThrow().amount().orElseThrow().si();
    assertThat(jacked.get("P").si() * piles).isCloseTo(jacked.get("W").si(), within(1e-6));
    assertThat(jacked.get("P").si()).isLessThan(sized);
    assertThat(jacked.get("M").si()).isCloseTo(sized, within(1e-9));
  }

  @Test
  @DisplayName("A stage that names boards or braces which do not pass says so in that stage")
  void a_stage_says_what_does_not_pass_where_it_is_built() {
    Sheet sheet = EdgeSites.size(BOX);
    assertThat(sheet.check("brace-capacity").orElseThrow().verdict()).isNotEqualTo(Verdict.PASSES);
    assertThat(said(sheet, "Level 1 of braces or ties"))
        .contains("not to be used before the engineer has settled", "Greatest force in a brace")
        .contains("sized with bracing in two directions at 1.5 m below their caps");
    boolean boards =
        sheet.checks().stream()
            .filter(one -> one.id().matches("(board-|approach-|sheeting-|stand-up).*"))
            .allMatch(one -> one.verdict() == Verdict.PASSES);
    assertThat(said(sheet, "Each edge pit").contains("The boards named here are not to be used"))
        .isEqualTo(!boards);
  }

  private static String said(Sheet sheet, String title) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(title))
        .flatMap(one -> one.work().stream())
        .map(one -> one.in(UnitSystem.SI))
        .collect(Collectors.joining(" "));
  }

  @Test
  void piles_are_loaded_and_released_before_any_pit_is_dug() {
    Sheet sheet = EdgeSites.size(BOX);
    assertThat(sheet.stages().stream().map(Stage::title).toList())
        .containsSubsequence(
            "Drilled piles take the load",
            "Each edge pit",
            "Pits, round 1 of 4",
            "Pits, round 4 of 4",
            "Closing the wall",
            "Level 1 of braces or ties",
            "Level 3 of braces or ties",
            "Bottom of the excavation");
    Stage load = sheet.stages().get(1);
    assertThat(load.holdPoints().get(0).condition().in(UnitSystem.SI))
        .contains("locked off", "before any edge pit is dug");
    assertThat(load.work().get(1).in(UnitSystem.SI))
        .contains("its share of the stated load", "never lift more", "640 kN", "is no jack load");
    Stage first = sheet.stages().get(3);
    assertThat(first.work()).hasSize(2);
    assertThat(first.work().get(0).in(UnitSystem.SI)).startsWith("Pit 1:");
    assertThat(first.work().get(1).in(UnitSystem.SI)).startsWith("Pit 5:");
    Stage level =
        sheet.stages().stream()
            .filter(one -> one.title().startsWith("Level 2"))
            .findFirst()
            .orElseThrow();
    assertThat(level.work().get(0).in(UnitSystem.SI)).contains("2.3 m");
    assertThat(level.work().get(1).in(UnitSystem.SI)).contains("1.8 m", "107.4 kN/m");
  }

  @Test
  @DisplayName("Own case by hand: 8 pits, 47.74 m3 of concrete, 39.2 m of joints, 12 braces")
  void quantities_by_hand() {
    Sheet sheet = EdgeSites.size(BOX);
    Map<String, Double> byHand =
        Map.of(
            "pits",
            8.0,
            "concrete",
            9.6 * 0.9 * 5.525,
            "closing strip",
            9.6 * 0.9 * 0.075,
            "joints between pits, keyed or dowelled",
            7 * 5.6,
            "soil dug",
            9.6 * 0.9 * 5.6 + 8 * 1.2 * 1.5 * 4.8,
            "spoil to cart",
            1.25 * (9.6 * 0.9 * 5.6 + 8 * 1.2 * 1.5 * 4.8),
            "boards, area",
            8 * (2 * 0.9 * 5.6 + 5.4 * 4.8) + 9.6 * 5.6,
            "braces or ties",
            12.0);
    byHand.forEach(
        (name, value) ->
            assertThat(item(sheet, name).amount().si()).as(name).isCloseTo(value, within(1e-9)));
    assertThat(sheet.time()).extracting(BillItem::name).contains("rounds", "calendar, all pits");
  }

  private static BillItem item(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void sheet_is_the_same_in_both_unit_systems() {
    Sheet si = EdgeSites.size(BOX);
    Sheet us = EdgeSites.size(EdgeSites.in(BOX, UnitSystem.US));
    assertThat(us.steps()).isEqualTo(si.steps());
    assertThat(us.checks()).isEqualTo(si.checks());
    assertThat(SheetText.lines(us, UnitSystem.US))
        .hasSameSizeAs(SheetText.lines(si, UnitSystem.SI))
        .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
  }

  @Test
  void every_check_and_step_names_its_source_and_a_cautious_reader_finds_the_trap() {
    Sheet sheet = EdgeSites.size(BOX);
    assertThat(sheet.checks()).allSatisfy(one -> assertThat(one.source().words()).isNotBlank());
    assertThat(sheet.cautions().get(0).advice().in(UnitSystem.SI))
        .contains("stands only by its braces");
    assertThat(sheet.notCovered()).anyMatch(line -> line.contains("drilled piles"));
  }
}
