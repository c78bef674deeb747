package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases throughout, worked by hand. */
class BracketPilesMethodTest {
  private static final String EDGE = BracketSites.text();
  private static final String DECIDED = "moment-path=pile-head";

  private static String with(String before, String after) {
    assertThat(EDGE).contains(before);
    return EDGE.replace(before, after);
  }

  private static String bared() {
    return with("\"gapToExcavation\": \"2.5 m\"", "\"gapToExcavation\": \"0.2 m\"");
  }

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow().result().si();
  }

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow();
  }

  private static List<String> missing(Sheet sheet) {
    return sheet.missing().stream().map(MissingInput::name).toList();
  }

  private static void by(Sheet sheet, Map<String, Double> hand) {
    hand.forEach(
        (id, value) ->
            assertThat(step(sheet, id)).as(id).isCloseTo(value, within(1e-3 * Math.abs(value))));
  }

  @Test
  @DisplayName(
      "Own case: platform edge by hand: 60 x 1.8 = 108 kN at 304.8 mm, 7 x 0.408 in, R 0.5795, 1/lambda 1.502 m, theta 0.01290, bond 0.5 m clay and 2.6 m sand")
  void platform_edge_by_hand() {
    Sheet sheet = BracketSites.size(EDGE, DECIDED);
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    by(
        sheet,
        Map.ofEntries(
            Map.entry("bracket-load", 108.0), // 60 x 1.8
            Map.entry("eccentricity", 0.3048), // 0.0889 + 0.0381 + 0.0762 + 0.0254 + 0.0762
            Map.entry("eccentric-moment", 32.92),
            Map.entry("casing-area", 5451e-6), // 8.45 in2
            Map.entry("casing-modulus", 215.7e-6), // 13.16 in3
            Map.entry("combined", 0.5795), // 0.0764 + 0.5031
            Map.entry("pile-length-scale", 1.502), // (4 x 3834 / 3015)^0.25
            Map.entry("head-rotation", 0.01290), // 4 x 32.92 / (3015 x 3.387)
            Map.entry("bond-1", 10.24), // 73.33 x pi x 0.1778 x 0.5 / 2
            Map.entry("bond-2", 98.03), // 135 x pi x 0.1778 x 2.6 / 2
            Map.entry("weld-force", 1112.0), // sqrt((108/0.6)^2 + (32.92 x 3/0.09)^2)
            Map.entry("weld-strength", 1137.0), // 0.6 x 482633 x 0.707 x 0.0111125 / 2
            Map.entry("seat-pressure", 5669.0), // 108/(0.1524 x 0.25) x 2
            Map.entry("seat-allowable", 6343.0), // 0.85 x 17237 / 2.31
            Map.entry("seat-drop", 0.003931),
            Map.entry("proof-load", 180.4),
            Map.entry("verification-load", 216.0),
            Map.entry("preload", 81.0)));
    assertThat(check(sheet, "pile-bond").capacity().si()).isCloseTo(108.27, within(0.05));
    assertThat(check(sheet, "head-sideways").demand().si()).isCloseTo(0.009683, within(1e-5));
    assertThat(check(sheet, "casing-joint").demand().si()).isGreaterThan(0).isLessThan(6);
    assertThat(sheet.verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.quantities().get(0).amount().si()).isEqualTo(10); // 18 m / 1.8 m
  }

  @Test
  @DisplayName(
      "Own case: shortening by hand: 108 kN over 4.6 m cased (1.845 GN) and 3.1 m of bond (0.868 GN): 0.269 + 0.193 = 0.462 mm; theta e 3.93 mm is the larger")
  void movement_names_the_larger_part() {
    Sheet sheet = BracketSites.size(EDGE, DECIDED);
    // cased: 199948e3 x (5451 + 1452)e-6 + 24855e3 x (19381 - 1452)e-6 = 1.8258 GN
    // bond: 199948e3 x 1452e-6 + 24855e3 x (24829 - 1452)e-6 = 0.8714 GN
    by(sheet, Map.of("cased-stiffness", 1.8258e6, "bond-stiffness", 0.8714e6));
    double shortening = 108 * (4.6 / 1.8258e6 + 3.1 / 2 / 0.8714e6);
    assertThat(step(sheet, "shortening")).isCloseTo(shortening, within(1e-6));
    assertThat(step(sheet, "movement-bare")).isCloseTo(shortening + 0.003931 + 0.006, within(3e-6));
    assertThat(step(sheet, "movement"))
        .isCloseTo(0.25 * (shortening + 0.009931) + 0.0025875, within(3e-6));
    assertThat(check(sheet, "movement").note().in(UnitSystem.SI))
        .contains("rotation is the larger");
    assertThat(
            BracketSites.size(EDGE, "moment-path=paired")
                .check("movement")
                .orElseThrow()
                .note()
                .in(UnitSystem.SI))
        .contains("shortening is the larger");
  }

  @Test
  void nobody_decided_who_carries_the_moment_so_what_rests_on_it_is_referred() {
    Sheet sheet = BracketSites.size(EDGE);
    assertThat(sheet.complete()).isTrue();
    assertThat(sheet.input("path").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(sheet.input("path").orElseThrow().words()).isEqualTo("pile-head");
    assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
    for (String id :
        List.of("bracket-eccentricity", "casing-combined", "casing-joint", "movement")) {
      assertThat(check(sheet, id).verdict()).as(id).isEqualTo(Verdict.REFER);
    }
    assertThat(check(sheet, "bracket-eccentricity").note().in(UnitSystem.SI))
        .contains("Decide what carries P e");
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.cautions().get(0).hazard()).isEqualTo("nobody resists the moment yet");
    String known =
        with("\"gapToExcavation\"", "\"pairedPilesPossible\": \"yes\", \"gapToExcavation\"");
    Sheet pairs = BracketSites.size(known);
    assertThat(pairs.input("path").orElseThrow().source().citation()).contains("are possible");
    assertThat(check(pairs, "casing-combined").verdict()).isEqualTo(Verdict.REFER);
    assertThat(BracketSites.size(EDGE, DECIDED).input("path").orElseThrow().origin())
        .isEqualTo(Origin.SET_BY_USER);
  }

  @Test
  @DisplayName(
      "Own case: couple by hand: 5.5 x 0.361 in, e 0.28575, T = 30.86/0.4064 = 75.94 kN; breakout 0.65 x 1.167 x 0.925 x 85.55 / 1.6 = 37.5 kN: fails")
  void couple_by_hand() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=couple");
    StepProof.redo(sheet);
    by(
        sheet,
        Map.of(
            "couple", 75.94,
            "twist", 17.145, // 30.861 / 1.8
            "pile-share", 7.715,
            "anchor-steel", 189.5, // 0.75 x 2 x 390.97e-6 x 517107 / 1.6
            "breakout-basic", 85.55, // 17 x sqrt(2500) x 22.627 lb
            "breakout-edge", 0.925,
            "breakout-area", 1.1667,
            "breakout", 37.51));
    assertThat(check(sheet, "bracket-anchors").verdict()).isEqualTo(Verdict.FAILS);
    // largest e = 37.51 x 0.4064 / 108
    assertThat(check(sheet, "bracket-eccentricity").capacity().si())
        .isCloseTo(0.1411, within(1e-4));
    Sheet wide = BracketSites.size(EDGE, "moment-path=couple", "couple-arm=0.9 m");
    assertThat(check(wide, "bracket-anchors").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(BracketSites.size(EDGE, DECIDED).check("bracket-anchors")).isEmpty();
  }

  @Test
  void brick_is_bolted_through() {
    String brick = with("\"reinforced-concrete\"", "\"unreinforced-masonry\"");
    Sheet sheet = BracketSites.size(brick, "moment-path=couple");
    StepProof.redo(sheet);
    assertThat(sheet.step("breakout")).isEmpty();
    // 2 plates x 0.2^2 x 690 kPa
    assertThat(step(sheet, "bolt-plates")).isCloseTo(55.2, within(1e-6));
    assertThat(check(sheet, "bracket-anchors").capacity().si()).isCloseTo(55.2, within(1e-6));
    assertThat(sheet.cautions()).anyMatch(one -> one.hazard().equals("weak edge"));
    Sheet bolts = BracketSites.size(EDGE, "moment-path=couple", "anchors=through-bolts");
    // concrete behind: 2 x 0.04 x 6343
    assertThat(step(bolts, "bolt-plates")).isCloseTo(507.4, within(0.1));
    assertThat(check(bolts, "bracket-anchors").capacity().si()).isCloseTo(189.5, within(0.1));
  }

  @Test
  @DisplayName(
      "Own case: pair 1.2 m apart by hand: e 0.28575: near 108 x 1.2381 = 133.7 kN, far 25.72 kN pull; bond in tension with 2.5")
  void pair_by_hand() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=paired");
    StepProof.redo(sheet);
    by(sheet, Map.of("near-pile", 133.72, "far-pile", 25.72));
    assertThat(check(sheet, "pile-tension").demand().si()).isCloseTo(25.72, within(0.01));
    assertThat(check(sheet, "pile-tension").capacity().si())
        .isCloseTo(412.9, within(0.1)); // 0.55 x 75 ksi x 2.25
    assertThat(check(sheet, "tension-bond").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.step("tension-bond-1").orElseThrow().formula().symbols().get(3).amount().si())
        .isEqualTo(2.5);
    assertThat(check(sheet, "casing-combined").demand().si()).isCloseTo(0.1372, within(1e-4));
    assertThat(sheet.quantities().get(1).amount().si()).isEqualTo(20);
    // largest e: 412.9 x 1.2 / 108
    assertThat(check(sheet, "bracket-eccentricity").capacity().si()).isCloseTo(4.587, within(1e-3));
  }

  @Test
  void a_head_held_by_the_edge_turns_half_as_much_and_pushes_back() {
    Sheet free = BracketSites.size(EDGE, DECIDED, "casing=7 x 0.5 in");
    Sheet held = BracketSites.size(EDGE, "moment-path=tied", "casing=7 x 0.5 in");
    StepProof.redo(held);
    assertThat(step(held, "head-rotation"))
        .isCloseTo(step(free, "head-rotation") / 2, within(1e-9));
    assertThat(check(held, "head-sideways").demand().si()).isZero();
    // H = M / lc at double reaction: EI 4514, k 12060: lc = (4 x 4514/12060)^0.25 = 1.106 m
    assertThat(step(held, "head-thrust")).isCloseTo(32.918 / 1.106, within(0.03));
    assertThat(BracketSites.size(bared(), "moment-path=tied").step("head-thrust")).isEmpty();
  }

  @Test
  @DisplayName(
      "Own case: bared 2.6 m without braces: K 2.1, (2.6 + 1.524) m, 7 x 0.5 in: r 58.55 mm, slenderness 147.9; referred; two braces: K 1, 0.8667 + 1.524 m, 40.83")
  void a_bared_pile_without_braces_is_referred() {
    Sheet sheet = BracketSites.size(bared(), DECIDED, "casing=7 x 0.5 in");
    StepProof.redo(sheet);
    assertThat(step(sheet, "slenderness")).isCloseTo(2.1 * 4.124 / 0.05855, within(0.1));
    // Fa = pi2 E / (2.12 x 147.9^2) = 42.55 MPa; P/A 16.40; R = 0.3853 + bending 32.92/(254.0e-6 x
    // 303370)/(1 - 0.3853)
    assertThat(step(sheet, "bared-stress")).isCloseTo(42_550, within(60.0));
    assertThat(step(sheet, "bared-combined")).isCloseTo(0.3853 + 0.4272 / 0.6147, within(0.003));
    assertThat(check(sheet, "pile-bared").verdict()).isEqualTo(Verdict.FAILS);
    Sheet strong = BracketSites.size(bared(), DECIDED, "casing=9.625 x 0.545 in");
    assertThat(check(strong, "pile-bared").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(strong, "pile-bared").note().in(UnitSystem.SI)).contains("brace-levels");
    Sheet braced = BracketSites.size(bared(), DECIDED, "casing=7 x 0.5 in", "brace-levels=2");
    StepProof.redo(braced);
    assertThat(step(braced, "slenderness")).isCloseTo((2.6 / 3 + 1.524) / 0.05855, within(0.02));
    assertThat(check(braced, "pile-bared").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(step(braced, "head-rotation")).isLessThan(step(sheet, "head-rotation"));
    assertThat(sheet.cautions()).anyMatch(one -> one.hazard().equals("bared piles"));
    assertThat(BracketSites.size(EDGE, DECIDED).step("slenderness")).isEmpty();
  }

  @ParameterizedTest(name = "gap {0} m, wall {1}: bared {2}")
  @CsvSource({
    "0.5, flexible, yes",
    "0.6, flexible, no",
    "2.5, none, yes",
    "2.6, none, no",
    "2.7, none, no",
    "2.5, stiff, no"
  })
  void a_pile_near_the_face_or_behind_an_open_cut_counts_as_bared(
      String gap, String wall, String bared) {
    Sheet sheet =
        BracketSites.size(
            with("\"gapToExcavation\": \"2.5 m\"", "\"gapToExcavation\": \"" + gap + " m\"")
                .replace("\"flexible\"", "\"" + wall + "\""),
            DECIDED);
    assertThat(sheet.input("bared").orElseThrow().words()).isEqualTo(bared);
  }

  @ParameterizedTest(name = "Own case: {0}: sand {1} kPa at the lower third")
  @CsvSource({
    "gravity, 135",
    "pressure, 200",
    "post-grouted-once, 216.6667",
    "post-grouted-repeatedly, 225"
  })
  void every_kind_of_grouting_has_its_bond(String grouting, double bond) {
    Sheet sheet =
        BracketSites.size(EDGE, DECIDED, "grouting=" + grouting, "casing-below-subgrade=3 m");
    assertThat(sheet.step("bond-1").orElseThrow().formula().symbols().get(0).amount().si())
        .isCloseTo(bond, within(1e-3));
  }

  @Test
  void piles_of_a_pair_keep_their_distance_too() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=paired", "pair-apart=0.7 m");
    assertThat(check(sheet, "pile-spacing").capacity().si()).isCloseTo(0.7, within(1e-9));
    assertThat(check(sheet, "pile-spacing").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void a_joint_in_the_bared_length_takes_the_whole_moment_until_it_is_sleeved() {
    Sheet sheet = BracketSites.size(bared(), DECIDED, "casing=7 x 0.408 in", "first-joint=1 m");
    assertThat(check(sheet, "casing-joint").demand().si()).isCloseTo(32.918, within(0.01));
    assertThat(check(sheet, "casing-joint").verdict()).isEqualTo(Verdict.FAILS);
    Sheet sleeved =
        BracketSites.size(
            bared(), DECIDED, "casing=7 x 0.408 in", "first-joint=1 m", "sleeve-length=3.5 m");
    // next joint 1 + 2.6 = 3.6 m below the bracket, 1 m into the ground
    assertThat(check(sleeved, "casing-joint").note().in(UnitSystem.SI)).contains("joint 3.6 m");
    assertThat(check(sleeved, "casing-joint").demand().si()).isLessThan(32.9);
  }

  @Test
  @DisplayName(
      "Own case: headroom 2.4 m leaves pieces of 1.0 m; the joint at 1.0 m takes M A(z/lc) in the softer case")
  void low_headroom_brings_the_joint_up() {
    Sheet sheet =
        BracketSites.size(
            with("\"outsideHeadroom\": \"4 m\"", "\"outsideHeadroom\": \"2.4 m\""),
            DECIDED,
            "casing=7 x 0.408 in");
    assertThat(step(sheet, "casing-piece")).isCloseTo(1.0, within(1e-9));
    double x = 1 / 1.5017;
    double moment = 32.918 * Math.exp(-x) * (Math.cos(x) + Math.sin(x));
    assertThat(check(sheet, "casing-joint").demand().si()).isCloseTo(moment, within(0.02));
    Sheet lower =
        BracketSites.size(
            with("\"outsideHeadroom\": \"4 m\"", "\"outsideHeadroom\": \"2.1 m\""), DECIDED);
    assertThat(check(lower, "headroom").verdict()).isEqualTo(Verdict.REFER);
    Sheet unknown =
        BracketSites.size(
            with("\"outsideHeadroom\": \"4 m\"", "\"storeysNote\": \"\"")
                .replace(",\n        \"storeysNote\": \"\"", ""),
            DECIDED);
    assertThat(check(unknown, "casing-joint").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(unknown, "casing-joint").note().in(UnitSystem.SI)).contains("headroom");
  }

  @Test
  void without_a_load_the_sheet_asks_and_holds_no_number() {
    Sheet sheet = BracketSites.size(EDGE.replace("\"lineLoad\": \"60 kN/m\",", ""), DECIDED);
    assertThat(missing(sheet)).containsExactly("lineLoad");
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.quantities()).isEmpty();
  }

  @Test
  void without_layers_the_sheet_asks() {
    int from = EDGE.indexOf("\"ground\"");
    int to = EDGE.indexOf("\"zones\"");
    Sheet sheet = BracketSites.size(EDGE.substring(0, from) + EDGE.substring(to), DECIDED);
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
    Sheet sheet = BracketSites.size(rubble, DECIDED, "masonry-bearing=3 MPa");
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(BracketSites.size(rubble, DECIDED), "seat-bearing").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void soft_ground_at_the_head_is_referred_unless_the_structure_carries_the_moment() {
    String soft =
        EDGE.replace("\"stiff-clay\"", "\"soft-clay\"").replace("\"90 kPa\"", "\"15 kPa\"");
    Sheet sheet = BracketSites.size(soft, DECIDED);
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
    Sheet sheet = BracketSites.size(EDGE.replace("\"clearSpan\": \"1.8 m\",", ""), DECIDED);
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
            DECIDED);
    assertThat(check(sheet, "edge-span").verdict()).isEqualTo(verdict);
  }

  @Test
  @DisplayName(
      "Own case: edge of 40 kN m and 80 kN, 1.6 x 60 = 96 kN/m: sqrt(320/96) = 1.826 m, 160/96 = 1.667 m: spacing 1.65 m")
  void strength_of_the_edge_limits_the_spacing() {
    Sheet sheet = BracketSites.size(EDGE, DECIDED, "edge-moment=40 kN·m", "edge-shear=80 kN");
    StepProof.redo(sheet);
    by(sheet, Map.of("span-by-moment", 1.826, "span-by-shear", 1.667, "bracket-load", 99.0));
    Sheet wide = BracketSites.size(EDGE, DECIDED, "spacing=2.5 m");
    assertThat(check(wide, "edge-span").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(step(wide, "bracket-load")).isCloseTo(150, within(1e-9));
  }

  @Test
  void masonry_and_plain_strips_have_caps() {
    String longer = with("\"clearSpan\": \"1.8 m\"", "\"clearSpan\": \"5 m\"");
    String brick = longer.replace("\"reinforced-concrete\"", "\"unreinforced-masonry\"");
    assertThat(check(BracketSites.size(brick, DECIDED), "edge-span").capacity().si())
        .isCloseTo(2.4, within(1e-9));
    assertThat(
            check(BracketSites.size(brick, DECIDED, "sound-wall-height=1 m"), "edge-span")
                .capacity()
                .si())
        .isCloseTo(1.5, within(1e-9));
    assertThat(
            check(
                    BracketSites.size(longer.replace("strong-concrete", "plain-concrete"), DECIDED),
                    "edge-span")
                .capacity()
                .si())
        .isCloseTo(1.8, within(1e-9));
    assertThat(check(BracketSites.size(longer, DECIDED), "edge-span").capacity().si())
        .isCloseTo(5, within(1e-9));
  }

  @Test
  void a_stated_offset_and_a_survey_change_the_eccentricity() {
    String offset = with("\"gapToExcavation\"", "\"loadOffset\": \"0.15 m\", \"gapToExcavation\"");
    assertThat(step(BracketSites.size(offset, DECIDED), "eccentricity"))
        .isCloseTo(0.15 + 0.0254 + 0.0762, within(1e-9));
    assertThat(step(BracketSites.size(offset, DECIDED, "pile-position=surveyed"), "eccentricity"))
        .isCloseTo(0.15 + 0.0254, within(1e-9));
  }

  @Test
  void an_eccentricity_beyond_judgement_is_referred_and_beyond_strength_fails() {
    Sheet far = BracketSites.size(EDGE, DECIDED, "pile-gap=120 mm", "casing=9.625 x 0.545 in");
    assertThat(check(far, "bracket-eccentricity").verdict()).isEqualTo(Verdict.REFER);
    Sheet weak = BracketSites.size(EDGE, DECIDED, "casing=5.5 x 0.361 in");
    assertThat(check(weak, "bracket-eccentricity").verdict()).isEqualTo(Verdict.FAILS);
    // 0.6 x greatest moment beside 108 kN: (1 - 0.1108) x 303370 x 115.2e-6 = 31.08; x 0.6 / 108
    assertThat(check(weak, "bracket-eccentricity").capacity().si()).isCloseTo(0.1727, within(5e-4));
  }

  @Test
  void a_permanent_pile_loses_wall_and_a_longer_life_never_helps() {
    Sheet temporary = BracketSites.size(EDGE, DECIDED, "casing=7 x 0.5 in");
    Sheet permanent =
        BracketSites.size(with("\"temporary\"", "\"permanent\""), DECIDED, "casing=7 x 0.5 in");
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
    Sheet sheet = BracketSites.size(EDGE, DECIDED);
    assertThat(sheet.stages().stream().map(one -> one.title()))
        .containsExactly(
            "Before drilling", "Install", "Cure and test", "Brackets", "Preload", "Dig");
    assertThat(sheet.stages()).allSatisfy(one -> assertThat(one.holdPoints()).isNotEmpty());
    assertThat(sheet.stages().get(4).work().get(0).in(UnitSystem.SI))
        .contains("20.25 kN", "40.5 kN", "60.75 kN", "81 kN");
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
