package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.over;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Each choice of method, own cases by hand on the same column. */
class PileChoicesTest {
  private static final double PA = 101.325;
  private static final double DIAMETER = 0.244475;
  private static final String SAND =
      "{ \"top\": \"6 m\", \"soil\": \"dense-sand\", \"unitWeight\": \"20 kN/m3\", \"n60\": 30 }";
  private static final String GRAVEL = SAND.replace("dense-sand", "dense-gravel");
  private static final String ROCK =
      "{ \"top\": \"9 m\", \"soil\": \"rock\", \"unitWeight\": \"24 kN/m3\", \"unconfinedStrength\": \"20 MPa\", \"rqd\": \"50 %\" }";

  private static final String DUG_LEVEL = "water-after-digging=dug-level";

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  @Test
  void alpha_by_the_method_set() {
    assertThat(step(size(COLUMN), "unit-1")).isCloseTo(66, within(1e-9));
    Sheet newer = size(COLUMN, "alpha-method=2018");
    assertThat(step(newer, "coefficient-1")).isCloseTo(0.3 + 0.17 * PA / 120, within(1e-9));
    Sheet fixed = size(COLUMN, "alpha-method=fixed", "fixed-alpha=0.4");
    assertThat(step(fixed, "unit-1")).isCloseTo(48, within(1e-9));
    String strong = with(COLUMN, "120 kPa", "400 kPa");
    // counted to 2.5 atmospheres: 0.45 x 253.3 kPa
    assertThat(step(size(strong), "unit-1")).isCloseTo(0.45 * 2.5 * PA, within(1e-9));
    for (Sheet sheet : new Sheet[] {newer, fixed, size(strong)}) {
      StepProof.redo(sheet);
    }
  }

  @Test
  @DisplayName(
      "Own case by hand: dense sand from 6 m, dug to 5.5 m, water at the dug level: sv' of the first piece, beta by depth below ground")
  void beta_by_depth() {
    Sheet sheet = size(over(SAND), DUG_LEVEL);
    StepProof.redo(sheet);
    double length = step(sheet, "embedment") - 1.524;
    double middle = 7.024 + length / Math.ceil(length / 3) / 2;
    double stress = 20 * (middle - 5.5) - 9.81 * (middle - 5.5);
    assertThat(step(sheet, "stress-1")).isCloseTo(stress, within(1e-9));
    double beta = 1.5 - 0.245 * Math.sqrt(middle);
    assertThat(step(sheet, "coefficient-1")).isCloseTo(beta, within(1e-9));
    assertThat(step(sheet, "unit-1")).isCloseTo(beta * stress, within(1e-9));
    // sand: 0.65 at 2.5 D, 1.0 at 4 D
    assertThat(step(sheet, "group-factor"))
        .isCloseTo(0.65 + 0.35 * (0.75 / DIAMETER - 2.5) / 1.5, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case by hand: sand below clay keeps a head of 3 m below ground though 5.5 m are dug, unless lowering is stated to work")
  void water_by_the_site() {
    String refused = with(over(SAND), "\"3 m\",", "\"3 m\", \"drawdownAllowed\": \"no\",");
    for (Sheet keeps :
        new Sheet[] {size(over(SAND)), size(refused), workable("limited"), workable("no")}) {
      StepProof.redo(keeps);
      double length = step(keeps, "embedment") - 1.524;
      double middle = 7.024 + length / Math.ceil(length / 3) / 2;
      assertThat(step(keeps, "water-after-digging")).isCloseTo(3, within(1e-9));
      assertThat(step(keeps, "stress-1"))
          .isCloseTo(20 * (middle - 5.5) - 9.81 * (middle - 3), within(1e-9));
    }
    for (Sheet lowered : new Sheet[] {workable("yes"), size(refused, DUG_LEVEL)}) {
      StepProof.redo(lowered);
      assertThat(step(lowered, "water-after-digging")).isCloseTo(5.5, within(1e-9));
    }
    // never below nothing: water at the surface outweighs the sand just below the dig
    Sheet high = size(with(over(SAND), "\"3 m\",", "\"0 m\","));
    StepProof.redo(high);
    assertThat(step(high, "stress-1")).isZero();
    assertThat(size(over(ROCK)).step("water-after-digging")).isEmpty();
  }

  /** The sheet where the rules found whether lowering is allowed, works and harms nothing. */
  private static Sheet workable(String word) {
    Site site = Piles.site(over(SAND));
    Fact found =
        new Fact(
            FactDictionary.standard().require("drawdownWorkable"),
            Origin.DERIVED,
            new FactValue.Choice(word),
            "by a rule");
    return new DrilledPiles()
        .size(
            Piles.view(site, site.zones().get(0)).with(found),
            site.ground(),
            DrilledPiles.TABLE.defaults());
  }

  @Test
  void beta_by_stress_history_and_of_gravel() {
    Sheet history = size(over(SAND), "beta-method=2010", DUG_LEVEL);
    StepProof.redo(history);
    double stress = step(history, "stress-1");
    double corrected = 30 * Math.min(Math.sqrt(PA / stress), 2);
    double phi = Math.toRadians(Math.min(27.5 + 9.2 * Math.log10(corrected), 45));
    double past = 0.47 * Math.pow(30, 0.6) * PA;
    double beta = (1 - Math.sin(phi)) * Math.pow(past / stress, Math.sin(phi)) * Math.tan(phi);
    assertThat(step(history, "coefficient-1")).isCloseTo(beta, within(1e-9));
    Sheet gravelly = size(over(GRAVEL), "gravel-beta=gravelly", DUG_LEVEL);
    StepProof.redo(gravelly);
    double middle = 5.5 + (step(gravelly, "stress-1")) / (20 - 9.81);
    assertThat(step(gravelly, "coefficient-1"))
        .isCloseTo(Math.min(2 - 0.15 * Math.pow(middle, 0.75), 1.8), within(1e-9));
    Sheet asSand = size(over(GRAVEL), DUG_LEVEL);
    assertThat(step(asSand, "coefficient-1")).isLessThan(step(gravelly, "coefficient-1"));
  }

  @Test
  @DisplayName(
      "Own case by hand: rock of 20 MPa, RQD 50 %, from 9 m: socket below half a metre of weathered rock, three methods")
  void rock_by_the_method_set() {
    double root = PA * Math.sqrt(20_000 / PA);
    Sheet jointed = size(over(ROCK), "boring-depth=60 m");
    StepProof.redo(jointed);
    assertThat(step(jointed, "unit-2")).isCloseTo(0.65 * 0.55 * root, within(1e-6));
    Sheet closed = size(over(ROCK), "rock-joints=closed");
    assertThat(step(closed, "unit-2")).isCloseTo(0.65 * 0.60 * root, within(1e-6));
    Sheet normal = size(over(ROCK), "rock-method=normal", "socket-coefficient=0.63");
    assertThat(step(normal, "unit-2")).isCloseTo(0.63 * root, within(1e-6));
    Sheet textbook = size(over(ROCK), "rock-method=textbook");
    double psi = 20_000 / 6.894757293;
    assertThat(step(textbook, "unit-2"))
        .isCloseTo(2.5 * Math.sqrt(psi) * 6.894757293, withPercentage(0.01));
    for (Sheet sheet : new Sheet[] {closed, normal, textbook}) {
      StepProof.redo(sheet);
    }
    double socket = DIAMETER - 2 * 0.013843 - 0.02;
    double length = step(jointed, "embedment") + 5.5 - 9.5;
    assertThat(step(jointed, "side-2"))
        .isCloseTo(Math.PI * socket * length * 0.65 * 0.55 * root, withPercentage(0.001));
    assertThat(jointed.step("block")).isEmpty();
  }

  @Test
  void rock_is_not_counted_below_a_fifth_of_sound_core() {
    Sheet sheet = size(over(ROCK.replace("50 %", "10 %")), "disturbed-zone=4 m");
    assertThat(step(sheet, "unit-1")).isZero();
    assertThat(check(sheet, "pile-bond").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(sheet, "head-settlement").verdict()).isEqualTo(Verdict.FAILS);
    StepProof.redo(sheet);
  }

  @Test
  void the_weaker_of_rock_and_concrete_governs_the_socket() {
    Sheet sheet =
        size(over(ROCK.replace("20 MPa", "90 MPa")), "rock-method=normal", "concrete=30 MPa");
    assertThat(step(sheet, "unit-2")).isCloseTo(PA * Math.sqrt(30_000 / PA), within(1e-6));
  }

  @Test
  @DisplayName(
      "Own case by hand: base counted in clay 9 x 120, in sand 57.5 x 30, in rock 2.5 x 20 MPa")
  void base_where_it_is_counted() {
    Sheet clay = size(COLUMN, "base=counted");
    assertThat(step(clay, "unit-base")).isCloseTo(1080, within(1e-9));
    assertThat(step(clay, "base"))
        .isCloseTo(1080 * Math.PI * DIAMETER * DIAMETER / 4, within(1e-6));
    Sheet sand = size(over(SAND), "base=counted");
    assertThat(step(sand, "unit-base")).isCloseTo(1725, within(1e-9));
    Sheet rock = size(over(ROCK), "base=counted");
    assertThat(step(rock, "unit-base")).isCloseTo(50_000, within(1e-6));
    for (Sheet sheet : new Sheet[] {clay, sand, rock}) {
      StepProof.redo(sheet);
    }
    assertThat(size(COLUMN).step("base")).isEmpty();
    assertThat(step(clay, "pile-lrfd"))
        .isCloseTo(0.45 * step(clay, "side-total") + 0.40 * step(clay, "base"), within(1e-6));
    assertThat(step(rock, "pile-eurocode"))
        .isCloseTo((step(rock, "side-total") / 1.6 + step(rock, "base") / 2) / 1.2, within(1e-6));
  }

  @Test
  void factor_of_safety_by_what_is_tested() {
    String[] fixed = {
      "piles=8", "longest-embedment=18 m", "least-embedment=15 m", "disturbed-zone=3 m"
    };
    for (String[] pair : new String[][] {{"none", "3"}, {"dynamic", "2.5"}, {"static", "2"}}) {
      Sheet sheet = size(COLUMN, fixed[0], fixed[1], fixed[2], fixed[3], "test-regime=" + pair[0]);
      assertThat(step(sheet, "pile-allowable"))
          .isCloseTo(step(sheet, "side-total") / Double.parseDouble(pair[1]), within(1e-9));
    }
  }

  @Test
  @DisplayName(
      "Own case by hand: a head that is held, no bracing, fixity by T and by R, piles not bared")
  void bared_column_by_the_choices_set() {
    String open = with(COLUMN, "\"bracingRoom\": \"yes\"", "\"bracingRoom\": \"no\"");
    Sheet sway = size(open);
    assertThat(sway.step("bared-stage-2")).isEmpty();
    // r 81.095 mm: 2.1 x 5.524 m
    assertThat(check(sway, "pile-slenderness").demand().si())
        .isCloseTo(2.1 * 5.524 / 0.0810953, withPercentage(0.01));
    Sheet held = size(open, "head-held=yes");
    assertThat(check(held, "pile-slenderness").demand().si())
        .isCloseTo(5.524 / 0.0810953, withPercentage(0.01));
    assertThat(check(held, "pile-bared").capacity().si())
        .isGreaterThan(check(sway, "pile-bared").capacity().si());
    double bending = 29_000 * 6894.757293 * 0.008818623 * 0.0810953 * 0.0810953;
    Sheet sand = size(open, "fixity=sand");
    assertThat(step(sand, "fixity"))
        .isCloseTo(1.8 * Math.pow(bending / 5429, 0.2), withPercentage(0.01));
    Sheet clay = size(open, "fixity=clay");
    assertThat(step(clay, "fixity"))
        .isCloseTo(1.4 * Math.pow(bending / 3447, 0.25), withPercentage(0.01));
    Sheet kept = size(open, "bared=no");
    assertThat(check(kept, "pile-bared").capacity().si())
        .isCloseTo(50 * 6894.757293 * 0.008818623 / 1.67, withPercentage(0.01));
    for (Sheet sheet : new Sheet[] {sway, held, sand, clay, kept}) {
      StepProof.redo(sheet);
    }
  }

  @Test
  void soft_ground_below_the_dug_level_holds_a_pile_deeper_down() {
    assertThat(step(size(COLUMN), "fixity")).isEqualTo(1.524);
    String soft = with(COLUMN, "stiff-clay", "soft-clay");
    assertThat(step(size(soft), "fixity")).isEqualTo(3.048);
    assertThat(step(size(over("{ \"top\": \"6.5 m\", \"soil\": \"peat\" }")), "fixity"))
        .isEqualTo(3.048);
    assertThat(step(size(over("{ \"top\": \"7.1 m\", \"soil\": \"peat\" }")), "fixity"))
        .isEqualTo(1.524);
  }

  @Test
  void more_levels_of_bracing_make_more_stages() {
    Sheet sheet = size(COLUMN, "brace-levels=2", "first-brace=1 m");
    assertThat(sheet.step("bared-stage-3")).isPresent();
    assertThat(sheet.stages()).extracting(stage -> stage.title()).contains("Digging, stage 3 of 3");
    // braces at 1.0 and 2.5 m: stage 2 digs to 3.0 m and spans 3.0 + 1.524 - 1.0
    assertThat(step(sheet, "bared-stage-2")).isGreaterThan(step(sheet, "bared-stage-1"));
    assertThat(size(COLUMN, "brace-levels=0").step("bared-stage-2")).isEmpty();
  }

  @Test
  void casing_of_a_large_rig_has_other_stresses() {
    Sheet large = size(COLUMN, "rig=large");
    StepProof.redo(large);
    // 0.35 Fy = 17.5 ksi is cut to 16 ksi; casing after rust, inside 584.2 mm
    double steel = Math.PI / 4 * (Math.pow(0.6096 - 0.003175, 2) - Math.pow(0.5842, 2));
    double fill = Math.PI / 4 * 0.5842 * 0.5842 - 2.92e-3;
    double hand = 110_316 * steel + 0.33 * 27_579 * fill + 0.4 * 60 * 6894.757293 * 2.92e-3;
    assertThat(step(large, "strength-cased")).isCloseTo(hand, withPercentage(0.01));
    Sheet pipe = size(COLUMN, "steel-rule=pipe");
    assertThat(step(pipe, "strength-cased")).isLessThan(step(size(COLUMN), "strength-cased"));
    assertThat(step(size(COLUMN, "rig=large", "steel-rule=micropile"), "strength-cased"))
        .isGreaterThan(step(large, "strength-cased"));
  }

  @Test
  void a_wider_spacing_frees_the_piles_of_each_other() {
    assertThat(step(size(COLUMN, "spacing=6"), "group-factor")).isCloseTo(1, within(1e-9));
    assertThat(step(size(COLUMN, "group-factor=none"), "group-factor")).isEqualTo(1);
  }

  @Test
  void night_work_counts_by_closures() {
    String night =
        with(
                COLUMN,
                "\"obstructions\": \"none\"",
                "\"obstructions\": \"none\", \"pilesFromTrackOnly\": \"yes\"")
            .replace(
                "\"excavationDepth\": \"5.5 m\"",
                "\"excavationDepth\": \"5.5 m\", \"nightClosure\": \"4 h\"");
    Sheet sheet = size(night);
    // 16 piles x 16.012 h over 2.5 h a night
    assertThat(sheet.time().get(2).name()).contains("night");
    assertThat(sheet.time().get(2).amount().si()).isEqualTo(103);
    assertThat(check(sheet, "night-hours").verdict()).isEqualTo(Verdict.PASSES);
    Sheet none = size(night, "possession-loss=5 h");
    assertThat(none.time()).hasSize(2);
    assertThat(check(none, "night-hours").verdict()).isEqualTo(Verdict.REFER);
    assertThat(size(night, "work-by=day").check("night-hours")).isEmpty();
  }

  @Test
  void little_headroom_leaves_no_piece_of_casing() {
    Sheet sheet = size(with(COLUMN, "3.5 m", "1.2 m"));
    assertThat(check(sheet, "casing-joints").capacity().si()).isZero();
    assertThat(check(sheet, "casing-joints").verdict()).isEqualTo(Verdict.FAILS);
    Sheet unknown = size(with(COLUMN, "\"insideHeadroom\": \"3.5 m\", ", ""));
    // 1.8 m is assumed: 0.43 m would not do, but nobody stated it
    assertThat(check(unknown, "casing-joints").capacity().si()).isCloseTo(0.43, within(1e-9));
    assertThat(check(unknown, "casing-joints").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void a_number_of_piles_that_is_set_is_kept() {
    assertThat(size(COLUMN, "piles=12").quantities().get(0).amount().si()).isEqualTo(24);
    Sheet few = size(COLUMN, "piles=4");
    assertThat(few.quantities().get(0).amount().si()).isEqualTo(8);
    assertThat(check(few, "group-loss").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(few, "pile-bond").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void settlement_felt_and_the_curve_rise_with_load() {
    Sheet sheet = size(COLUMN);
    double before = 0;
    for (int percent : new int[] {25, 50, 75, 100, 150, 200}) {
      double next = step(sheet, "settlement-" + percent);
      assertThat(next).isGreaterThan(before);
      before = next;
    }
    assertThat(check(size(COLUMN, "settlement-felt=0.5"), "head-settlement").demand().si())
        .isCloseTo(step(sheet, "settlement-100") / 2, within(1e-12));
  }

  @Test
  @DisplayName("Own case by hand: the bared casing by LRFD, 0.90 Pn over a load factor of 1.6")
  void bared_column_by_lrfd() {
    Sheet sheet = size(COLUMN, "steel-design=lrfd");
    StepProof.redo(sheet);
    assertThat(step(sheet, "bared-stage-1"))
        .isCloseTo(990.229 * 1.67 * 0.9 / 1.6, withPercentage(0.01));
    Sheet kept = size(COLUMN, "steel-design=lrfd", "bared=no", "steel-load-factor=1.2");
    StepProof.redo(kept);
    assertThat(step(kept, "bared-none"))
        .isCloseTo(50 * 6894.757293 * 0.008818623 * 0.9 / 1.2, withPercentage(0.01));
  }

  @Test
  void access_that_nobody_told_is_referred() {
    Sheet sheet =
        size(
            with(
                with(COLUMN, "\"insideAccess\": \"small-rig\"", "\"insideAccess\": \"hand\""),
                "\"outsideAccess\": \"none\",",
                ""));
    assertThat(check(sheet, "rig-access").verdict()).isEqualTo(Verdict.REFER);
    Sheet told =
        size(with(COLUMN, "\"insideAccess\": \"small-rig\"", "\"insideAccess\": \"hand\""));
    assertThat(check(told, "rig-access").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName("Own case by hand: the spread of methods stands beside the side resistance")
  void other_methods_are_shown() {
    Sheet sheet = size(COLUMN);
    Phrase note = sheet.step("side-total").orElseThrow().note();
    double newer =
        size(
                COLUMN,
                "alpha-method=2018",
                "piles=8",
                "longest-embedment=18.1 m",
                "least-embedment=15 m")
            .step("unit-1")
            .orElseThrow()
            .result()
            .si();
    assertThat(note.amounts().keySet()).containsExactlyInAnyOrder("alpha 2018", "alpha fixed");
    Amount other = note.amounts().get("alpha 2018");
    assertThat(other).isNotNull();
    assertThat(other.si() / step(sheet, "side-total")).isCloseTo(newer / 66, within(1e-9));
    assertThat(size(over(ROCK)).step("side-total").orElseThrow().note().amounts()).hasSize(4);
    assertThat(size(over(SAND)).step("side-total").orElseThrow().note().amounts()).hasSize(1);
  }
}
