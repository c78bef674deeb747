package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.Site;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** What the sheet of edge pits says and refers for ground, water, rock and stages; own cases. */
class EdgeTextsTest {
  private static final Site BOX = EdgeSites.box();

  private static final List<String> ALWAYS =
      List.of(
          "the wall does not stand by itself",
          "load that comes back",
          "pressure",
          "wall on the piles",
          "piles and wall together",
          "precedent",
          "cave-in",
          "digging below the structure",
          "egress and air",
          "rescue",
          "heading under a structure");

  private static List<String> hazards(Sheet sheet) {
    return sheet.cautions().stream().map(one -> one.hazard()).toList();
  }

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id)).result().si();
  }

  private static Sheet box(String... pairs) {
    Site site = BOX;
    for (int i = 0; i < pairs.length; i += 2) {
      site = EdgeSites.with(site, pairs[i], pairs[i + 1]);
    }
    return EdgeSites.size(site);
  }

  private static String words(Sheet sheet, String stage) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(stage))
        .map(one -> String.join(" ", one.work().stream().map(Phrase::template).toList()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void every_sheet_names_its_hazards_and_some_by_the_ground() {
    assertThat(hazards(box())).startsWith(ALWAYS.toArray(String[]::new)).contains("rock not known");
    assertThat(hazards(box("rockDepth", "20 m")))
        .startsWith(ALWAYS.toArray(String[]::new))
        .doesNotContain("rock not known", "rock that slopes", "rock below the toe");
    assertThat(hazards(box("rockDepth", "3 m")))
        .contains("rock that slopes", "rock below the toe")
        .doesNotContain("rock not known");
    assertThat(hazards(box("artesian", "yes"))).contains("water under pressure");
    assertThat(hazards(box("artesian", "no"))).doesNotContain("water under pressure");
    assertThat(box().notCovered()).anyMatch(one -> one.startsWith("the drilled piles"));
  }

  @Test
  void the_face_stands_as_the_site_says() {
    assertThat(check(box(), "stand-up").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(box("standUp", "days"), "stand-up").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(box("standUp", "minutes"), "stand-up").verdict()).isEqualTo(Verdict.REFER);
    Check none = check(box("standUp", "none"), "stand-up");
    assertThat(none.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(none.capacity().si()).isZero();
    assertThat(none.note().template()).startsWith("Ground that runs at once");
  }

  @Test
  @DisplayName(
      "own hand calculation: a base at 3 + 5.6 m: water at 9 m is below it, at 8.6 m just at it, at 6 m 2.6 m over it")
  void water_in_the_pits() {
    Check below = check(box(), "water");
    assertThat(below.verdict()).isEqualTo(Verdict.PASSES);
    assertThat(below.demand().si()).isZero();
    assertThat(check(box("groundWaterDepth", "8.6 m"), "water").verdict())
        .isEqualTo(Verdict.PASSES);
    Check over = check(box("groundWaterDepth", "6 m"), "water");
    assertThat(over.demand().si()).isCloseTo(2.6, within(1e-9));
    assertThat(over.verdict()).isNotEqualTo(Verdict.PASSES);
    assertThat(over.note().template()).startsWith("In soil that runs");
  }

  @Test
  @DisplayName(
      "judgement of the method: a base slab as the lowest strut or later; a rock face has a ledge")
  void the_last_stage() {
    String bottom = "Bottom of the excavation";
    assertThat(words(EdgeSites.size(BOX, "toe-support=slab"), bottom))
        .contains("it is the lowest strut")
        .doesNotContain("line-drill");
    assertThat(words(EdgeSites.size(BOX, "toe-support=ground"), bottom))
        .contains("no trench along");
    Site rock = EdgeSites.with(BOX, "rockDepth", "3 m");
    assertThat(words(EdgeSites.size(rock), bottom)).contains("line-drill");
  }

  @Test
  @DisplayName(
      "own hand calculation: eight pits of 1.2 m, 5.6 m high, 0.9 m thick: 7 joints of 5.6 m; 48.4 m3 less the gap")
  void bill() {
    Sheet sheet = box();
    assertThat(quantity(sheet, "pits")).isEqualTo(8);
    assertThat(quantity(sheet, "joints between pits")).isCloseTo(7 * 5.6, within(1e-9));
    double closing = quantity(sheet, "closing strip");
    assertThat(quantity(sheet, "concrete") + closing)
        .isCloseTo(9.6 * 0.9 * 5.6, withPercentage(0.001));
    double soil = quantity(sheet, "soil dug");
    assertThat(soil).isGreaterThan(9.6 * 0.9 * 5.6);
    assertThat(sheet.quantities()).noneMatch(one -> one.name().startsWith("toe dowels"));
    assertThat(step(sheet, "wall-height")).isCloseTo(5.6, within(1e-9));
  }

  private static double quantity(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().startsWith(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name))
        .amount()
        .si();
  }
}
