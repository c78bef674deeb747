package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.BOX;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.WALL;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.Site;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases, worked apart from the program. */
class DrilledPilesTest {
  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static void check(
      Sheet sheet, String id, double demand, double capacity, Verdict verdict) {
    Check check = check(sheet, id);
    // 0.05 %: the hand figures are rounded
    assertThat(check.demand().si()).as(id).isCloseTo(demand, withPercentage(0.05));
    assertThat(check.capacity().si()).as(id).isCloseTo(capacity, withPercentage(0.05));
    assertThat(check.verdict()).as(id).isEqualTo(verdict);
  }

  private static double quantity(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(item -> item.name().equals(name))
        .findFirst()
        .map(BillItem::amount)
        .orElseThrow()
        .si();
  }

  @Test
  @DisplayName(
      "Own case by hand: column of 1200 kN in clay of 120 kPa, 4 m dug, eight piles 18.0 m below the dug level")
  void column_in_clay() {
    Sheet sheet = size(COLUMN, "boring-depth=40 m");
    assertThat(sheet.missing()).isEmpty();
    StepProof.redo(sheet);
    assertThat(step(sheet, "total-load")).isEqualTo(1320, within(1e-9));
    assertThat(step(sheet, "embedment")).isCloseTo(18.024, within(1e-6));
    // counted 18.024 - 1.524 - 0.2445 m at 0.55 x 120 kPa on a hole of 244.5 mm
    check(sheet, "pile-bond", 192.784, 274.668, Verdict.PASSES);
    check(sheet, "pile-structure", 192.784, 789.243, Verdict.PASSES);
    check(sheet, "pile-bared", 192.784, 990.229, Verdict.PASSES);
    assertThat(step(sheet, "bared-stage-1")).isCloseTo(990.229, withPercentage(0.01));
    assertThat(step(sheet, "bared-stage-2")).isCloseTo(1520.503, withPercentage(0.01));
    check(sheet, "group-capacity", 1320, 1553.04, Verdict.PASSES);
    check(sheet, "pile-in-group", 192.78, 0.70680 * 274.67, Verdict.PASSES); // E 0.7068
    assertThat(step(sheet, "block")).isCloseTo(4176.27, withPercentage(0.01));
    // those left stand as close as before: 0.70680 x 824.00 / 1.5
    check(sheet, "group-loss", 298.926, 0.70680 * 549.336, Verdict.PASSES);
    check(sheet, "pile-length", 26.524, 40, Verdict.PASSES);
    check(sheet, "casing-joints", 0.75, 2.13, Verdict.PASSES);
    check(sheet, "pile-spacing", 2.5 * 0.244475, 0.75, Verdict.PASSES);
    check(sheet, "rig-access", 1, 1, Verdict.PASSES);
    check(sheet, "beam-span", 3.1, 20, Verdict.PASSES);
    // integrated apart in 2000 steps; 0.5 %: the sheet cuts pieces of 0.25 m
    assertThat(check(sheet, "head-settlement").demand().si())
        .isCloseTo(0.0014271, withPercentage(0.5));
    assertThat(step(sheet, "beam-moment")).isCloseTo(940.5, within(1e-6));
    assertThat(step(sheet, "beam-shear")).isCloseTo(660, within(1e-9));
    assertThat(step(sheet, "jack-25"))
        .isCloseTo(
            1200.0 / 8 / 4, // stated load, no allowance
            withPercentage(0.01));
    assertThat(step(sheet, "lock-off")).isCloseTo(1200.0 / 8, withPercentage(0.01));
    // 3 x 0.75 + 0.2445 = 2.4945 m is the narrower side; sqrt(2.4945 / 0.2445) = 3.194
    assertThat(check(sheet, "group-settlement").demand().si())
        .isCloseTo(3.1943 * 0.0014271, withPercentage(0.5));
    assertThat(check(sheet, "group-settlement").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "sideways").verdict()).isEqualTo(Verdict.REFER);
    assertThat(sheet.checks())
        .filteredOn(one -> !one.id().equals("sideways"))
        .allSatisfy(one -> assertThat(one.verdict()).as(one.id()).isEqualTo(Verdict.PASSES));
  }

  @Test
  @DisplayName("Own case: quantities and time of two such columns by hand")
  void quantities_of_the_column() {
    Sheet sheet = size(COLUMN);
    double length = 23.524 - 1.5;
    assertThat(quantity(sheet, "piles")).isEqualTo(16);
    assertThat(quantity(sheet, "drilling in soil")).isCloseTo(16 * length, within(1e-6));
    assertThat(quantity(sheet, "drilling in rock")).isZero();
    assertThat(quantity(sheet, "casing, length")).isCloseTo(16 * 5.524, within(1e-6));
    // 5.524 m in pieces of 2.13 m: three pieces, two joints
    assertThat(quantity(sheet, "casing joints")).isEqualTo(32);
    double steel = Math.PI * 0.013843 * (0.244475 - 0.013843);
    assertThat(quantity(sheet, "casing, weight"))
        .isCloseTo(16 * 5.524 * steel * 77, withPercentage(0.01));
    double hole = Math.PI * 0.244475 * 0.244475 / 4;
    assertThat(quantity(sheet, "spoil to cart"))
        .isCloseTo(16 * length * hole * 1.3, withPercentage(0.01));
    double fill = (hole - steel) * 5.524 + hole * 16.2555;
    assertThat(quantity(sheet, "concrete or grout"))
        .isCloseTo(16 * fill * 1.2, withPercentage(0.01));
    // 4 h + 22.024 m / 2 m/h + 2 joints x 0.5 h = 16.012 h; 16 piles, 8 h: 33 shifts
    assertThat(sheet.time().get(0).amount().si()).isCloseTo(16.012, within(1e-6));
    assertThat(sheet.time().get(2).amount().si()).isEqualTo(33);
  }

  @Test
  void without_a_depth_of_borings_the_length_is_referred() {
    check(size(COLUMN), "pile-length", 26.524, 5, Verdict.REFER);
    check(size(COLUMN, "boring-depth=20 m"), "pile-length", 26.524, 20, Verdict.REFER);
    check(size(COLUMN, "last-layer-proved=30 m"), "pile-length", 26.524, 32, Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "Own case by hand: wall of 150 kN/m, 12 m long, needles 2 m apart: 14 piles of 189.9 kN, twice as much at an end when one is lost")
  void wall_in_clay() {
    Sheet sheet = size(WALL, "needle-spacing=2 m", "boring-depth=40 m");
    StepProof.redo(sheet);
    double load = 150 * 2 * 1.1 * (0.5 + 0.075 / 3.1);
    assertThat(step(sheet, "pile-load")).isCloseTo(load, withPercentage(1e-6));
    assertThat(quantity(sheet, "piles")).isEqualTo(14);
    assertThat(check(sheet, "group-loss").demand().si()).isCloseTo(2 * load, withPercentage(1e-6));
    // 1.5 x 2 x load over 50.69 kN/m of counted shaft, in steps of 0.25 m from 3 m less a diameter
    double needed = 3 * load / (Math.PI * 0.244475 * 66) + 1.524 + 0.244475;
    assertThat(step(sheet, "embedment")).isBetween(needed, needed + 0.25);
    check(sheet, "wall-span", 2, 1.2, Verdict.FAILS);
    assertThat(step(sheet, "beam-moment")).isCloseTo(330 * (3.1 / 4 - 0.4 / 8), within(1e-6));
    check(sheet, "rig-access", 2, 2, Verdict.PASSES);
    assertThat(sheet.step("block")).isEmpty();
  }

  @Test
  void a_capping_beam_bridges_from_needle_to_needle() {
    String json =
        with(
            WALL,
            "\"clearSpan\": \"1.2 m\"",
            "\"clearSpan\": \"1.2 m\", \"cappingBeamPossible\": \"yes\"");
    Sheet sheet = size(json);
    check(sheet, "wall-span", 2, 2, Verdict.PASSES);
    assertThat(step(sheet, "capping-moment")).isCloseTo(150 * 4 / 8.0, within(1e-9));
    check(size(WALL, "needle-spacing=1.2 m"), "wall-span", 1.2, 1.2, Verdict.PASSES);
  }

  @Test
  @DisplayName("Own case by hand: box of 60 kPa over 12 x 8 m on a grid of piles")
  void box_on_a_grid() {
    Sheet sheet = size(BOX, "boring-depth=40 m");
    StepProof.redo(sheet);
    int piles = (int) quantity(sheet, "piles");
    assertThat(step(sheet, "total-load")).isCloseTo(60 * 96 * 1.1, within(1e-9));
    assertThat(step(sheet, "pile-load"))
        .isCloseTo(60 * 96.0 / piles * 1.1 * 1.1, withPercentage(1e-6));
    assertThat(check(sheet, "group-loss").demand().si())
        .isCloseTo(1.5 * step(sheet, "pile-load"), withPercentage(1e-6));
    assertThat(sheet.step("beam-moment")).isEmpty();
    assertThat(sheet.check("beam-span")).isEmpty();
    assertThat(sheet.step("slab-span")).isPresent();
    assertThat(step(sheet, "pile-load")).isLessThan(step(sheet, "pile-allowable"));
  }

  @Test
  @DisplayName(
      "Own case: the same box on two rows beside it, beams across: 480 kN/m over 8 m + 1.1 m")
  void box_on_two_rows() {
    String json =
        with(
            with(
                BOX,
                "\"insideAccess\": \"small-rig\"",
                "\"insideAccess\": \"hand\", \"drillingFromAbove\": \"no\", \"rigBothSides\": \"yes\""),
            "\"outsideAccess\": \"none\"",
            "\"outsideAccess\": \"large-rig\", \"outsideHeadroom\": \"12 m\"");
    Sheet sheet = size(json, "boring-depth=60 m");
    StepProof.redo(sheet);
    double spacing = 12 / (quantity(sheet, "piles") / 2 - 1);
    double load = 480 * spacing * 1.1 * (0.5 + 0.075 / 9.1);
    assertThat(step(sheet, "line-load")).isEqualTo(480);
    assertThat(step(sheet, "pile-load")).isCloseTo(load, withPercentage(1e-6));
    assertThat(step(sheet, "beam-moment"))
        .isCloseTo(480 * spacing * 1.1 * (9.1 / 4 - 1), withPercentage(1e-6));
    check(sheet, "rig-access", 2, 2, Verdict.PASSES);
    check(sheet, "beam-span", 9.1, 20, Verdict.PASSES);
    check(sheet, "pile-spacing", 2.5 * 0.6096, spacing, Verdict.PASSES);
    check(size(json.replace(", \"rigBothSides\": \"yes\"", "")), "rig-access", 2, 1, Verdict.REFER);
    check(
        size(json.replace("\"rigBothSides\": \"yes\"", "\"rigBothSides\": \"no\"")),
        "rig-access",
        2,
        1,
        Verdict.FAILS);
    check(size(json, "longest-beam=9 m"), "beam-span", 9.1, 9, Verdict.REFER);
  }

  @Test
  void a_slab_needs_to_be_drilled_through_from_inside_or_above() {
    String json =
        with(
            with(BOX, "\"insideAccess\": \"small-rig\"", "\"insideAccess\": \"hand\""),
            "\"outsideAccess\": \"none\"",
            "\"outsideAccess\": \"large-rig\", \"outsideHeadroom\": \"12 m\"");
    check(size(json), "rig-access", 1, 0, Verdict.REFER);
    check(
        size(with(json, "\"obstructions\"", "\"drillingFromAbove\": \"yes\", \"obstructions\"")),
        "rig-access",
        1,
        1,
        Verdict.PASSES);
  }

  @Test
  void no_load_no_numbers() {
    for (String json :
        new String[] {
          with(COLUMN, "\"columnLoad\": \"1200 kN\", ", ""),
          with(WALL, "\"lineLoad\": \"150 kN/m\", ", ""),
          with(WALL, "\"wallLength\": \"12 m\", ", ""),
          with(BOX, "\"areaLoad\": \"60 kPa\", ", ""),
          with(BOX, "\"underminedWidth\": \"8 m\"", "\"clearSpan\": \"1 m\""),
        }) {
      Sheet sheet = size(json);
      assertThat(sheet.missing()).as(json).hasSize(1);
      assertThat(sheet.steps()).isEmpty();
      assertThat(sheet.checks()).isEmpty();
      assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
    }
  }

  @Test
  void the_load_asked_for_is_the_one_of_the_pattern() {
    assertThat(size(with(COLUMN, "\"columnLoad\": \"1200 kN\", ", "")).missing())
        .extracting(MissingInput::name)
        .containsExactly("columnLoad");
    assertThat(
            size(with(
                    COLUMN,
                    "\"loadPattern\": \"concentrated\"",
                    "\"loadPattern\": \"cantilevered-edge\""))
                .missing())
        .extracting(MissingInput::name)
        .containsExactly("loadPattern");
  }

  @Test
  void without_layers_it_asks_for_the_ground() {
    Site site = Piles.site(COLUMN);
    Sheet sheet =
        new DrilledPiles()
            .size(
                Piles.view(site, site.zones().get(0)),
                underhold.site.GroundProfile.NONE,
                DrilledPiles.TABLE.defaults());
    assertThat(sheet.missing()).extracting(MissingInput::name).contains("ground");
    assertThat(sheet.steps()).isEmpty();
    assertThat(
            DrilledPiles.primary(
                Piles.view(site, site.zones().get(0)),
                underhold.site.GroundProfile.NONE,
                DrilledPiles.TABLE.defaults()))
        .isEmpty();
  }

  @Test
  void a_strength_that_nobody_stated_refers_what_rests_on_it() {
    Sheet sheet =
        size(with(COLUMN, ", \"undrainedStrength\": \"120 kPa\"", ""), "boring-depth=60 m");
    for (String id : new String[] {"pile-bond", "group-capacity", "group-loss", "pile-length"}) {
      assertThat(check(sheet, id).verdict()).as(id).isNotEqualTo(Verdict.PASSES);
    }
    assertThat(check(sheet, "pile-slenderness").verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName("Own case: the piles as others see them")
  void primary_piles_for_other_methods() {
    Site site = Piles.site(COLUMN);
    PrimaryPiles piles =
        DrilledPiles.primary(
                Piles.view(site, site.zones().get(0)),
                site.ground(),
                DrilledPiles.TABLE.defaults().with(WorkNumbers.LOCK_OFF, 0.9))
            .orElseThrow();
    assertThat(piles.piles()).isEqualTo(16);
    assertThat(piles.pileKilonewtons()).isCloseTo(192.784, withPercentage(0.01));
    assertThat(piles.totalKilonewtons()).isCloseTo(1320, within(1e-9));
    assertThat(piles.toeMetres()).isCloseTo(23.524, within(1e-6));
    assertThat(piles.dugLevelMetres()).isCloseTo(5.5, within(1e-9));
    assertThat(piles.spacingMetres()).isCloseTo(0.75, within(1e-9));
    assertThat(piles.diameterMetres()).isCloseTo(0.244475, within(1e-9));
    assertThat(piles.shareCarried()).isEqualTo(0.9);
    assertThat(piles.shareOnGround()).isCloseTo(0.1, within(1e-9));
    assertThat(piles.drillingHours()).isCloseTo(16 * 16.012, within(1e-3));
  }

  @Test
  @DisplayName(
      "Own case by hand: piles of a wall are drilled and cased from ground level, a rock ledge on the way")
  void quantities_from_ground_level() {
    String ledge =
        with(
            WALL,
            "\"120 kPa\" } ] }",
            "\"120 kPa\" }, { \"top\": \"8 m\", \"soil\": \"rock\", \"unconfinedStrength\": \"10 MPa\", \"rqd\": \"60 %\" }, { \"top\": \"8.4 m\", \"soil\": \"stiff-clay\", \"undrainedStrength\": \"120 kPa\" } ] }");
    Sheet sheet = size(ledge, "needle-spacing=2 m");
    double toe = step(sheet, "embedment") + 5.5;
    // the ledge is thinner than the half metre at its top that never counts
    assertThat(toe).isGreaterThan(8.4);
    assertThat(quantity(sheet, "drilling in rock")).isCloseTo(14 * 0.4, within(1e-6));
    assertThat(quantity(sheet, "drilling in soil")).isCloseTo(14 * (toe - 0.4), within(1e-6));
    assertThat(quantity(sheet, "casing, length")).isCloseTo(14 * 7.024, within(1e-6));
    // below the ledge the hole is what passes the casing: 244.475 - 2 x 13.843 - 20 mm
    double counted = toe - 8.4 - 0.244475;
    assertThat(step(sheet, "side-2"))
        .isCloseTo(Math.PI * 0.196789 * counted * 66, withPercentage(0.01));
  }
}
