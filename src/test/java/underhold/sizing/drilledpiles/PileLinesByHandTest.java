package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.BOX;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.WALL;
import static underhold.sizing.drilledpiles.Piles.over;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Lines of the sheet of drilled piles that must not be lost, and what their numbers mean. */
class PileLinesByHandTest {
  private static final String OUTSIDE_BOX =
      with(
          with(
              BOX,
              "\"insideAccess\": \"small-rig\"",
              "\"insideAccess\": \"hand\", \"drillingFromAbove\": \"no\", \"rigBothSides\": \"yes\""),
          "\"outsideAccess\": \"none\"",
          "\"outsideAccess\": \"large-rig\", \"outsideHeadroom\": \"12 m\"");

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static String note(Sheet sheet, String id) {
    return check(sheet, id).note().in(UnitSystem.SI);
  }

  private static Step line(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id));
  }

  private static Formula.Symbol symbol(Sheet sheet, String id, String sign) {
    return line(sheet, id).formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " has no " + sign));
  }

  private static BillItem item(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name));
  }

  private static double time(Sheet sheet, String name) {
    return sheet.time().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name))
        .amount()
        .si();
  }

  private static SheetInput input(Sheet sheet, String name) {
    return sheet.input(name).orElseThrow(() -> new AssertionError("no input " + name));
  }

  @Test
  void inputs_settings_and_cautions_are_shown() {
    assertThat(new DrilledPiles().id()).isEqualTo("drilled-piles");
    assertThat(new DrilledPiles().settings()).isSameAs(DrilledPiles.TABLE);
    Sheet sheet = size(COLUMN, "rigs=2");
    assertThat(input(sheet, "column-load").amount().orElseThrow().si()).isEqualTo(1200);
    assertThat(input(sheet, "rigs").amount().orElseThrow().si()).isEqualTo(2);
    assertThat(input(sheet, "rigs").origin()).isEqualTo(Origin.SET_BY_USER);
    assertThat(sheet.cautions()).isNotEmpty();
    Sheet asks = size(with(COLUMN, "\"columnLoad\": \"1200 kN\", ", ""));
    assertThat(asks.complete()).isFalse();
    assertThat(input(asks, "founding-depth").amount().orElseThrow().si()).isEqualTo(1.5);
  }

  @Test
  void where_the_rig_stands_is_said() {
    assertThat(note(size(COLUMN), "rig-access")).isEqualTo("Drilled from inside with a small rig.");
    assertThat(note(size(WALL), "rig-access"))
        .isEqualTo("Drilled from inside and outside with a small rig.");
    assertThat(note(size(OUTSIDE_BOX), "rig-access"))
        .isEqualTo("Drilled from outside, on both sides with a large rig.");
    // 8 m is just enough for a large rig
    assertThat(
            note(
                size(
                    with(
                        OUTSIDE_BOX,
                        "\"outsideHeadroom\": \"12 m\"",
                        "\"outsideHeadroom\": \"8 m\"")),
                "rig-access"))
        .contains("large rig");
    assertThat(
            note(
                size(
                    with(
                        OUTSIDE_BOX,
                        "\"outsideHeadroom\": \"12 m\"",
                        "\"outsideHeadroom\": \"7.9 m\"")),
                "rig-access"))
        .contains("small rig");
  }

  @Test
  void access_that_is_stated_fails_where_it_bars_the_rig() {
    // stated: hand tools only, inside and outside
    String none = with(COLUMN, "\"insideAccess\": \"small-rig\"", "\"insideAccess\": \"hand\"");
    assertThat(check(size(none), "rig-access").verdict()).isEqualTo(Verdict.FAILS);
    // a wall needs a rig on both sides: one of them barred by what is stated
    String wall = with(WALL, "\"insideAccess\": \"small-rig\"", "\"insideAccess\": \"hand\"");
    assertThat(check(size(wall), "rig-access").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(size(wall), "rig-access").demand().si()).isEqualTo(2);
    assertThat(check(size(wall), "rig-access").capacity().si()).isEqualTo(1);
    // nobody has told what stands inside
    String untold = with(WALL, "\"insideAccess\": \"small-rig\", ", "");
    assertThat(check(size(untold), "rig-access").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName("own hand calculation: 16 piles of 16.012 h by two rigs: 128.1 h, 17 shifts of 8 h")
  void rigs_share_the_hours() {
    Sheet two = size(COLUMN, "rigs=2");
    assertThat(time(two, "one pile")).isCloseTo(16.012, within(1e-6));
    assertThat(time(two, "all piles, drilling hours")).isCloseTo(8 * 16.012, within(1e-6));
    assertThat(time(two, "all piles, shifts")).isEqualTo(17);
    Site site = Piles.site(COLUMN);
    assertThat(
            DrilledPiles.primary(
                    Piles.view(site, site.zones().get(0)),
                    site.ground(),
                    DrilledPiles.TABLE.defaults().with(WorkNumbers.RIGS, 2))
                .orElseThrow()
                .drillingHours())
        .isCloseTo(8 * 16.012, within(1e-3));
  }

  @Test
  @DisplayName(
      "own hand calculation: a ledge of 0.4 m of rock at 1 m/h, soil at 2 m/h, 7.024 m of casing in two pieces, 4 h beside: hours and spoil of the whole hole")
  void a_ledge_of_rock_takes_its_time() {
    String ledge =
        with(
            WALL,
            "\"120 kPa\" } ] }",
            "\"120 kPa\" }, { \"top\": \"8 m\", \"soil\": \"rock\", \"unconfinedStrength\": \"10 MPa\", \"rqd\": \"60 %\" }, { \"top\": \"8.4 m\", \"soil\": \"stiff-clay\", \"undrainedStrength\": \"120 kPa\" } ] }");
    Sheet sheet = size(ledge, "needle-spacing=2 m", "rock-rate=0.5 m");
    double toe = step(sheet, "embedment") + 5.5;
    // headroom inside 3.5 m less 1.37 m: pieces of 2.13 m, four of them, three joints
    assertThat(time(sheet, "one pile"))
        .isCloseTo(4 + (toe - 0.4) / 2 + 0.4 / 0.5 + 3 * 0.5, within(1e-6));
    double hole = Math.PI * 0.244475 * 0.244475 / 4;
    assertThat(item(sheet, "spoil to cart").amount().si())
        .isCloseTo(14 * toe * hole * 1.3, withPercentage(0.01));
  }

  @Test
  void bill_says_what_is_counted_and_from_where() {
    assertThat(item(size(COLUMN), "piles").note().in(UnitSystem.SI)).isEqualTo("all columns");
    String one = with(COLUMN, "\"columnCount\": \"2\"", "\"columnCount\": \"1\"");
    assertThat(item(size(one), "piles").note().in(UnitSystem.SI)).isEmpty();
    assertThat(item(size(COLUMN), "drilling in soil").note().in(UnitSystem.SI))
        .isEqualTo("from the cap level");
    assertThat(item(size(WALL), "drilling in soil").note().in(UnitSystem.SI))
        .isEqualTo("from ground level");
  }

  @Test
  @DisplayName(
      "ANSI/AISC 360 Table B4.1a: D/t of 244.475 less twice the rust over 13.843 less the rust against 0.11 E/Fy")
  void wall_of_the_casing() {
    Sheet sheet = size(COLUMN, "rust=1.6 mm");
    Check wall = check(sheet, "casing-wall");
    assertThat(wall.demand().si())
        .isCloseTo((244.475 - 3.2) / (13.843 - 1.6), withPercentage(0.01));
    double yield = symbol(sheet, "bared-stage-1", "Fy").amount().si();
    double modulus = symbol(sheet, "bared-stage-1", "E").amount().si();
    assertThat(wall.capacity().si()).isCloseTo(0.11 * modulus / yield, withPercentage(0.01));
  }

  @Test
  void the_bared_casing_says_how_it_is_held() {
    Sheet free = size(COLUMN);
    assertThat(note(free, "pile-bared")).contains("taken as free to sway").startsWith("Stage ");
    assertThat(line(free, "bared-stage-1").title()).contains("no bracing set");
    assertThat(line(free, "bared-stage-2").title()).contains("one level of bracing set");
    assertThat(symbol(free, "bared-stage-1", "g").meaning())
        .isEqualTo("factor of safety of compression");
    assertThat(symbol(free, "fixity", "d").meaning()).isEqualTo("the rule for stiff ground");
    assertThat(note(size(COLUMN, "head-held=yes"), "pile-bared"))
        .contains("held sideways: prove it");
    assertThat(symbol(size(COLUMN, "steel-design=lrfd"), "bared-stage-1", "g").meaning())
        .isEqualTo("factor on all loads");
    Sheet kept = size(COLUMN, "bared=no");
    assertThat(note(kept, "pile-bared")).isEqualTo("The piles are set not to be bared.");
    assertThat(kept.step("bared-none")).isPresent();
    assertThat(free.step("bared-none")).isEmpty();
    assertThat(symbol(free, "strength-uncased", "A").meaning()).isEqualTo("hole in soil");
    assertThat(line(size(COLUMN, "brace-levels=2", "first-brace=1 m"), "bared-stage-3").title())
        .contains("2 levels of bracing set");
  }

  @Test
  @DisplayName(
      "own hand calculation: braces 1 m and 1 + (4.3 - 1) / 2 m below the cap; each stage digs 0.5 m below the next")
  void levels_of_bracing() {
    Sheet sheet = size(COLUMN, "brace-levels=2", "first-brace=1 m");
    StepProof.redo(sheet);
    double height = 5.5 - capLevel(sheet);
    assertThat(line(sheet, "bared-stage-1").note().amounts().get("dug").si())
        .isCloseTo(1.5, within(1e-9));
    assertThat(line(sheet, "bared-stage-2").note().amounts().get("dug").si())
        .isCloseTo(1 + (height - 1) / 2 + 0.5, within(1e-9));
    assertThat(line(sheet, "bared-stage-3").note().amounts().get("dug").si())
        .isCloseTo(height, within(1e-9));
  }

  /** Casing counted from the cap to 1.524 m below the dug level. */
  private static double capLevel(Sheet sheet) {
    return 5.5 + 1.524 - item(sheet, "casing, length").amount().si() / piles(sheet);
  }

  private static double piles(Sheet sheet) {
    return item(sheet, "piles").amount().si();
  }

  @Test
  @DisplayName(
      "own hand calculation: box of 12 x 8 m no wider apart than 3 m: four columns 3 m apart, three rows 2.667 m apart, each 60 x 3 x 2.667 x 1.1 x 1.1 kN")
  void grid_under_a_box() {
    Sheet sheet = size(BOX, "grid-spacing=3 m", "piles=6", "boring-depth=60 m");
    assertThat(piles(sheet)).isEqualTo(12);
    assertThat(symbol(sheet, "pile-load", "sx").amount().si()).isCloseTo(3, within(1e-9));
    assertThat(symbol(sheet, "pile-load", "sy").amount().si()).isCloseTo(8 / 3.0, within(1e-9));
    assertThat(step(sheet, "pile-load")).isCloseTo(60 * 3 * 8 / 3.0 * 1.21, withPercentage(0.001));
    // twenty: sqrt(20 x 12 / 8) = 5.5, six along, 20 / 6 in four rows
    Sheet more = size(BOX, "piles=20", "boring-depth=60 m");
    assertThat(symbol(more, "pile-load", "sx").amount().si()).isCloseTo(2, within(1e-9));
    assertThat(symbol(more, "pile-load", "sy").amount().si()).isCloseTo(2, within(1e-9));
    assertThat(piles(more)).isEqualTo(24);
  }

  @Test
  @DisplayName(
      "own hand calculation: needles no wider apart than 2.5 m along 12 m: five bays of 2.4 m, twelve piles")
  void needles_along_a_wall() {
    Sheet sheet = size(WALL, "needle-spacing=2.5 m", "piles=4", "boring-depth=60 m");
    assertThat(symbol(sheet, "pile-load", "s").amount().si()).isCloseTo(2.4, within(1e-9));
    assertThat(piles(sheet)).isEqualTo(12);
    // twenty piles set: ten needles, nine bays
    Sheet set = size(WALL, "needle-spacing=2.5 m", "piles=20", "boring-depth=60 m");
    assertThat(symbol(set, "pile-load", "s").amount().si()).isCloseTo(12 / 9.0, within(1e-9));
    assertThat(piles(set)).isEqualTo(20);
  }

  @Test
  void the_loss_of_a_pile_is_shown_for_every_pattern() {
    Sheet column = size(COLUMN);
    assertThat(line(column, "loss").note().in(UnitSystem.SI)).contains("of 8 is the worst to lose");
    int worst = (int) Math.round(line(column, "loss").note().amounts().get("k").si());
    assertThat(worst).isIn(1, 4, 5, 8); // a corner of four by two
    Sheet wall = size(WALL);
    assertThat(line(wall, "loss").note().in(UnitSystem.SI)).startsWith("At an end");
    assertThat(symbol(wall, "loss", "k").amount().si()).isEqualTo(1);
    Sheet box = size(BOX);
    assertThat(line(box, "loss").note().in(UnitSystem.SI)).startsWith("The slab must carry");
    assertThat(symbol(box, "loss", "k").amount().si()).isEqualTo(0.5);
  }

  @Test
  void the_group_says_by_which_ground_it_is_cut() {
    assertThat(line(size(COLUMN), "group-factor").note().in(UnitSystem.SI))
        .isEqualTo("Clay, cap clear of the ground.");
    assertThat(note(size(COLUMN), "group-capacity")).startsWith("The less of the sum");
    assertThat(note(size(WALL), "group-capacity")).isEmpty();
    assertThat(line(size(COLUMN, "group-factor=none"), "group-factor").note().in(UnitSystem.SI))
        .isEqualTo("None, as set.");
    assertThat(note(size(COLUMN), "pile-bond")).isEqualTo("Side alone; no base is counted.");
    assertThat(note(size(COLUMN, "base=counted"), "pile-bond")).startsWith("Side and base");
  }

  @Test
  void the_method_of_side_resistance_names_its_source() {
    assertThat(line(size(COLUMN), "unit-1").source().words()).contains("1999");
    assertThat(line(size(COLUMN, "alpha-method=2018"), "unit-1").source().words()).contains("2018");
    assertThat(line(size(COLUMN, "alpha-method=fixed"), "unit-1").source())
        .isEqualTo(Sources.ALPHA_FIXED);
  }

  @Test
  @DisplayName(
      "O'Neill and Reese 1999, base in clay: 9 su of 120 kPa where the toe is more than 2.5 diameters deep")
  void depth_of_the_base_counts() {
    Sheet sheet = size(COLUMN, "base=counted");
    assertThat(step(sheet, "embedment") / 0.244475).isGreaterThan(2.5);
    assertThat(symbol(sheet, "block", "g").amount().si()).isCloseTo(9 * 120, within(1e-6));
  }

  @Test
  void sand_below_clay_is_cut_in_short_pieces_and_held_apart() {
    Sheet sheet =
        size(
            over(
                "{ \"top\": \"9 m\", \"soil\": \"dense-sand\", \"unitWeight\": \"20 kN/m3\", \"n60\": \"40\" }"),
            "boring-depth=60 m");
    StepProof.redo(sheet);
    assertThat(line(sheet, "side-1").title()).contains("stiff-clay");
    assertThat(line(sheet, "side-2").title()).contains("dense-sand");
  }
}
