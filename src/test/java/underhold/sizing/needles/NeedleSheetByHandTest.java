package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.needles.NeedleColumnTest.check;
import static underhold.sizing.needles.NeedleColumnTest.step;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.BillItem;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Stage;
import underhold.sizing.Step;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Quantities, layout, seats, jacks, pick-up and movement of whole sheets; own cases by hand. */
class NeedleSheetByHandTest {
  private static final double KIP = 4.4482216152605;
  private static final double TON = 2 * KIP;

  private static double quantity(Sheet sheet, String name) {
    return item(sheet, name).amount().si();
  }

  private static BillItem item(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no quantity " + name));
  }

  private static double days(Sheet sheet, String name) {
    return sheet.time().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  private static Stage stage(Sheet sheet, String title) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static String words(Stage stage) {
    return String.join(" ", stage.work().stream().map(Phrase::template).toList());
  }

  @Test
  @DisplayName(
      "own hand calculation: two W24X84 of 14 ft + 2 x 0.15 m at 84 lb a foot; three pairs of plates 4.275 x 1/2 x 22.56 in each")
  void bill_of_a_pair() {
    Sheet sheet = NeedleSites.size(NeedleSites.column(), "pair-spacing=2 m");
    double length = 14 * 0.3048 + 0.3;
    double weight = 84 * KIP / 1000 / 0.3048 * length;
    assertThat(quantity(sheet, "needles")).isEqualTo(2);
    assertThat(quantity(sheet, "length of one needle")).isCloseTo(length, within(1e-9));
    assertThat(quantity(sheet, "weight of one needle")).isCloseTo(weight, withPercentage(0.2));
    assertThat(quantity(sheet, "steel of the needles, weight"))
        .isCloseTo(2 * weight, withPercentage(0.2));
    double plates = 2 * 4.275 * 0.5 * (24.1 - 2 * 0.77) * Math.pow(0.0254, 3) * 7850 * 9.80665e-3;
    assertThat(quantity(sheet, "stiffener plates, weight"))
        .isCloseTo(2 * 3 * plates, withPercentage(0.2));
    // 69.0 kip on dense sand takes squares of 1.8 m
    assertThat(quantity(sheet, "pads")).isEqualTo(4);
    assertThat(item(sheet, "pads").note().template()).contains("square");
    assertThat(quantity(sheet, "area of pads")).isCloseTo(4 * 3.24, within(1e-6));
    assertThat(quantity(sheet, "jacks")).isEqualTo(4);
    assertThat(quantity(sheet, "rating of a jack")).isCloseTo(50 * TON, within(1e-6));
    assertThat(days(sheet, "working days to set needles and seats")).isEqualTo(4);
    assertThat(days(sheet, "working days of load transfer")).isEqualTo(2);
    assertThat(days(sheet, "working days to return the load")).isEqualTo(3);
    assertThat(days(sheet, "working days of needle work")).isEqualTo(9);
    assertThat(sheet.quantities()).noneMatch(one -> one.name().equals("crib timbers"));

    Sheet mat = NeedleSites.size(NeedleSites.column());
    assertThat(item(mat, "pads").note().template()).contains("one mat");
    assertThat(quantity(mat, "area of pads")).isCloseTo(4 * 2.5 * 1, within(1e-6));
    assertThat(NeedleSites.size(NeedleSites.column(), "stiffeners=none").quantities())
        .noneMatch(one -> one.name().startsWith("stiffener"));
    assertThat(NeedleSites.size(NeedleSites.column(), "seat=pile").quantities())
        .noneMatch(one -> one.name().contains("pads"));
  }

  @Test
  @DisplayName(
      "own hand calculation: cantilevers have one jack each and two pairs of plates; a row of seven takes 14 + 5 days")
  void bill_of_cantilevers_and_rows() {
    Sheet tail = NeedleSites.size(NeedleSites.column(), "arrangement=cantilever");
    Sheet pair = NeedleSites.size(NeedleSites.column());
    // overhang 7 ft, back span 10.5 ft
    assertThat(quantity(tail, "length of one needle")).isCloseTo(17.5 * 0.3048 + 0.3, within(1e-9));
    assertThat(quantity(tail, "jacks")).isEqualTo(2);
    assertThat(quantity(tail, "pads")).isEqualTo(2);
    assertThat(quantity(pair, "jacks")).isEqualTo(4);
    Sheet row = NeedleSites.size(NeedleSites.wall(), "table=eu-heb");
    assertThat(quantity(row, "jacks")).isEqualTo(14);
    assertThat(days(row, "working days of needle work")).isEqualTo(14 + 2 + 3);
    // HEB180: plates (180 - 8.5)/2 = 85.75 mm, least tf/2 = 7 mm, so 10 mm; 152 mm between flanges
    double plates = 2 * 0.08575 * 0.010 * 0.152 * 7850 * 9.80665e-3;
    assertThat(quantity(row, "stiffener plates, weight"))
        .isCloseTo(7 * 3 * plates, withPercentage(0.5));
    Sheet rowTail = NeedleSites.size(NeedleSites.wall(), "table=eu-heb", "arrangement=cantilever");
    int needles = (int) quantity(rowTail, "needles");
    assertThat(quantity(rowTail, "jacks")).isEqualTo(needles);
    String name = item(rowTail, "needles").note().template();
    assertThat(name).startsWith("HEB");
  }

  @Test
  @DisplayName("own hand calculation: 0.3 m of 0.1 m timbers is three layers, not four")
  void crib_layers() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.column(), "seat=crib", "crib-height=0.3 m", "crib-timber-width=100 mm");
    double stress = step(sheet, "crib-stress");
    double timbers = Math.ceil(Math.sqrt(step(sheet, "needle-reaction") / (stress * 0.01)));
    assertThat(quantity(sheet, "crib timbers")).isEqualTo(4 * timbers * 3);
    assertThat(words(stage(sheet, "Seats"))).contains("Build the cribs plumb");
    assertThat(words(stage(NeedleSites.size(NeedleSites.column()), "Seats")))
        .doesNotContain("cribs");
  }

  @Test
  @DisplayName(
      "own hand calculation: 331.5 kN x 1.1 at 300 kPa: 1.2 m; a fulcrum 920.8 kN x 1.1: 1.9 m; span W + 2 x 2 + B")
  void seats_clear_of_the_excavation() {
    Map<String, String> facts =
        NeedleSites.with(
            NeedleSites.column(),
            "seatSpan",
            "",
            "underminedWidth",
            "3 m",
            "excavationDepth",
            "3 m",
            "seatBearingDepth",
            "1 m");
    String[] settings = {"seat-pressure=300 kPa", "pair-spacing=4 m", "load-position=0.4"};
    Sheet seated = NeedleSites.size(facts, settings);
    // 180 kip x 1.15 x 0.6 = 552.5 kN, 0.6 of it on the nearer seat
    assertThat(step(seated, "clear-of-excavation")).isCloseTo(3 + 4 + 1.2, within(1e-9));
    Sheet tail =
        NeedleSites.size(
            facts, "seat-pressure=300 kPa", "pair-spacing=4 m", "arrangement=cantilever");
    assertThat(step(tail, "clear-of-excavation")).isCloseTo(3 + 4 + 1.9, within(1e-9));
  }

  @Test
  @DisplayName(
      "own hand calculation: 69.0 kip = 306.7 kN at 300 kPa takes 1.1 m square, 253.5 kPa; at 20 kPa the widest, 2.5 m")
  void smallest_pad() {
    Sheet sheet =
        NeedleSites.size(NeedleSites.column(), "seat-pressure=300 kPa", "pair-spacing=3 m");
    double force = 62.688 * 1.1 * KIP;
    assertThat(step(sheet, "seat-pressure")).isCloseTo(force / 1.21, withPercentage(0.01));
    assertThat(quantity(sheet, "area of pads")).isCloseTo(4 * 1.21, within(1e-9));
    Sheet weak = NeedleSites.size(NeedleSites.column(), "seat-pressure=20 kPa", "pair-spacing=3 m");
    assertThat(step(weak, "seat-pressure")).isCloseTo(force / 6.25, withPercentage(0.01));
    Sheet rock = NeedleSites.on("rock", NeedleSites.column(), "pair-spacing=3 m");
    // IBC Table 1806.2, sedimentary rock 4,000 psf = 191.5 kPa: 1.265 m, so 1.3 m
    assertThat(step(rock, "seat-pressure")).isCloseTo(force / 1.69, withPercentage(0.01));
    assertThat(check(rock, "seat-bearing").note().template()).startsWith("Above it");
    assertThat(
            check(NeedleSites.on("peat", NeedleSites.column()), "seat-bearing").note().template())
        .startsWith("No presumptive value");
  }

  @Test
  @DisplayName(
      "own hand calculation: beyond 500 tons no usual jack serves: 4,448 kN is shown and fails")
  void jacks_beyond_the_largest() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.column(), "columnLoad", "12000 kN"),
            "seat-pressure=5000 kPa");
    // 12,000 x 1.15 x 0.6 / 2 x 1.5 is more than 6,000
    assertThat(step(sheet, "jack-demand")).isGreaterThan(6210);
    assertThat(check(sheet, "jack-capacity").capacity().si()).isCloseTo(500 * TON, within(1e-6));
    assertThat(check(sheet, "jack-capacity").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(sheet, "jack-capacity").note().template()).startsWith("The smallest usual");
    Sheet own = NeedleSites.size(NeedleSites.column(), "jack-rating=600 kN");
    assertThat(check(own, "jack-capacity").note().template()).startsWith("Rating as set");
    assertThat(quantity(own, "rating of a jack")).isEqualTo(600);
  }

  @Test
  @DisplayName(
      "own hand calculation: preload of a cantilever 90 kip x 17.5 / 10.5 = 150 kip, its last step the whole of it")
  void preload_reaches_the_stages() {
    Sheet tail = NeedleSites.size(NeedleSites.column(), "arrangement=cantilever");
    assertThat(step(tail, "jack-preload") / KIP).isCloseTo(150, within(1e-6));
    assertThat(tail.step("jack-preload").orElseThrow().title()).contains("fulcrum");
    List<Double> steps =
        stage(tail, "Preload in steps").work().stream()
            .filter(one -> one.amounts().containsKey("j"))
            .map(one -> one.amounts().get("j").si() / KIP)
            .toList();
    assertThat(steps.get(steps.size() - 1)).isCloseTo(150, within(1e-6));
    Step pair = NeedleSites.size(NeedleSites.column()).step("jack-preload").orElseThrow();
    assertThat(pair.title()).contains("nearer seat");
    assertThat(pair.formula().symbols().get(1).meaning()).contains("half on each needle");
    Step row = NeedleSites.size(NeedleSites.wall()).step("jack-preload").orElseThrow();
    assertThat(row.formula().symbols().get(1).meaning()).contains("wall on one needle");
  }

  @Test
  void stages_and_cautions_follow_the_site() {
    Sheet pair = NeedleSites.size(NeedleSites.column());
    Sheet tail = NeedleSites.size(NeedleSites.column(), "arrangement=cantilever");
    Sheet row = NeedleSites.size(NeedleSites.wall());
    String needles = "Needles and pick-up";
    assertThat(words(stage(pair, needles))).contains("Set the two needles");
    assertThat(words(stage(row, needles))).contains("Cut holes at");
    assertThat(tail.stages().stream().map(NeedleSheetByHandTest::words))
        .anyMatch(text -> text.contains("hold-down of every tail"));
    assertThat(pair.stages().stream().map(NeedleSheetByHandTest::words))
        .noneMatch(text -> text.contains("hold-down of every tail"));
    assertThat(weak("poor")).isTrue();
    assertThat(weak("dangerous")).isTrue();
    assertThat(weak("fair")).isFalse();
  }

  private static boolean weak(String condition) {
    return NeedleSites.size(NeedleSites.with(NeedleSites.column(), "structureCondition", condition))
        .cautions()
        .stream()
        .anyMatch(one -> one.hazard().equals("weak structure"));
  }

  @Test
  void what_the_site_says_no_to_is_a_caution_and_a_yes_is_none() {
    assertThat(hazards("pickUpPossible", "no")).contains("pick-up not possible");
    assertThat(hazards("pickUpPossible", "yes")).doesNotContain("pick-up not possible");
    assertThat(hazards("roomForBeams", "no")).contains("no room for the needles");
    assertThat(hazards("roomForBeams", "yes")).doesNotContain("no room for the needles");
  }

  private static List<String> hazards(String fact, String word) {
    return NeedleSites.size(NeedleSites.with(NeedleSites.column(), fact, word)).cautions().stream()
        .map(one -> one.hazard())
        .toList();
  }

  @Test
  void the_layout_says_where_it_comes_from() {
    SheetInput both = layout(NeedleSites.size(NeedleSites.column()));
    assertThat(both.words()).isEqualTo("pair");
    assertThat(both.origin()).isEqualTo(Origin.DERIVED);
    assertThat(both.source().citation()).contains("both sides");
    for (String access : List.of("insideAccess", "outsideAccess")) {
      SheetInput shut =
          layout(NeedleSites.size(NeedleSites.with(NeedleSites.column(), access, "none")));
      assertThat(shut.words()).isEqualTo("cantilever-pair");
      assertThat(shut.source().citation()).contains("one side cannot be reached");
      SheetInput hand =
          layout(NeedleSites.size(NeedleSites.with(NeedleSites.column(), access, "hand")));
      assertThat(hand.words()).isEqualTo("pair");
    }
    SheetInput set =
        layout(
            NeedleSites.size(
                NeedleSites.with(NeedleSites.column(), "insideAccess", "none"),
                "arrangement=pair"));
    assertThat(set.words()).isEqualTo("pair");
    assertThat(set.origin()).isEqualTo(Origin.SET_BY_USER);
    assertThat(set.source().citation()).contains("the setting arrangement");
    assertThat(layout(NeedleSites.size(NeedleSites.wall())).words()).isEqualTo("row");
  }

  private static SheetInput layout(Sheet sheet) {
    return sheet.input("layout").orElseThrow();
  }

  @Test
  void without_a_load_pattern_the_sheet_asks_for_it_and_holds_no_number() {
    NeedleMethod method = new NeedleMethod();
    Sheet sheet =
        method.size(
            FactView.of(FactDictionary.standard(), Map.of()),
            GroundProfile.NONE,
            method.settings().parse(List.of()).settings());
    assertThat(sheet.missing()).extracting(one -> one.name()).containsExactly("loadPattern");
    assertThat(sheet.steps()).isEmpty();
  }

  @Test
  void what_is_known_stands_on_a_sheet_that_still_asks() {
    Sheet sheet = NeedleSites.size(NeedleSites.with(NeedleSites.column(), "columnLoad", ""));
    assertThat(sheet.missing()).extracting(one -> one.name()).containsExactly("columnLoad");
    assertThat(sheet.input("seat-span").orElseThrow().amount().orElseThrow().si())
        .isCloseTo(14 * 0.3048, within(1e-9));
    assertThat(sheet.steps()).isEmpty();
    Sheet whole = NeedleSites.size(NeedleSites.column());
    assertThat(whole.input("jack-margin").orElseThrow().amount().orElseThrow().si()).isEqualTo(1.5);
  }

  @Test
  @DisplayName(
      "own hand calculation: at 92 kN/m HEB180 leaves 0.673 of the wall, 342 kPa of 690: passes; holes of 0.68 m at 0.6 m meet")
  void wall_between_the_holes() {
    Sheet sheet = NeedleSites.size(NeedleSites.wall(), "table=eu-heb");
    assertThat(check(sheet, "wall-between-holes").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "wall-between-holes").demand().si())
        .isCloseTo(92 / 0.4 / (1 - 0.28 / (6.0 / 7)), withPercentage(0.01));
    assertThat(check(sheet, "wall-between-holes").note().template()).contains("every second hole");
    Sheet heavy =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "lineLoad", "150 kN/m"), "table=eu-heb");
    assertThat(step(heavy, "wall-left-stress")).isGreaterThan(690);
    assertThat(check(heavy, "wall-between-holes").verdict()).isEqualTo(Verdict.REFER);
    Sheet met =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "lineLoad", "150 kN/m"),
            "table=eu-heb",
            "hole-clearance=0.5 m");
    assertThat(step(met, "wall-left")).isZero();
    assertThat(met.step("wall-left-stress")).isEmpty();
    assertThat(check(met, "wall-between-holes").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(met, "wall-between-holes").note().template()).contains("holes meet");
  }

  @Test
  @DisplayName("own hand calculation: 1.8 m at the closest 0.6 m is three needles, not four")
  void needles_of_a_short_wall() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "lineLoad", "300 kN/m", "wallLength", "1.8 m"),
            "table=eu-heb");
    assertThat(step(sheet, "widest-spacing")).isCloseTo(0.6, within(1e-9));
    assertThat(quantity(sheet, "needles")).isEqualTo(3);
    assertThat(step(sheet, "needle-spacing")).isCloseTo(0.6, within(1e-9));
  }

  @Test
  @DisplayName("own hand calculation: a shaft of 0.6 m has room for three rows of keys at 0.2 m")
  void rows_of_keys() {
    Map<String, String> facts =
        NeedleSites.with(
            NeedleSites.column(),
            "structureMaterial",
            "reinforced-concrete",
            "columnLoad",
            "800 kN",
            "clearShaft",
            "0.6 m");
    Sheet sheet = NeedleSites.size(facts, "key-pitch=0.2 m");
    assertThat(check(sheet, "pick-up-bearing").note().in(UnitSystem.SI))
        .contains("Rows of keys: 3", "as the clear shaft has room for");
    Sheet open = NeedleSites.size(NeedleSites.with(facts, "clearShaft", ""));
    assertThat(check(open, "pick-up-bearing").note().template()).contains("nobody stated");
  }

  @Test
  @DisplayName(
      "own hand calculation: without preload all of deflection and settlement; 500 times what is left is the distance")
  void movement_in_words() {
    Sheet sheet = NeedleSites.size(NeedleSites.column());
    StepProof.redo(sheet);
    double all = step(sheet, "needle-deflection") + step(sheet, "seat-settlement");
    Phrase note = sheet.step("residual-movement").orElseThrow().note();
    assertThat(note.amounts().get("all").si()).isCloseTo(all, within(1e-12));
    assertThat(note.amounts().get("far").si()).isCloseTo(500 * all * 0.15 / 1.15, within(1e-9));
    Sheet crib = NeedleSites.size(NeedleSites.column(), "seat=crib", "arrangement=cantilever");
    double lever = 2.5 / 1.5;
    double cribs =
        step(crib, "needle-deflection") + lever * (step(crib, "seat-settlement") + 0.002);
    Phrase timber = crib.step("residual-movement").orElseThrow().note();
    assertThat(timber.amounts().get("all").si()).isCloseTo(cribs, within(1e-12));
    assertThat(timber.amounts().get("far").si())
        .isCloseTo(500 * step(crib, "residual-movement"), within(1e-9));
    assertThat(check(sheet, "differential-movement").note().template())
        .doesNotContain("piles under the seats");
    assertThat(
            check(NeedleSites.size(NeedleSites.column(), "seat=pile"), "differential-movement")
                .note()
                .template())
        .contains("piles under the seats");
  }
}
