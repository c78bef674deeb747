package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.bracketpiles.PlatformEdge.*;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** Quantities, texts and choices of the platform edge. */
class BracketBillByHandTest {
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
    String[] all = Arrays.copyOf(settings, settings.length + 1);
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
        .contains("Dig in lifts", "levels of the monitoring plan")
        .doesNotContain("bare");
    assertThat(words(BracketSites.size(bared(), FREE), "Dig")).contains("without braces");
    assertThat(words(BracketSites.size(bared(), FREE, "brace-levels=1"), "Dig"))
        .contains("below a waler that carries");
    assertThat(words(BracketSites.size(EDGE, FREE), "Preload"))
        .doesNotContain("weld", "release", "Release");
  }

  @Test
  @DisplayName("Braces are held and warned of only where braces are counted on")
  void braces_where_there_are_braces() {
    Sheet without = BracketSites.size(bared(), FREE);
    Sheet braced = BracketSites.size(bared(), FREE, "brace-levels=1");
    assertThat(hold(without, "Dig")).contains("shims tight").doesNotContain("brace");
    assertThat(hold(braced, "Dig")).contains("braces of the lift above carry");
    assertThat(caution(without, "bared piles")).doesNotContain("Walers must carry");
    assertThat(caution(braced, "bared piles")).contains("Walers must carry");
  }

  private static String hold(Sheet sheet, String stage) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(stage))
        .map(one -> one.holdPoints().get(0).condition().template())
        .findFirst()
        .orElseThrow();
  }

  private static String caution(Sheet sheet, String hazard) {
    return sheet.cautions().stream()
        .filter(one -> one.hazard().equals(hazard))
        .map(one -> one.advice().template())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_path_is_named_in_words() {
    assertThat(MomentPath.words()).containsExactly("pile-head", "couple", "paired", "tied");
    assertThat(
            BracketSites.size(EDGE, FREE).step("eccentric-moment").orElseThrow().note().template())
        .startsWith("Path: pile head bending, free bracket.");
  }
}
