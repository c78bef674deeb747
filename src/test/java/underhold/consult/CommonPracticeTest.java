package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.site.SiteReader;
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

  /**
   * A sound brick wall on a concrete strip in dry stiff clay, a basement dug next to it by hand.
   */
  private static final Map<String, String> WALL =
      Map.ofEntries(
          Map.entry("structureKind", "building-wall"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("loadPattern", "continuous"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureMaterial", "unreinforced-masonry"),
          Map.entry("structureCondition", "good"),
          Map.entry("stabilitySeen", "yes"),
          Map.entry("foundationKind", "strip"),
          Map.entry("footingStrength", "plain-concrete"),
          Map.entry("footingWidth", "0.9 m"),
          Map.entry("wallThickness", "0.33 m"),
          Map.entry("wallLength", "12 m"),
          Map.entry("lineLoad", "90 kN/m"),
          Map.entry("clearSpan", "1.5 m"),
          Map.entry("foundingDepth", "1 m"),
          Map.entry("excavationBelowFooting", "2.5 m"),
          Map.entry("gapToExcavation", "0 m"),
          Map.entry("excavationWall", "none"),
          Map.entry("bearingDepth", "0 m"),
          Map.entry("bearingKind", "stiff-clay"),
          Map.entry("soilAtFooting", "stiff-clay"),
          Map.entry("worstSoil", "stiff-clay"),
          Map.entry("openLayer", "no"),
          Map.entry("undrainedStrength", "140 kPa"),
          Map.entry("soilUnitWeight", "19.5 kN/m3"),
          Map.entry("groundWaterDepth", "9 m"),
          Map.entry("movementLimit", "15 mm"),
          Map.entry("heritage", "none"),
          Map.entry("liveUse", "occupied"),
          Map.entry("obstructions", "none"),
          Map.entry("oldPiles", "none"),
          Map.entry("bracingRoom", "yes"),
          Map.entry("investigation", "borings-and-test-pits"),
          Map.entry("landRights", "permanent"),
          Map.entry("outsideAccess", "hand"),
          Map.entry("insideAccess", "hand"));

  /** A steel column on a pad; a trench takes the ground from under it. */
  private static final Map<String, String> COLUMN =
      Map.ofEntries(
          Map.entry("structureKind", "building-frame"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("loadPattern", "concentrated"),
          Map.entry("excavationPosition", "crosses-support"),
          Map.entry("structureMaterial", "steel"),
          Map.entry("structureCondition", "good"),
          Map.entry("columnLoad", "800 kN"),
          Map.entry("clearShaft", "2.5 m"),
          Map.entry("foundationKind", "pad"),
          Map.entry("foundingDepth", "1.5 m"),
          Map.entry("excavationBelowFooting", "3 m"),
          Map.entry("pickUpPossible", "no"),
          Map.entry("seatSpan", "8 m"),
          Map.entry("seatBearingDepth", "1.5 m"),
          Map.entry("soilAtFooting", "dense-sand"),
          Map.entry("worstSoil", "dense-sand"),
          Map.entry("groundWaterDepth", "12 m"),
          Map.entry("oldPiles", "none"),
          Map.entry("heritage", "none"),
          Map.entry("freeEdge", "no"),
          Map.entry("roomForBeams", "yes"),
          Map.entry("outsideAccess", "small-rig"),
          Map.entry("insideAccess", "hand"));

  /** A concrete box over a cut; at the end of the cut no wall can be built under it. */
  private static final Map<String, String> BOX =
      Map.ofEntries(
          Map.entry("structureKind", "tunnel-box"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("liveUse", "rail"),
          Map.entry("loadPattern", "area"),
          Map.entry("excavationPosition", "partly-under"),
          Map.entry("structureMaterial", "reinforced-concrete"),
          Map.entry("structureCondition", "good"),
          Map.entry("areaLoad", "120 kPa"),
          Map.entry("foundationKind", "box-slab"),
          Map.entry("footingStrength", "strong-concrete"),
          Map.entry("foundingDepth", "6 m"),
          Map.entry("excavationBelowFooting", "5 m"),
          Map.entry("underminedLength", "12 m"),
          Map.entry("underminedWidth", "10 m"),
          Map.entry("wallGapLength", "12 m"),
          Map.entry("edgeGround", "earth"),
          Map.entry("worstSoil", "cemented-sand"),
          Map.entry("soilAtFooting", "cemented-sand"),
          Map.entry("runningLayer", "no"),
          Map.entry("bearingDepth", "0 m"),
          Map.entry("groundWaterDepth", "20 m"),
          Map.entry("obstructions", "none"),
          Map.entry("oldPiles", "none"),
          Map.entry("movementLimit", "8 mm"),
          Map.entry("seatSpan", "26 m"),
          Map.entry("seatInsidePossible", "no"),
          Map.entry("crossingSquare", "no"),
          Map.entry("freeEdge", "no"),
          Map.entry("outsideAccess", "large-rig"),
          Map.entry("outsideHeadroom", "9 m"),
          Map.entry("insideAccess", "hand"),
          Map.entry("rigBothSides", "yes"));

  /** A platform edge that overhangs a trench, trains running, piles set from outside. */
  private static final Map<String, String> EDGE =
      Map.ofEntries(
          Map.entry("structureKind", "rail-yard"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("liveUse", "rail"),
          Map.entry("nightClosure", "0 h"),
          Map.entry("loadPattern", "cantilevered-edge"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureMaterial", "reinforced-concrete"),
          Map.entry("structureCondition", "good"),
          Map.entry("lineLoad", "50 kN/m"),
          Map.entry("clearSpan", "2 m"),
          Map.entry("footingStrength", "strong-concrete"),
          Map.entry("foundationKind", "strip"),
          Map.entry("foundingDepth", "1.5 m"),
          Map.entry("excavationBelowFooting", "2 m"),
          Map.entry("gapToExcavation", "0.3 m"),
          Map.entry("excavationWall", "none"),
          Map.entry("loadOffset", "0.2 m"),
          Map.entry("freeEdge", "yes"),
          Map.entry("worstSoil", "dense-sand"),
          Map.entry("soilAtFooting", "dense-sand"),
          Map.entry("groundWaterDepth", "15 m"),
          Map.entry("oldPiles", "none"),
          Map.entry("movementLimit", "8 mm"),
          Map.entry("outsideAccess", "small-rig"),
          Map.entry("outsideHeadroom", "6 m"),
          Map.entry("insideAccess", "none"));

  @Test
  @DisplayName("A continuous competent wall in ground that stands: pits lead (common practice)")
  void pits_suit_a_continuous_wall() {
    assertThat(leader(WALL)).isEqualTo("pits");
  }

  @Test
  @DisplayName("A lone column in the path of the excavation: needles lead (common practice)")
  void needles_suit_a_concentrated_load() {
    assertThat(leader(COLUMN)).isEqualTo("needles");
    assertThat(advice(COLUMN, SupportOption.PITS).standing()).isEqualTo(Standing.RULED_OUT);
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
  @DisplayName("Good soil is dug more quickly by hand than poor (common practice)")
  void good_soil_is_dug_quickly() {
    Map<String, String> light =
        with(
            WALL,
            Map.of(
                "worstSoil", "dense-sand",
                "soilAtFooting", "dense-sand",
                "bearingKind", "dense-granular",
                "openLayer", "yes",
                "undrainedStrength", "unknown"));
    double sand = dug(sheet(light, SupportOption.PITS));
    double clay = dug(sheet(WALL, SupportOption.PITS));
    assertThat(sand).isPositive().isLessThan(clay);
  }

  private static double dug(Sheet sheet) {
    return sheet.steps().stream()
        .filter(step -> step.title().equals("Digging and sheeting one pit"))
        .mapToDouble(step -> step.result().si())
        .findFirst()
        .orElseThrow();
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
    Site site = site(facts);
    return CONSULTANT.weigh(site, site.zones().get(0));
  }

  /** The sheet of a site whose ground is one layer of its worst soil. */
  private static Sheet sheet(Map<String, String> facts, SupportOption option) {
    String soil = facts.getOrDefault("worstSoil", "");
    Site site =
        site(
            facts,
            ", \"ground\": {\"layers\": [{\"top\": \"0 m\", \"soil\": \""
                + soil
                + "\", \"unitWeight\": \"19.5 kN/m3\"}]}");
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

  private static Map<String, String> with(Map<String, String> facts, Map<String, String> changes) {
    Map<String, String> changed = new LinkedHashMap<>(facts);
    changed.putAll(changes);
    return changed;
  }

  private static Site site(Map<String, String> facts) {
    return site(facts, "");
  }

  private static Site site(Map<String, String> facts, String ground) {
    String entries =
        facts.entrySet().stream()
            .map(fact -> "\"" + fact.getKey() + "\": \"" + fact.getValue() + "\"")
            .collect(Collectors.joining(", "));
    String text =
        "{\"underhold\": \"site/1\", \"name\": \"Quarry Lane\", \"units\": \"SI\""
            + ground
            + ", \"zones\": [{\"name\": \"zone\", \"facts\": {"
            + entries
            + "}}]}";
    return SiteReader.read(text, "quarry-lane.site.json")
        .fold(
            valid -> valid.site(),
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }
}
