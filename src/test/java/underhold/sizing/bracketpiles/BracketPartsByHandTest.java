package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/**
 * Quantities, seats, anchors, depths and texts of the platform edge, worked by hand: 108 kN a
 * bracket at 1.8 m, casing 7 x 0.408 in, 4.6 m cased from 0.9 to 5.5 m, 3.1 m of bond.
 */
class BracketPartsByHandTest {
  private static final String EDGE = BracketSites.text();
  private static final String FREE = "moment-path=pile-head";
  private static final String CASING = "casing=7 x 0.408 in";
  private static final double INCH = 0.0254;
  private static final double OUTSIDE = 7 * INCH;

  /** E I of 7 x 0.408 in at 29,000 ksi, kN m2. */
  private static final double BENDING =
      199_947_962 * Math.PI / 64 * (Math.pow(OUTSIDE, 4) - Math.pow(6.184 * INCH, 4));

  private static String with(String before, String after) {
    assertThat(EDGE).contains(before);
    return EDGE.replace(before, after);
  }

  private static String bared() {
    return with("\"gapToExcavation\": \"2.5 m\"", "\"gapToExcavation\": \"0.2 m\"");
  }

  private static String column() {
    return with("\"lineLoad\": \"60 kN/m\"", "\"columnLoad\": \"400 kN\"")
        .replace("cantilevered-edge", "concentrated");
  }

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow().result().si();
  }

  private static double symbol(Sheet sheet, String step, String sign) {
    return sheet.step(step).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow();
  }

  private static double noted(Sheet sheet, String check, String name) {
    return check(sheet, check).note().amounts().get(name).si();
  }

  private static BillItem item(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().startsWith(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name));
  }

  private static double quantity(Sheet sheet, String name) {
    return item(sheet, name).amount().si();
  }

  private static double time(Sheet sheet, String name) {
    return sheet.time().stream()
        .filter(one -> one.name().startsWith(name))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  private static List<String> hazards(Sheet sheet) {
    return sheet.cautions().stream().map(one -> one.hazard()).toList();
  }

  private static String words(Sheet sheet, String stage) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(stage))
        .map(Stage::work)
        .map(work -> String.join(" ", work.stream().map(Phrase::template).toList()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisplayName(
      "own hand calculation: ten piles: 46 m of casing in pieces of 2.6 m, 77 m of bar, 2.49 m3 of grout, 25 days")
  void bill_of_the_edge() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    assertThat(quantity(sheet, "brackets")).isEqualTo(10);
    assertThat(quantity(sheet, "piles")).isEqualTo(10);
    assertThat(quantity(sheet, "proof tests")).isEqualTo(1);
    assertThat(quantity(sheet, "verification tests")).isEqualTo(1);
    assertThat(quantity(sheet, "casing 7 x 0.408 in")).isCloseTo(46, within(1e-6));
    assertThat(quantity(sheet, "bar")).isCloseTo(77, within(1e-6));
    assertThat(quantity(sheet, "drilling")).isCloseTo(77, within(1e-6));
    assertThat(quantity(sheet, "threaded joints")).isEqualTo(10);
    double bore = Math.PI / 4 * Math.pow(6.184 * INCH, 2) * 4.6;
    double bond = Math.PI / 4 * OUTSIDE * OUTSIDE * 3.1;
    assertThat(quantity(sheet, "grout")).isCloseTo(1.5 * 10 * (bore + bond), withPercentage(0.01));
    assertThat(time(sheet, "drilling and grouting")).isEqualTo(120);
    assertThat(time(sheet, "fitting and preloading")).isEqualTo(80);
    assertThat(time(sheet, "working days")).isEqualTo(25);
    assertThat(item(sheet, "brackets").note().template()).contains("along the edge");
  }

  @Test
  @DisplayName(
      "own hand calculation: a pair doubles the piles: 20 x 12 h + 10 x 8 h = 40 days; a fifth of ten is two tests")
  void bill_of_pairs_and_shares() {
    Sheet pairs = BracketSites.size(EDGE, "moment-path=paired", CASING);
    assertThat(quantity(pairs, "brackets")).isEqualTo(10);
    assertThat(quantity(pairs, "piles")).isEqualTo(20);
    assertThat(time(pairs, "working days")).isEqualTo(40);
    assertThat(quantity(BracketSites.size(EDGE, FREE, "proof-share=0.2"), "proof tests"))
        .isEqualTo(2);
    assertThat(quantity(BracketSites.size(EDGE, FREE, "proof-share=0.21"), "proof tests"))
        .isEqualTo(3);
    // 4.6 m in pieces of 3.7 - 1.4 = 2.3 m: two pieces, one joint
    Sheet even = BracketSites.size(with("\"4 m\"", "\"3.7 m\""), FREE, CASING);
    assertThat(quantity(even, "threaded joints")).isEqualTo(10);
    Sheet column = BracketSites.size(column(), "moment-path=couple", CASING);
    assertThat(item(column, "brackets").note().template()).contains("at the column");
    Sheet unknown = BracketSites.size(EDGE.replace("\"wallLength\": \"18 m\",", ""), FREE);
    assertThat(quantity(unknown, "brackets")).isEqualTo(1);
    assertThat(item(unknown, "brackets").note().template()).contains("is not known");
  }

  @Test
  @DisplayName(
      "own hand calculation: overhang half of 177.8 mm: t 24.6 mm; a seat of 1.2 m overhangs 511 mm; 9 kN still take 0.2 m")
  void seat_plate() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    double pressure = 2 * 108 / (0.1524 * 0.25);
    assertThat(step(sheet, "seat-plate"))
        .isCloseTo(0.0889 * Math.sqrt(2 * pressure * 1.67 / 248_211), withPercentage(0.01));
    Sheet rubble = BracketSites.size(with("strong-concrete", "rubble"), FREE, CASING);
    StepProof.redo(rubble);
    double wide = 2 * 108 / (0.1524 * 1.2);
    assertThat(step(rubble, "seat-pressure")).isCloseTo(wide, withPercentage(0.01));
    assertThat(step(rubble, "seat-plate"))
        .isCloseTo((1.2 - 0.1778) / 2 * Math.sqrt(2 * wide * 1.67 / 248_211), withPercentage(0.01));
    assertThat(rubble.step("seat-allowable")).isEmpty();
    Sheet light = BracketSites.size(with("60 kN/m", "5 kN/m"), FREE, CASING);
    assertThat(step(light, "seat-pressure"))
        .isCloseTo(2 * 9 / (0.1524 * 0.2), withPercentage(0.01));
    assertThat(check(light, "seat-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(light, "seat-bearing").note().template()).startsWith("Open the edge up");
    assertThat(check(rubble, "seat-bearing").note().template()).contains("cast beam or needles");
  }

  @Test
  @DisplayName(
      "own hand calculation: a shift of 0.1 m counts as 0.45 x 152.4 mm: 2 P / (3 x 7.62 mm) = 9,449 kN/m on 1.2 m")
  void seat_loaded_at_its_edge() {
    Sheet sheet = BracketSites.size(EDGE, FREE, "casing=9.625 x 0.545 in", "shim-shift=0.1 m");
    StepProof.redo(sheet);
    assertThat(step(sheet, "seat-pressure"))
        .isCloseTo(2 * 108 / (3 * 0.05 * 0.1524) / 1.2, withPercentage(0.01));
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.FAILS);
    // B/6 exactly is still a whole seat: 2 P / B
    Sheet sixth = BracketSites.size(EDGE, FREE, CASING, "shim-shift=20 mm");
    assertThat(symbol(sixth, "seat-pressure", "es")).isCloseTo(0.020, within(1e-12));
    assertThat(step(sixth, "seat-pressure"))
        .isCloseTo(
            108 / (0.1524 * symbol(sixth, "seat-pressure", "L")) * (1 + 6 * 0.02 / 0.1524),
            withPercentage(0.01));
    // on a column the seat may be longer than any spacing: 200 kN, 2,625 kN/m of 690 kPa
    Sheet column =
        BracketSites.size(
            column().replace("strong-concrete", "rubble"), FREE, CASING, "longest-seat=3 m");
    assertThat(symbol(column, "seat-pressure", "L")).isCloseTo(3, within(1e-9));
    // beside others no longer than their spacing of 1.8 m: 1,417 / 690 = 2.05 m is cut
    Sheet beside =
        BracketSites.size(
            with("strong-concrete", "rubble"), FREE, CASING, "longest-seat=3 m", "spacing=1.8 m");
    assertThat(symbol(beside, "seat-pressure", "L")).isCloseTo(1.8, within(1e-9));
  }

  @Test
  @DisplayName(
      "AISC Manual part 9, prying: 75.94/2 kN, 1.5 x 22.3 mm lever, twice that tributary: 17.8 mm")
  void prying() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=couple", "casing=5.5 x 0.361 in");
    double diameter = Math.sqrt(4 * 0.606 / Math.PI) * INCH;
    double pull = 108 * 0.28575 / 0.4064 / 2;
    // b / p is 1 / 2 whatever the lever
    assertThat(step(sheet, "prying"))
        .isCloseTo(Math.sqrt(6.66 * pull / 2 / 399_896), withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "T")).isCloseTo(pull, withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "b")).isCloseTo(1.5 * diameter, withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "p")).isCloseTo(3 * diameter, withPercentage(0.05));
  }

  @Test
  @DisplayName("ACI 318-19 17.6.2.1.2: the area of a row is no more than that of its anchors apart")
  void anchors_far_apart() {
    Sheet sheet =
        BracketSites.size(EDGE, "moment-path=couple", "anchor-spread=2 m", "anchor-edge=1 m");
    StepProof.redo(sheet);
    assertThat(step(sheet, "breakout-area")).isCloseTo(2, within(1e-9));
    assertThat(step(sheet, "breakout-edge")).isEqualTo(1);
    assertThat(check(sheet, "bracket-anchors").note().template()).contains("breakout of cracked");
    Sheet bolts = BracketSites.size(EDGE, "moment-path=couple", "anchors=through-bolts");
    assertThat(check(bolts, "bracket-anchors").note().template()).contains("plates behind");
  }

  @Test
  @DisplayName(
      "own hand calculation: three lengths of 1.50 m below 0.9 m give 5.5 m; half of an 8 m pile 5.1 m; 3.5 + 3 m just 6.5 m")
  void bottom_of_the_casing() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    assertThat(noted(sheet, "pile-bond", "f")).isCloseTo(5.5, within(1e-9));
    assertThat(noted(sheet, "pile-bond", "t")).isCloseTo(8.6, within(1e-9));
    assertThat(check(sheet, "pile-bond").note().template()).contains("boring past the toe");
    assertThat(noted(BracketSites.size(EDGE, FREE, CASING, "longest-pile=8 m"), "pile-bond", "f"))
        .isCloseTo(5.1, within(1e-9));
    assertThat(
            noted(
                BracketSites.size(EDGE, FREE, CASING, "casing-below-subgrade=3 m"),
                "pile-bond",
                "f"))
        .isCloseTo(6.5, within(1e-9));
    String deeper =
        with(
            "\"unitWeight\": \"20 kN/m3\" }",
            "\"unitWeight\": \"20 kN/m3\" }, { \"top\": \"20 m\", \"soil\": \"rock\" }");
    assertThat(check(BracketSites.size(deeper, FREE, CASING), "pile-bond").note().template())
        .doesNotContain("boring past the toe");
  }

  @Test
  @DisplayName(
      "Broms 1964: 3 x 32.92 kN m: clay 1.5 b + sqrt(M / (2.25 su b)) = 1.92 m; loose sand cbrt(2 M / (9.19 b 2.77)) = 3.52 m; rock and no moment ask nothing")
  void least_length_in_the_ground() {
    String[] stiff = {FREE, CASING, "soil-reaction=300 MPa", "lateral-factor=3"};
    double moment = 3 * 108 * 0.3048;
    double springs = 3 * Math.pow(4 * BENDING / 150_000, 0.25);
    assertThat(springs).isLessThan(1.75);
    double clay = 1.5 * OUTSIDE + Math.sqrt(moment / (2.25 * 90 * OUTSIDE));
    assertThat(check(BracketSites.size(EDGE, stiff), "sideways-resistance").demand().si())
        .isCloseTo(clay, withPercentage(0.1));
    double passive = Math.pow(Math.tan(Math.toRadians(45 + 28 / 2.0)), 2);
    double sand = Math.cbrt(2 * moment / ((19 - 9.81) * OUTSIDE * passive));
    assertThat(ground("loose-sand", stiff)).isCloseTo(sand, withPercentage(0.1));
    assertThat(ground("rock", stiff)).isCloseTo(springs, withPercentage(0.1));
    assertThat(
            check(BracketSites.size(EDGE, "moment-path=paired", CASING), "sideways-resistance")
                .demand()
                .si())
        .isZero();
  }

  private static double ground(String soil, String... settings) {
    String other =
        EDGE.replace("\"stiff-clay\"", "\"" + soil + "\"")
            .replace(", \"undrainedStrength\": \"90 kPa\"", "");
    return check(BracketSites.size(other, settings), "sideways-resistance").demand().si();
  }

  @Test
  @DisplayName(
      "Bjerrum and Mascardi: the pile in clay of 6,030 kPa buckles at 2 sqrt(6,030 EI) / 2.12 = 4.5 MN")
  void buckling_load() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    assertThat(noted(sheet, "soft-ground-buckling", "p"))
        .isCloseTo(2 * Math.sqrt(67 * 90 * BENDING) / 2.12, withPercentage(0.1));
    assertThat(check(sheet, "soft-ground-buckling").verdict()).isEqualTo(Verdict.PASSES);
    String peat = with("\"dense-sand\"", "\"peat\"").replace("60 kN/m", "600 kN/m");
    // 1,080 kN against 2 sqrt(500 x 3,834) / 2.12 = 1,306; 2,160 kN is beyond it
    assertThat(check(BracketSites.size(peat, FREE, CASING), "soft-ground-buckling").verdict())
        .isEqualTo(Verdict.REFER);
    assertThat(
            check(
                    BracketSites.size(peat.replace("600 kN/m", "1200 kN/m"), FREE, CASING),
                    "soft-ground-buckling")
                .verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "Hetenyi: M exp(-x)(cos x + sin x) falls to the thread's moment at depth x lc; a bared pile adds its bare length")
  void depth_from_which_a_joint_holds() {
    for (String site : List.of(EDGE, bared())) {
      boolean bare = !site.equals(EDGE);
      Sheet sheet = BracketSites.size(site, FREE, CASING, "first-joint=0.5 m");
      double moment = 108 * 0.3048;
      double ratio = check(sheet, "casing-joint").capacity().si() / moment;
      assertThat(ratio).isBetween(0.01, 0.99);
      double low = 0;
      double high = 2;
      for (int i = 0; i < 60; i++) {
        double x = (low + high) / 2;
        boolean above = Math.exp(-x) * (Math.cos(x) + Math.sin(x)) > ratio;
        low = above ? x : low;
        high = above ? high : x;
      }
      double scale = Math.pow(4 * BENDING / (0.5 * 67 * 90), 0.25);
      assertThat(noted(sheet, "casing-joint", "z"))
          .isCloseTo((bare ? 2.6 : 0) + low * scale, withPercentage(0.1));
    }
  }

  @Test
  @DisplayName(
      "own hand calculation: lc 1.263 m: from 0.3 m in pieces of 0.7 m two joints; from 2.6 m none; bared 2.6 m from 1 m two")
  void joints_near_the_head() {
    String low = with("\"4 m\"", "\"2.1 m\"");
    assertThat(
            noted(BracketSites.size(low, FREE, CASING, "first-joint=0.3 m"), "casing-joint", "n"))
        .isEqualTo(2);
    assertThat(noted(BracketSites.size(EDGE, FREE, CASING), "casing-joint", "n")).isZero();
    assertThat(
            noted(BracketSites.size(bared(), FREE, CASING, "first-joint=1 m"), "casing-joint", "n"))
        .isEqualTo(2);
    // 3.2 m of sleeve over a first joint at 1 m: the next, 2.6 m lower
    Sheet sleeved = BracketSites.size(EDGE, FREE, CASING, "first-joint=1 m", "sleeve-length=3.2 m");
    assertThat(noted(sleeved, "casing-joint", "d")).isCloseTo(3.6, within(1e-9));
    // a sleeve that just reaches the next joint covers no more than it
    Sheet just = BracketSites.size(EDGE, FREE, CASING, "first-joint=1 m", "sleeve-length=3.6 m");
    assertThat(noted(just, "casing-joint", "d")).isCloseTo(3.6, within(1e-9));
  }

  @Test
  @DisplayName(
      "statics: a bared pile turns over 2.6 m, with one brace over 4/3 x 1.3 m, with two over 4/3 x 0.867 m")
  void turning_length() {
    assertThat(symbol(BracketSites.size(bared(), FREE, CASING), "head-rotation", "H"))
        .isCloseTo(2.6, within(1e-9));
    assertThat(
            symbol(
                BracketSites.size(bared(), FREE, CASING, "brace-levels=1"), "head-rotation", "H"))
        .isCloseTo(1.3 * 4 / 3, within(1e-9));
    assertThat(
            symbol(
                BracketSites.size(bared(), FREE, CASING, "brace-levels=2"), "head-rotation", "H"))
        .isCloseTo(2.6 / 3 * 4 / 3, within(1e-9));
  }

  @Test
  void the_lightest_casing_that_passes_is_taken_and_else_the_strongest() {
    assertThat(item(BracketSites.size(EDGE, FREE), "casing").name()).endsWith("7 x 0.408 in");
    // at 120 mm of gap every casing is beyond 0.3048 m: the lightest that is strong
    String loose = with("\"10 mm\"", "\"20 mm\"");
    Sheet far = BracketSites.size(loose, FREE, "pile-gap=120 mm");
    assertThat(item(far, "casing").name()).endsWith("7 x 0.408 in");
    // 0.6 x 0.9236 x 65.43 kN m / 108 kN = 0.336 m, less than 0.387 m
    assertThat(check(far, "bracket-eccentricity").verdict()).isEqualTo(Verdict.FAILS);
    // nothing carries 3,600 kN at such an eccentricity
    Sheet none = BracketSites.size(with("60 kN/m", "2000 kN/m"), FREE);
    assertThat(item(none, "casing").name()).endsWith("11.875 x 0.582 in");
    assertThat(check(none, "casing-combined").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName("own hand calculation: box weld: P over 2 (b + d), M over b d + d2/3")
  void box_weld() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING, "weld=box");
    StepProof.redo(sheet);
    double depth = symbol(sheet, "weld-force", "d");
    double direct = 108 / (2 * (OUTSIDE + depth));
    double bending = 108 * 0.3048 / (OUTSIDE * depth + depth * depth / 3);
    assertThat(step(sheet, "weld-force"))
        .isCloseTo(Math.hypot(direct, bending), withPercentage(0.01));
    assertThat(symbol(sheet, "weld-force", "b")).isCloseTo(OUTSIDE, within(1e-9));
  }

  @Test
  void cautions_follow_the_path_and_the_ground() {
    List<String> always =
        List.of(
            "eccentricity",
            "settling ground",
            "small piles bend",
            "drilling beside a footing",
            "casing steel",
            "jacking");
    assertThat(hazards(BracketSites.size(EDGE, FREE))).containsExactlyElementsOf(always);
    for (String path : List.of("couple", "tied")) {
      assertThat(hazards(BracketSites.size(EDGE, "moment-path=" + path)))
          .startsWith("the structure carries the moment")
          .containsAll(always);
    }
    assertThat(hazards(BracketSites.size(EDGE, "moment-path=paired")))
        .containsExactlyElementsOf(always);
    String soft =
        EDGE.replace("\"stiff-clay\"", "\"soft-clay\"").replace("\"90 kPa\"", "\"15 kPa\"");
    assertThat(hazards(BracketSites.size(soft, FREE))).startsWith("soft ground at the head");
    assertThat(hazards(BracketSites.size(EDGE))).startsWith("nobody resists the moment yet");
  }

  @Test
  void the_caps_on_the_spacing_are_named() {
    String longer = with("\"clearSpan\": \"1.8 m\"", "\"clearSpan\": \"5 m\"");
    String brick = longer.replace("\"reinforced-concrete\"", "\"unreinforced-masonry\"");
    assertThat(caps(longer)).startsWith("Least of the length it bridges. Soil");
    assertThat(caps(brick)).contains("the cap on arching (state sound-wall-height");
    assertThat(caps(brick, "sound-wall-height=1 m")).contains("height of sound masonry and");
    assertThat(caps(longer.replace("strong-concrete", "plain-concrete")))
        .contains("the cap on unreinforced strips");
    assertThat(caps(longer, "edge-moment=40 kN·m", "edge-shear=80 kN"))
        .contains("its moment and shear");
    assertThat(caps(longer, "edge-moment=40 kN·m")).doesNotContain("its moment and shear");
    assertThat(caps(longer, "edge-shear=80 kN")).doesNotContain("its moment and shear");
    assertThat(caps(longer.replace("\"good\"", "\"poor\""))).contains("poor condition");
  }

  private static String caps(String site, String... settings) {
    String[] all = java.util.Arrays.copyOf(settings, settings.length + 1);
    all[settings.length] = FREE;
    return check(BracketSites.size(site, all), "edge-span").note().template();
  }

  @Test
  @DisplayName("own hand calculation: a pair at a column stands as far apart as it is set")
  void spacing_of_a_pair_at_a_column() {
    Sheet sheet = BracketSites.size(column(), "moment-path=paired", CASING);
    assertThat(check(sheet, "pile-spacing").capacity().si()).isCloseTo(1.2, within(1e-9));
    assertThat(BracketSites.size(column(), FREE, CASING).check("pile-spacing")).isEmpty();
  }

  @Test
  void stages_follow_path_and_place() {
    assertThat(words(BracketSites.size(EDGE, "moment-path=couple"), "Brackets"))
        .contains("set the anchors", "in bays no longer than")
        .doesNotContain("Pack the pile head");
    assertThat(words(BracketSites.size(EDGE, "moment-path=tied"), "Brackets"))
        .contains("Pack the pile head")
        .doesNotContain("set the anchors");
    assertThat(words(BracketSites.size(column(), FREE), "Brackets"))
        .contains("one side of the column's footing");
    assertThat(words(BracketSites.size(EDGE, FREE), "Dig"))
        .contains("Dig in lifts", "Warn at half")
        .doesNotContain("bare");
    assertThat(words(BracketSites.size(bared(), FREE), "Dig")).contains("without braces");
    assertThat(words(BracketSites.size(bared(), FREE, "brace-levels=1"), "Dig"))
        .contains("below a waler that carries");
  }

  @Test
  void the_path_is_named_in_words() {
    assertThat(MomentPath.words()).containsExactly("pile-head", "couple", "paired", "tied");
    assertThat(
            BracketSites.size(EDGE, FREE).step("eccentric-moment").orElseThrow().note().template())
        .startsWith("Path: pile head bending, free bracket.");
  }

  @Test
  @DisplayName(
      "own hand calculation: the far bar stretches 25.7 kN x (4.6 + 3.1 / 2) / (E 1,452 mm2), times e / L")
  void drop_of_a_pair() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=paired", "casing=5.5 x 0.361 in");
    double cased = symbol(sheet, "seat-drop", "Lc");
    double bond = symbol(sheet, "seat-drop", "Lb");
    double pull = 108 * 0.28575 / 1.2;
    double drop = pull * (cased + bond / 2) / (199_947_962 * 1452e-6) * 0.28575 / 1.2;
    assertThat(step(sheet, "seat-drop")).isCloseTo(drop, withPercentage(0.1));
    assertThat(step(sheet, "movement-bare"))
        .isCloseTo(step(sheet, "shortening") + drop + 0.006, withPercentage(0.1));
  }
}
