package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;

/** Invariants over many sites; own cases throughout. */
class BracketPilesPropertiesTest {
  private static final String EDGE = BracketSites.text();
  private static final String[] SOILS = {
    "rock",
    "cemented-sand",
    "dense-gravel",
    "dense-sand",
    "loose-sand",
    "silt",
    "soft-clay",
    "fill",
    "peat"
  };
  private static final String[] PATHS = {"undecided", "pile-head", "couple", "paired", "tied"};
  private static final String[] FOOTINGS = {"strong-concrete", "plain-concrete", "rubble"};

  private static String site(double load, double gap, double depth, double strength) {
    return EDGE.replace("60 kN/m", load + " kN/m")
        .replace("\"gapToExcavation\": \"2.5 m\"", "\"gapToExcavation\": \"" + gap + " m\"")
        .replace("\"excavationDepth\": \"3.5 m\"", "\"excavationDepth\": \"" + depth + " m\"")
        .replace("90 kPa", strength + " kPa");
  }

  @Property(tries = 80, seed = Seeds.BUILD)
  void any_site_gives_a_sheet_that_can_be_redone(
      @ForAll @DoubleRange(min = 5, max = 2000) double load,
      @ForAll @DoubleRange(min = 0, max = 5) double gap,
      @ForAll @DoubleRange(min = 0.5, max = 15) double depth,
      @ForAll @DoubleRange(min = 2, max = 400) double strength,
      @ForAll @IntRange(max = 8) int soil,
      @ForAll @IntRange(max = 4) int path,
      @ForAll @IntRange(max = 2) int footing,
      @ForAll @IntRange(max = 3) int braces) {
    String text =
        site(load, gap, depth, strength)
            .replace("dense-sand", SOILS[soil])
            .replace("strong-concrete", FOOTINGS[footing]);
    Sheet sheet = BracketSites.size(text, "moment-path=" + PATHS[path], "brace-levels=" + braces);
    StepProof.redo(sheet);
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(String.join("\n", SheetText.lines(sheet, system)))
          .doesNotContain("NaN")
          .doesNotContain("Infinity");
    }
    assertThat(sheet.steps()).allSatisfy(step -> assertThat(step.result().si()).isNotNegative());
    assertThat(sheet.quantities())
        .allSatisfy(item -> assertThat(item.amount().si()).isNotNegative());
    assertThat(sheet.checks()).isNotEmpty();
  }

  @Property(tries = 50, seed = Seeds.BUILD)
  void more_load_never_lowers_a_demand(
      @ForAll @DoubleRange(min = 5, max = 500) double load,
      @ForAll @DoubleRange(min = 1, max = 3) double times,
      @ForAll @DoubleRange(min = 0, max = 3) double gap,
      @ForAll @IntRange(min = 1, max = 4) int path) {
    String[] settings = {"moment-path=" + PATHS[path], "casing=9.625 x 0.545 in"};
    Sheet less = BracketSites.size(site(load, gap, 3.5, 90), settings);
    Sheet more = BracketSites.size(site(load * times, gap, 3.5, 90), settings);
    for (String id :
        new String[] {
          "bracket-load",
          "cased-compression",
          "casing-combined",
          "casing-joint",
          "pile-bond",
          "bracket-plate"
        }) {
      assertThat(more.check(id).orElseThrow().demand().si())
          .as(id)
          .isGreaterThanOrEqualTo(less.check(id).orElseThrow().demand().si() * (1 - 1e-9));
    }
    assertThat(more.step("movement").orElseThrow().result().si())
        .isGreaterThanOrEqualTo(less.step("movement").orElseThrow().result().si() - 1e-12);
  }

  @Property(tries = 30, seed = Seeds.BUILD)
  void a_deeper_cut_never_shortens_a_bared_column_or_the_casing(
      @ForAll @DoubleRange(min = 1, max = 8) double depth,
      @ForAll @DoubleRange(min = 0, max = 4) double more) {
    String[] settings = {"moment-path=pile-head", "casing=9.625 x 0.545 in"};
    Sheet less = BracketSites.size(site(60, 0.1, depth, 90), settings);
    Sheet deeper = BracketSites.size(site(60, 0.1, depth + more, 90), settings);
    assertThat(deeper.step("slenderness").orElseThrow().result().si())
        .isGreaterThanOrEqualTo(less.step("slenderness").orElseThrow().result().si() - 1e-9);
    assertThat(deeper.check("cased-compression").orElseThrow().capacity().si())
        .isLessThanOrEqualTo(less.check("cased-compression").orElseThrow().capacity().si() + 1e-9);
  }
}
