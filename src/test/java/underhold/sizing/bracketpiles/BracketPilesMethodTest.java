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
import underhold.quantity.UnitSystem;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases throughout, worked by hand: paths of the moment, bared piles, joints. */
class BracketPilesMethodTest {
  private static void by(Sheet sheet, Map<String, Double> hand) {
    hand.forEach(
        (id, value) ->
            assertThat(step(sheet, id)).as(id).isCloseTo(value, within(1e-3 * Math.abs(value))));
  }

  @Test
  @DisplayName(
      "Own case: platform edge by hand: 60 x 1.8 = 108 kN at 304.8 mm, 7 x 0.408 in, R 0.5795, 1/lambda 1.502 m, theta 0.01290, bond 0.5 m clay and 2.6 m sand")
  void platform_edge_by_hand() {
    Sheet sheet = BracketSites.size(EDGE, FREE);
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
    Sheet sheet = BracketSites.size(EDGE, FREE);
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
    assertThat(BracketSites.size(EDGE, FREE).input("path").orElseThrow().origin())
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
    assertThat(BracketSites.size(EDGE, FREE).check("bracket-anchors")).isEmpty();
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
    Sheet free = BracketSites.size(EDGE, FREE, "casing=7 x 0.5 in");
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
    Sheet sheet = BracketSites.size(bared(), FREE, "casing=7 x 0.5 in");
    StepProof.redo(sheet);
    assertThat(step(sheet, "slenderness")).isCloseTo(2.1 * 4.124 / 0.05855, within(0.1));
    // Fa = pi2 E / (2.12 x 147.9^2) = 42.55 MPa; P/A 16.40; R = 0.3853 + bending 32.92/(254.0e-6 x
    // 303370)/(1 - 0.3853)
    assertThat(step(sheet, "bared-stress")).isCloseTo(42_550, within(60.0));
    assertThat(step(sheet, "bared-combined")).isCloseTo(0.3853 + 0.4272 / 0.6147, within(0.003));
    assertThat(check(sheet, "pile-bared").verdict()).isEqualTo(Verdict.FAILS);
    Sheet strong = BracketSites.size(bared(), FREE, "casing=9.625 x 0.545 in");
    assertThat(check(strong, "pile-bared").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(strong, "pile-bared").note().in(UnitSystem.SI)).contains("brace-levels");
    Sheet braced = BracketSites.size(bared(), FREE, "casing=7 x 0.5 in", "brace-levels=2");
    StepProof.redo(braced);
    assertThat(step(braced, "slenderness")).isCloseTo((2.6 / 3 + 1.524) / 0.05855, within(0.02));
    assertThat(check(braced, "pile-bared").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(step(braced, "head-rotation")).isLessThan(step(sheet, "head-rotation"));
    assertThat(sheet.cautions()).anyMatch(one -> one.hazard().equals("bared piles"));
    assertThat(BracketSites.size(EDGE, FREE).step("slenderness")).isEmpty();
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
            FREE);
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
        BracketSites.size(EDGE, FREE, "grouting=" + grouting, "casing-below-subgrade=3 m");
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
    Sheet sheet = BracketSites.size(bared(), FREE, "casing=7 x 0.408 in", "first-joint=1 m");
    assertThat(check(sheet, "casing-joint").demand().si()).isCloseTo(32.918, within(0.01));
    assertThat(check(sheet, "casing-joint").verdict()).isEqualTo(Verdict.FAILS);
    Sheet sleeved =
        BracketSites.size(
            bared(), FREE, "casing=7 x 0.408 in", "first-joint=1 m", "sleeve-length=3.5 m");
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
            FREE,
            "casing=7 x 0.408 in");
    assertThat(step(sheet, "casing-piece")).isCloseTo(1.0, within(1e-9));
    double x = 1 / 1.5017;
    double moment = 32.918 * Math.exp(-x) * (Math.cos(x) + Math.sin(x));
    assertThat(check(sheet, "casing-joint").demand().si()).isCloseTo(moment, within(0.02));
    Sheet lower =
        BracketSites.size(
            with("\"outsideHeadroom\": \"4 m\"", "\"outsideHeadroom\": \"2.1 m\""), FREE);
    assertThat(check(lower, "headroom").verdict()).isEqualTo(Verdict.REFER);
    Sheet unknown =
        BracketSites.size(
            with("\"outsideHeadroom\": \"4 m\"", "\"storeysNote\": \"\"")
                .replace(",\n        \"storeysNote\": \"\"", ""),
            FREE);
    assertThat(check(unknown, "casing-joint").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(unknown, "casing-joint").note().in(UnitSystem.SI)).contains("headroom");
  }
}
