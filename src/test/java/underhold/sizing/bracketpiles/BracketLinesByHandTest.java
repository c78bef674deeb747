package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.bracketpiles.PlatformEdge.*;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Lines of the platform edge's sheet that must not be lost, and plates and ground that change. */
class BracketLinesByHandTest {
  /** Yield of plates, 36 ksi, kPa. */
  private static final double YIELD = 36 * 6894.757;

  /** Modulus of steel, 29,000 ksi, kPa. */
  private static final double MODULUS = 29_000 * 6894.757;

  private static String note(Sheet sheet, String id) {
    return check(sheet, id).note().in(UnitSystem.SI);
  }

  private static SheetInput input(Sheet sheet, String name) {
    return sheet.input(name).orElseThrow(() -> new AssertionError("no input " + name));
  }

  @Test
  @DisplayName(
      "AISC Manual part 9, coped edge: 0.3048 x 0.3 / 0.01905^2 = 252 between 64 and 1,530: (1.52 - 0.274 x 252 Fy/E) Fy S; 50 mm plates are plastic: Fy Z / 1.67")
  void plates_between_plastic_and_elastic() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    StepProof.redo(sheet);
    double depth = symbol(sheet, "plate-moment", "d");
    assertThat(depth).isCloseTo(0.3, within(1e-9)); // two welds of it take 108 / 0.6 kN/m
    double slender = 0.3048 * 0.3 / (0.01905 * 0.01905);
    assertThat(step(sheet, "plate-slenderness")).isCloseTo(slender, withPercentage(0.01));
    double section = 2 * 0.01905 * 0.09 / 6;
    double between = (1.52 - 0.274 * slender * YIELD / MODULUS) * YIELD * section;
    double whole = YIELD * section * 1.5;
    assertThat(step(sheet, "plate-moment"))
        .isCloseTo(Math.min(whole, between) / 1.67, withPercentage(0.01));
    assertThat(check(sheet, "bracket-plate").demand().si())
        .isCloseTo(108 * 0.3048, withPercentage(0.01));
    assertThat(check(sheet, "bracket-plate-shear").capacity().si())
        .isCloseTo(0.6 * YIELD * 2 * 0.01905 * 0.3 / 1.5, withPercentage(0.01));
    Sheet thick = BracketSites.size(EDGE, FREE, CASING, "plate-thickness=50 mm");
    StepProof.redo(thick);
    double deep = symbol(thick, "plate-moment", "d");
    assertThat(0.3048 * deep / 0.0025).isLessThan(0.08 * MODULUS / YIELD);
    assertThat(step(thick, "plate-moment"))
        .isCloseTo(YIELD * 2 * 0.05 * deep * deep / 4 / 1.67, withPercentage(0.01));
    assertThat(thick.step("plate-moment").orElseThrow().formula().siText())
        .contains("/ (4 × 1.67)");
  }

  @Test
  @DisplayName(
      "own hand calculation: 216 kN in a hole of 177.8 mm: 10.24 kN in 0.5 m of clay, the rest 205.8 at 37.70 kN/m in 5.5 m of sand")
  void bond_takes_off_what_the_layer_above_carries() {
    Sheet sheet = BracketSites.size(with("60 kN/m", "120 kN/m"), FREE, CASING);
    assertThat(noted(sheet, "pile-bond", "f")).isCloseTo(5.5, within(1e-9));
    assertThat(symbol(sheet, "bond-1", "L")).isCloseTo(0.5, within(1e-9));
    assertThat(symbol(sheet, "bond-2", "L")).isCloseTo(5.5, within(1e-9));
    assertThat(noted(sheet, "pile-bond", "t")).isCloseTo(11.5, within(1e-9));
    assertThat(check(sheet, "pile-bond").capacity().si())
        .isCloseTo(10.24 + 135 * Math.PI * 0.1778 * 5.5 / 2, withPercentage(0.05));
    Sheet wide = BracketSites.size(EDGE, FREE, CASING, "hole-overcut=20 mm");
    assertThat(symbol(wide, "bond-1", "D")).isCloseTo(0.1978, within(1e-9));
  }

  @Test
  @DisplayName(
      "own hand calculation: reaction 67 su of the weakest clay within 3 m below the support: 90 kPa at 0.9 m, 150 kPa at 3.5 m where the cut bares the pile")
  void ground_at_the_support() {
    String two =
        "\"undrainedStrength\": \"90 kPa\" }, { \"top\": \"3 m\", \"soil\": \"stiff-clay\", \"unitWeight\": \"19 kN/m3\", \"undrainedStrength\": \"150 kPa\" }";
    String change = "\"undrainedStrength\": \"90 kPa\" }";
    Sheet stays = BracketSites.size(with(change, two), FREE, CASING);
    assertThat(symbol(stays, "pile-length-scale", "k")).isCloseTo(67 * 90, within(1e-6));
    Sheet cut = BracketSites.size(bared().replace(change, two), FREE, CASING);
    assertThat(symbol(cut, "pile-length-scale", "k")).isCloseTo(67 * 150, within(1e-6));
    // set by the user instead
    Sheet set = BracketSites.size(EDGE, FREE, CASING, "soil-reaction=9 MPa");
    assertThat(symbol(set, "pile-length-scale", "k")).isCloseTo(9000, within(1e-6));
  }

  @Test
  @DisplayName(
      "International Building Code 1810.2.1: fixity 5 ft below in stiff soil, 10 ft in soft: a bared pile in soft clay from 3 m down")
  void soft_ground_at_the_support_of_a_bared_pile() {
    String soft =
        bared()
            .replace(
                "\"undrainedStrength\": \"90 kPa\" }",
                "\"undrainedStrength\": \"90 kPa\" }, { \"top\": \"3 m\", \"soil\": \"soft-clay\", \"unitWeight\": \"17 kN/m3\", \"undrainedStrength\": \"20 kPa\" }");
    assertThat(symbol(BracketSites.size(soft, FREE, CASING), "slenderness", "f"))
        .isCloseTo(3.048, within(1e-9));
    assertThat(symbol(BracketSites.size(bared(), FREE, CASING), "slenderness", "f"))
        .isCloseTo(1.524, within(1e-9));
    assertThat(check(BracketSites.size(soft, FREE, CASING), "head-ground").verdict())
        .isEqualTo(Verdict.REFER);
    assertThat(BracketSites.size(bared(), FREE, CASING).check("head-ground")).isEmpty();
  }

  @Test
  void a_bared_pile_says_what_bares_it() {
    assertThat(input(BracketSites.size(bared(), FREE), "bared").source().words())
        .contains("nearer than 0.6 m");
    Sheet open = BracketSites.size(with("\"flexible\"", "\"none\""), FREE);
    assertThat(input(open, "bared").words()).isEqualTo("yes");
    assertThat(input(open, "bared").source().words()).contains("no wall is known");
    assertThat(input(BracketSites.size(EDGE, FREE), "bared").source().words())
        .contains("away from the edge");
  }

  @Test
  void notes_of_a_bared_pile() {
    Sheet bare = BracketSites.size(bared(), FREE, CASING);
    Sheet stays = BracketSites.size(EDGE, FREE, CASING);
    assertThat(note(bare, "cased-compression")).contains("Cut by the ratio of the free length");
    assertThat(note(stays, "cased-compression")).doesNotContain("Cut by the ratio");
    assertThat(note(bare, "casing-combined")).isEqualTo("The bared length is checked apart.");
    assertThat(note(stays, "casing-combined")).isEmpty();
    assertThat(note(stays, "pile-bared")).startsWith("Not bared");
    assertThat(note(bare, "pile-bared")).startsWith("A pile bared with a moment");
    assertThat(note(stays, "uncased-compression"))
        .isEqualTo("The bar laps into the casing by at least its development length.");
    // one brace: no word of an engineer; a pair has no moment at its head
    assertThat(note(BracketSites.size(bared(), FREE, CASING, "brace-levels=1"), "pile-bared"))
        .startsWith("No bracing counts");
    Sheet pair = BracketSites.size(bared(), "moment-path=paired", CASING);
    assertThat(note(pair, "pile-bared")).startsWith("No bracing counts");
    assertThat(check(pair, "pile-bared").verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "own hand calculation: 5,451 mm2 of casing at 32 ksi, 1,203 kN, and grout, 0.33 fc on 0.018 m2: steel takes far more than the 40 % that the International Building Code wants")
  void steel_takes_its_share() {
    assertThat(note(BracketSites.size(EDGE, FREE, CASING), "cased-compression"))
        .doesNotContain("40 %");
  }

  @Test
  @DisplayName(
      "own hand calculation: 3,600 kN on a bared 7 x 0.408 in: P/A 660 MPa is beyond the buckling stress; without amplifier P/(A Fa) + M/(S 0.55 Fy)")
  void a_bared_pile_beyond_its_buckling_load() {
    Sheet sheet = BracketSites.size(bared().replace("60 kN/m", "2000 kN/m"), FREE, CASING);
    assertThat(sheet.step("bared-combined")).isEmpty();
    assertThat(note(sheet, "pile-bared")).startsWith("The axial stress alone reaches");
    assertThat(check(sheet, "pile-bared").verdict()).isEqualTo(Verdict.FAILS);
    double inside = 6.184 * INCH;
    double area = Math.PI / 4 * (OUTSIDE * OUTSIDE - inside * inside);
    double second = BENDING / 199_947_962;
    double slender = 2.1 * (2.6 + 1.524) / Math.sqrt(second / area);
    double allowable = Math.PI * Math.PI * 199_947_962 / (2.12 * slender * slender);
    double modulus = second / (OUTSIDE / 2);
    double yield = symbol(sheet, "combined", "Fy");
    double ratio = 3600 / (area * allowable) + 3600 * 0.3048 / (modulus * 0.55 * yield);
    assertThat(check(sheet, "pile-bared").demand().si()).isCloseTo(ratio, withPercentage(0.1));
  }

  @Test
  void the_limit_on_the_eccentricity_is_explained_by_path() {
    assertThat(note(BracketSites.size(EDGE, FREE), "bracket-eccentricity"))
        .startsWith("Largest e: the limit of a free bracket");
    assertThat(note(BracketSites.size(EDGE, "moment-path=couple"), "bracket-eccentricity"))
        .startsWith("Largest e: the allowable pull of the anchors");
    assertThat(note(BracketSites.size(EDGE, "moment-path=paired"), "bracket-eccentricity"))
        .startsWith("Largest e: the allowable pull of the far pile's bar");
    assertThat(note(BracketSites.size(EDGE, "moment-path=tied"), "bracket-eccentricity"))
        .startsWith("Largest e: the casing's moment");
  }

  @Test
  @DisplayName(
      "judgement of the method: 0.387 m beyond 0.3048 m refers where the casing is strong, fails where it is not; tied is not limited by it")
  void beyond_judgement_and_beyond_strength() {
    Sheet strong = BracketSites.size(EDGE, FREE, "casing=9.625 x 0.545 in", "pile-gap=120 mm");
    assertThat(check(strong, "bracket-eccentricity").capacity().si())
        .isCloseTo(0.3048, within(1e-9));
    assertThat(check(strong, "bracket-eccentricity").verdict()).isEqualTo(Verdict.REFER);
    Sheet tied =
        BracketSites.size(EDGE, "moment-path=tied", "casing=9.625 x 0.545 in", "pile-gap=120 mm");
    assertThat(check(tied, "bracket-eccentricity").capacity().si()).isGreaterThan(0.3048);
    assertThat(check(tied, "bracket-eccentricity").verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "own hand calculation: casing 7 x 0.408 in beside 108 kN carries 0.9236 x 215.7e-6 m3 x 0.55 x 80 ksi = 60.4 kN m: tied to 0.56 m, free to 0.6 of that")
  void largest_eccentricity_by_strength() {
    Sheet tied = BracketSites.size(EDGE, "moment-path=tied", CASING);
    double axial = step(tied, "combined") - bending(tied);
    double moment = (1 - axial) * 0.55 * symbol(tied, "combined", "Fy") * 215.7e-6;
    assertThat(check(tied, "bracket-eccentricity").capacity().si())
        .isCloseTo(moment / 108, withPercentage(0.1));
    Sheet free = BracketSites.size(EDGE, FREE, CASING, "largest-eccentricity=2 m");
    assertThat(check(free, "bracket-eccentricity").capacity().si())
        .isCloseTo(0.6 * moment / 108, withPercentage(0.1));
  }

  private static double bending(Sheet sheet) {
    return 108 * 0.3048 / (215.7e-6 * 0.55 * symbol(sheet, "combined", "Fy"));
  }

  @Test
  void inputs_and_settings_are_shown() {
    Sheet asks = BracketSites.size(EDGE.replace("\"lineLoad\": \"60 kN/m\",", ""), FREE);
    assertThat(asks.complete()).isFalse();
    assertThat(input(asks, "founding-depth").amount().orElseThrow().si()).isEqualTo(0.9);
    Sheet sheet = BracketSites.size(EDGE, FREE, "hole-overcut=20 mm");
    assertThat(input(sheet, "hole-overcut").amount().orElseThrow().si()).isEqualTo(0.02);
    assertThat(input(sheet, "hole-overcut").origin()).isEqualTo(Origin.SET_BY_USER);
    assertThat(input(sheet, "plate-thickness").amount().orElseThrow().si()).isEqualTo(0.01905);
  }

  @Test
  @DisplayName(
      "own reading of the steps of a proof test: 0.25, 0.5, 0.75, 1, 1.33, 1.67 times the load")
  void steps_of_the_proof_test() {
    Sheet sheet = BracketSites.size(EDGE, FREE);
    assertThat(sheet.stages().stream().flatMap(one -> one.work().stream()))
        .anyMatch(
            one -> one.template().contains("in steps of 0.25, 0.5, 0.75, 1, 1.33, 1.67 times"));
  }
}
