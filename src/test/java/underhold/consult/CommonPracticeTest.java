package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.consult.PracticeSites.BOX;
import static underhold.consult.PracticeSites.COLUMN;
import static underhold.consult.PracticeSites.EDGE;
import static underhold.consult.PracticeSites.WALL;
import static underhold.consult.PracticeSites.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;

/**
 * What practitioners repeat without a source, as scenarios of our own. Only what every one of them
 * would say is asserted here, never a score.
 */
class CommonPracticeTest {
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final SizingDesk DESK = new SizingDesk();
  private static final double FOOT = 0.3048;
  private static final Pattern PIT = Pattern.compile("^Pit (\\d+):.*");

  @Test
  @DisplayName("A continuous competent wall in ground that stands: pits lead (common practice)")
  void pits_suit_a_continuous_wall() {
    assertThat(leader(WALL)).isEqualTo("pits");
  }

  @Test
  @DisplayName("A lone column in the path of the excavation: needles lead (common practice)")
  void needles_suit_a_concentrated_load() {
    assertThat(leader(COLUMN)).isEqualTo("needles");
  }

  @Test
  @DisplayName("Where nothing can carry the column, neither needles nor pits will do (judgement)")
  void a_column_that_cannot_be_carried() {
    Map<String, String> held = with(COLUMN, Map.of("pickUpPossible", "no"));
    assertThat(leader(held)).isNotIn("needles", "pits");
    assertThat(advice(held, SupportOption.NEEDLES).standing()).isEqualTo(Standing.RULED_OUT);
    assertThat(advice(held, SupportOption.PITS).standing()).isEqualTo(Standing.RULED_OUT);
  }

  @Test
  @DisplayName(
      "No recipe: ground, access, structure and load each take the lead from the pits of one and the same job (common practice)")
  void no_recipe() {
    Map<String, String> wet =
        Map.of(
            "worstSoil", "silt",
            "soilAtFooting", "silt",
            "bearingKind", "dense-granular",
            "openLayer", "yes",
            "groundWaterDepth", "1.5 m",
            "drawdownAllowed", "no");
    assertThat(leader(with(WALL, wet))).isNotEqualTo("pits");
    Map<String, String> reached = Map.of("outsideAccess", "large-rig", "wallOnPileLine", "yes");
    assertThat(leader(with(WALL, reached))).isEqualTo("bracket-piles");
    Map<String, String> loose =
        Map.of("footingStrength", "rubble", "clearSpan", "0.3 m", "cappingBeamPossible", "no");
    assertThat(leader(with(WALL, loose))).isNotEqualTo("pits");
    Map<String, String> lone =
        Map.of("loadPattern", "concentrated", "foundationKind", "pad", "pickUpPossible", "no");
    assertThat(leader(with(WALL, lone))).isNotEqualTo("pits");
  }

  @Test
  @DisplayName(
      "An approach pit is 4 ft by 4 to 5 ft in plan, about 6 ft deep, if nobody says otherwise (common practice)")
  void approach_pit() {
    Sheet sheet = sheet(WALL, SupportOption.PITS);
    assertThat(input(sheet, "approach-length")).isCloseTo(4 * FOOT, within(0.05));
    assertThat(input(sheet, "approach-width")).isBetween(4 * FOOT - 0.05, 5 * FOOT + 0.05);
    assertThat(input(sheet, "approach-depth")).isCloseTo(6 * FOOT, within(0.05));
  }

  @Test
  @DisplayName(
      "Sides deeper than about 5 ft are never bare; boards follow the digging, under the footing too (common practice)")
  void support_as_dug() {
    Finding people = finding(WALL, "PIT-28");
    assertThat(people.effect()).isEqualTo(Effect.CAUTION);
    assertThat(people.reason()).contains("Boards follow the digging down").contains("1.52 m");
    Sheet sheet = sheet(WALL, SupportOption.PITS);
    assertThat(sheet.cautions())
        .filteredOn(caution -> caution.hazard().equals("cave-in"))
        .singleElement()
        .satisfies(
            caution -> {
              assertThat(caution.advice().template()).contains("without its boards");
              assertThat(caution.advice().amounts().values())
                  .singleElement()
                  .satisfies(depth -> assertThat(depth.si()).isCloseTo(5 * FOOT, within(0.01)));
            });
    List<String> work = work(stage(sheet, "Each pit"));
    assertThat(work.get(0)).contains("boarded ring by ring");
    assertThat(work.get(1)).startsWith("Go under the footing").contains("as the soil comes out");
  }

  @Test
  @DisplayName(
      "The footing must bridge the pit: one that bridges less than a person needs to dig takes the lead from pits (common practice)")
  void the_footing_bridges_the_pit() {
    Map<String, String> weak = with(WALL, Map.of("clearSpan", "0.4 m"));
    assertThat(advice(weak, SupportOption.PITS).findings(Effect.AGAINST))
        .extracting(finding -> finding.rule().id())
        .contains("CNF-01");
    assertThat(leader(weak)).isNotEqualTo("pits");
    assertThat(advice(WALL, SupportOption.PITS).findings(Effect.AGAINST))
        .extracting(finding -> finding.rule().id())
        .doesNotContain("CNF-01");
  }

  @Test
  @DisplayName("The ground decides on pits as much as the span of the footing (common practice)")
  void the_ground_decides_as_much() {
    Map<String, String> falling = with(WALL, Map.of("standUp", "none"));
    assertThat(advice(falling, SupportOption.PITS).score())
        .isLessThan(advice(WALL, SupportOption.PITS).score());
    assertThat(leader(falling)).isNotEqualTo("pits");
  }

  @Test
  @DisplayName(
      "Concrete stops short of the footing, sets, and the gap is rammed with stiff mortar until it is full, as a hold point (common practice)")
  void concrete_and_dry_pack() {
    Stage each = stage(sheet(WALL, SupportOption.PITS), "Each pit");
    List<String> work = work(each);
    int concrete = indexOf(work, "Place concrete");
    int pack = indexOf(work, "ram the gap full");
    assertThat(work.get(concrete)).contains("75 mm below it");
    assertThat(work.get(pack))
        .startsWith("After 24 h")
        .contains("stiff cement-sand mortar")
        .endsWith("until contact is complete.");
    assertThat(concrete).isLessThan(pack);
    assertThat(each.holdPoints())
        .extracting(HoldPoint::condition)
        .extracting(Phrase::template)
        .anyMatch(text -> text.startsWith("Dry pack fills the gap over the whole footing"));
  }

  @Test
  @DisplayName(
      "Pits alternate: never two neighbours in a round, the skipped ones afterwards, and every pit in the end (common practice)")
  void alternate_pits() {
    Sheet sheet = sheet(WALL, SupportOption.PITS);
    List<Integer> dug = new ArrayList<>();
    for (Stage stage : sheet.stages()) {
      List<Integer> round =
          work(stage).stream()
              .map(PIT::matcher)
              .filter(Matcher::matches)
              .map(match -> Integer.valueOf(match.group(1)))
              .sorted()
              .toList();
      for (int i = 1; i < round.size(); i++) {
        assertThat(round.get(i) - round.get(i - 1)).as(stage.title()).isGreaterThan(1);
      }
      dug.addAll(round);
    }
    int count = (int) Math.round(time(sheet, "pits"));
    assertThat(count).isGreaterThan(4);
    assertThat(dug).hasSize(count).doesNotHaveDuplicates().contains(1, 2, count);
  }

  @Test
  @DisplayName(
      "The pits end as one continuous concrete wall, which carries and retains (common practice)")
  void a_continuous_wall_that_carries_and_retains() {
    Sheet sheet = sheet(WALL, SupportOption.PITS);
    double concrete =
        sheet.quantities().stream()
            .filter(item -> item.name().equals("concrete"))
            .mapToDouble(item -> item.amount().si())
            .findFirst()
            .orElseThrow();
    double height = concrete / (12 * 0.9);
    // The dig goes 2.5 m below the footing, so no gap along 12 m of a wall 0.9 m wide leaves less.
    assertThat(height).isGreaterThan(2.5 - 0.075);
    assertThat(sheet.check("bearing-reckoned")).isPresent();
    assertThat(sheet.check("sliding-without")).isPresent();
    assertThat(sheet.check("overturning-without")).isPresent();
  }

  @Test
  @DisplayName(
      "Boulders and old works speak against hand pits, and their absence does not (common practice)")
  void obstructions_slow_hand_work() {
    Map<String, String> boulders = with(WALL, Map.of("obstructions", "frequent"));
    assertThat(finding(boulders, "PIT-09a").reason()).containsIgnoringCase("slow");
    assertThat(advice(boulders, SupportOption.PITS).score())
        .isLessThan(advice(WALL, SupportOption.PITS).score());
    assertThat(ids(WALL)).doesNotContain("PIT-09a");
  }

  @Test
  @DisplayName(
      "Where the structure stands over the line of the wall no wall can be built: the edge is unretained (common practice)")
  void edge_unretained() {
    assertThat(fact(BOX, "edgeUnretained")).isEqualTo("yes");
    assertThat(fact(with(BOX, Map.of("wallGapLength", "0 m")), "edgeUnretained")).isEqualTo("no");
  }

  @Test
  @DisplayName(
      "Earth at that edge must be held: edge pits lead; rock that stands needs none: drilled piles alone (common practice)")
  void rock_or_earth_at_the_edge() {
    assertThat(leader(BOX)).isEqualTo("edge-pits");
    Map<String, String> rock = with(BOX, Map.of("edgeGround", "rock", "rockJoints", "favourable"));
    assertThat(leader(rock)).isEqualTo("drilled-piles");
    assertThat(ids(BOX)).contains("DRP-20").doesNotContain("HYB-11");
    assertThat(ids(rock)).contains("HYB-11").doesNotContain("DRP-20");
  }

  @Test
  @DisplayName(
      "Edge pits add to the drilled piles, which carry the structure before the edge is dug (common practice)")
  void edge_pits_add_to_the_piles() {
    assertThat(finding(BOX, "HYB-08").effect()).isEqualTo(Effect.REQUIRE);
    assertThat(advice(BOX, SupportOption.EDGE_PITS).conditions())
        .extracting(condition -> condition.rule().id())
        .contains("HYB-07", "HYB-08");
    Sheet sheet = sheet(BOX, SupportOption.EDGE_PITS);
    assertThat(sheet.check("primary-piles")).isPresent();
    List<String> titles = sheet.stages().stream().map(Stage::title).toList();
    int piles = indexOf(titles, "Drilled piles take the load");
    int edge = indexOf(titles, "Each edge pit");
    assertThat(piles).isNotNegative().isLessThan(edge);
  }

  @Test
  @DisplayName(
      "A cantilevered edge: brackets on piles set from outside, without a closure of the line (common practice)")
  void brackets_for_a_cantilevered_edge() {
    assertThat(leader(EDGE)).isEqualTo("bracket-piles");
    assertThat(advice(EDGE, SupportOption.BRACKET_PILES).findings(Effect.FOR))
        .extracting(finding -> finding.rule().cause())
        .contains("reach from outside");
  }

  @Test
  @DisplayName(
      "Bracket piles go in first, then a local pit for each bracket, shims tight, and only then the dig (common practice)")
  void order_of_brackets() {
    List<Stage> stages = sheet(EDGE, SupportOption.BRACKET_PILES).stages();
    List<String> titles = stages.stream().map(Stage::title).toList();
    assertThat(titles).containsSubsequence("Install", "Brackets", "Preload", "Dig");
    assertThat(work(stages.get(titles.indexOf("Brackets"))).get(0))
        .contains("never two next to each other")
        .contains("fit and shim the bracket before the next bay");
  }

  @Test
  @DisplayName("Brackets stand no further apart than the edge can span (common practice)")
  void bracket_spacing() {
    Sheet sheet = sheet(EDGE, SupportOption.BRACKET_PILES);
    assertThat(sheet.check("edge-span")).isPresent();
    Map<String, String> weak = with(EDGE, Map.of("clearSpan", "0.4 m"));
    double wide = sheet.check("edge-span").orElseThrow().capacity().si();
    double narrow =
        sheet(weak, SupportOption.BRACKET_PILES).check("edge-span").orElseThrow().capacity().si();
    assertThat(narrow).isLessThan(wide);
  }

  @Test
  @DisplayName(
      "Brackets at an edge add to a main system under the rest of the structure (common practice)")
  void brackets_supplement_the_main_system() {
    Map<String, String> centre =
        with(BOX, Map.of("excavationPosition", "wholly-under", "wallGapLength", "0 m"));
    assertThat(leader(centre)).isEqualTo("drilled-piles");
    assertThat(leader(EDGE)).isEqualTo("bracket-piles");
  }

  private static String leader(Map<String, String> facts) {
    return answer(facts)
        .ranking()
        .leader()
        .map(advice -> advice.option().id())
        .orElse("no clear choice");
  }

  private static OptionAdvice advice(Map<String, String> facts, SupportOption option) {
    return answer(facts).ranking().of(option);
  }

  private static List<String> ids(Map<String, String> facts) {
    return answer(facts).screening().findings().stream().map(f -> f.rule().id()).toList();
  }

  private static Finding finding(Map<String, String> facts, String id) {
    return answer(facts).screening().findings().stream()
        .filter(finding -> finding.rule().id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " does not speak"));
  }

  private static String fact(Map<String, String> facts, String name) {
    return answer(facts).screening().view().word(name).orElse("unknown");
  }

  private static Weighed answer(Map<String, String> facts) {
    Site site = PracticeSites.site(facts);
    return CONSULTANT.weigh(site, site.zones().get(0));
  }

  private static Sheet sheet(Map<String, String> facts, SupportOption option) {
    Site site = PracticeSites.layered(facts);
    ZoneAdvice advice = SizingSites.advice(site, site.zones().get(0));
    Sized sized = DESK.size(site, advice, option, List.of());
    assertThat(sized).isInstanceOf(Sized.Done.class);
    return ((Sized.Done) sized).sheet();
  }

  private static double input(Sheet sheet, String name) {
    return sheet.input(name).orElseThrow().amount().orElseThrow().si();
  }

  private static double time(Sheet sheet, String name) {
    return sheet.time().stream()
        .filter(item -> item.name().equals(name))
        .mapToDouble(item -> item.amount().si())
        .findFirst()
        .orElseThrow();
  }

  private static Stage stage(Sheet sheet, String title) {
    return sheet.stages().stream()
        .filter(stage -> stage.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> work(Stage stage) {
    return stage.work().stream().map(phrase -> phrase.in(UnitSystem.SI)).toList();
  }

  /** The place of the first text that holds what is wanted; -1 where none does. */
  private static int indexOf(List<String> texts, String wanted) {
    for (int i = 0; i < texts.size(); i++) {
      if (texts.get(i).contains(wanted)) {
        return i;
      }
    }
    return -1;
  }
}
