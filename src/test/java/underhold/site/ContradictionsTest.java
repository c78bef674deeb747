package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.site.SiteProblem.Code;

/** Facts that cannot all be true are named together; own cases. */
class ContradictionsTest {
  private static final String DEPTHS = "\"excavationDepth\": \"4 m\", \"foundingDepth\": \"1 m\",";
  private static final String LAYERS =
      "\"ground\": {\"layers\": [{\"top\": \"0 m\", \"soil\": \"fill\","
          + " \"unitWeight\": \"18 kN/m3\", \"standUp\": \"minutes\"},"
          + " {\"top\": \"3 m\", \"soil\": \"dense-sand\", \"unitWeight\": \"20 kN/m3\","
          + " \"standUp\": \"hours\"}]},";

  static Stream<Arguments> impossible() {
    return Stream.of(
        arguments(position("no-excavation") + fact("excavationBelowFooting", "2 m"), "position"),
        arguments(fact("underminedLength", "3 m"), "position of the excavation is beside"),
        arguments(position("inside-walls") + fact("underminedWidth", "1 m"), "reach under"),
        arguments(fact("wallGapLength", "5 m"), "gap in the excavation wall is 5 m"),
        arguments(position("crosses-support") + fact("gapToExcavation", "1 m"), "gap"),
        arguments(position("wholly-under") + fact("gapToExcavation", "1 m"), "gap"),
        arguments(fact("foundationKind", "timber-piles") + fact("oldPiles", "none"), "piles"),
        arguments(fact("liveUse", "none") + fact("nightClosure", "4 h"), "hours of closure"),
        arguments(fact("soilAtFooting", "rock") + fact("rockDepth", "3 m"), "depth to rock is 3 m"),
        arguments(
            fact("bearingKind", "rock") + fact("bearingDepth", "6 m") + fact("rockDepth", "3 m"),
            "depth to good bearing is 6 m"),
        arguments(
            fact("bearingKind", "rock") + fact("bearingDepth", "3 m") + fact("rockDepth", "6 m"),
            "the bearing layer is rock"),
        arguments(
            fact("headAbovePitBase", "1 m") + fact("headAboveExcavation", "2 m"),
            "at least as deep"),
        arguments(
            DEPTHS + fact("excavationBelowFooting", "2 m"),
            "3 m = depth of the excavation 4 m - founding depth 1 m"),
        arguments(
            DEPTHS + fact("groundWaterDepth", "3 m") + fact("headAboveExcavation", "3 m"),
            "1 m = depth of the excavation 4 m - depth to ground water 3 m"));
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void what_cannot_be_is_one_contradiction_that_names_both_sides(String facts, String named) {
    assertThat(Sites.problems(Sites.oneZone(facts)))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(Code.CONTRADICTION);
              assertThat(problem.message()).contains(named);
              assertThat(problem.line()).isPositive();
              assertThat(problem.suggestion()).startsWith("correct or leave out one of: ");
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"worstSoil\": \"dense-sand\",",
        "\"soilAtFooting\": \"dense-sand\",",
        "\"standUp\": \"hours\",",
        "\"soilUnitWeight\": \"21 kN/m3\",",
        "\"edgeGround\": \"rock\","
      })
  void a_stated_fact_that_contradicts_the_layers_is_a_contradiction(String fact) {
    assertThat(Sites.problems(Sites.file(DEPTHS + fact, LAYERS)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.CONTRADICTION))
        .satisfies(problem -> assertThat(problem.message()).contains("is stated as"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"worstSoil\": \"fill\", \"standUp\": \"minutes\", \"bearingDepth\": \"2.05 m\",",
        "\"excavationBelowFooting\": \"3.06 m\",",
        "\"soilUnitWeight\": \"18.8 kN/m3\",",
        "\"liveUse\": \"rail\", \"nightClosure\": \"4 h\",",
        "\"foundationKind\": \"timber-piles\", \"oldPiles\": \"timber\",",
        "\"underminedLength\": \"0 m\", \"wallGapLength\": \"0 m\",",
        "\"insideAccess\": \"none\", \"insideHeadroom\": \"2 m\",",
        "\"headAboveExcavation\": \"1 m\","
      })
  void what_agrees_within_tolerance_or_excludes_nothing_is_no_contradiction(String fact) {
    assertThat(Sites.problems(Sites.file(DEPTHS + fact, LAYERS))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"bearingKind\": \"rock\",",
        "\"bearingDepth\": \"1 m\",",
        "\"bearingDepth\": \"5 m\", \"bearingKind\": \"stiff-clay\","
      })
  void good_bearing_in_a_layer_that_does_not_bear_so_is_a_contradiction(String fact) {
    assertThat(Sites.problems(Sites.file(DEPTHS + fact, LAYERS)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.CONTRADICTION))
        .satisfies(problem -> assertThat(problem.message()).contains("does not bear"));
  }

  @Test
  void good_bearing_deeper_than_the_first_good_layer_is_the_engineers_judgement() {
    assertThat(Sites.problems(Sites.file(DEPTHS + fact("bearingDepth", "5 m"), LAYERS))).isEmpty();
    assertThat(Sites.problems(Sites.file(DEPTHS + fact("bearingDepth", "1.96 m"), LAYERS)))
        .isEmpty();
  }

  @Test
  void lengths_agree_within_50_mm_or_2_per_cent_and_no_more() {
    String depths = "\"excavationDepth\": \"2 m\", \"foundingDepth\": \"1 m\",";

    assertThat(Sites.problems(Sites.oneZone(depths + fact("excavationBelowFooting", "1.049 m"))))
        .isEmpty();
    assertThat(Sites.problems(Sites.oneZone(depths + fact("excavationBelowFooting", "1.051 m"))))
        .hasSize(1);
  }

  @Test
  void a_new_excavation_must_pass_some_zone() {
    String none = position("no-excavation") + fact("purpose", "new-excavation");

    assertThat(Sites.problems(Sites.oneZone(none)))
        .extracting(SiteProblem::code, SiteProblem::place)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(Code.CONTRADICTION, "zones[0].facts.purpose"));
    assertThat(
            Sites.problems(Sites.oneZone(position("no-excavation") + fact("purpose", "remedial"))))
        .isEmpty();
  }

  @Test
  void depths_that_come_out_impossible_are_refused_with_the_arithmetic() {
    String facts = fact("excavationDepth", "2 m") + fact("excavationBelowFooting", "3 m");

    assertThat(Sites.problems(Sites.oneZone(facts)))
        .singleElement()
        .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.OUT_OF_RANGE))
        .satisfies(
            problem ->
                assertThat(problem.message())
                    .contains("founding depth comes out at -1 m = depth of the excavation 2 m"));
  }

  @Test
  void with_several_zones_the_zone_is_named() {
    String text =
        Sites.FULL.replace(
            "\"foundingDepth\": \"2.5 m\"",
            "\"excavationBelowFooting\": \"1 m\", \"foundingDepth\": \"2.5 m\"");

    assertThat(Sites.problems(text))
        .singleElement()
        .satisfies(problem -> assertThat(problem.message()).startsWith("zone \"corner column\": "));
  }

  @Test
  void a_value_that_could_not_be_read_contradicts_nothing() {
    assertThat(Sites.problems(Sites.oneZone(DEPTHS + "\"excavationBelowFooting\": \"2\",")))
        .extracting(SiteProblem::code)
        .containsExactly(Code.NO_UNIT);
  }

  @Test
  void an_edited_site_can_be_checked_without_a_file() {
    Site site = Sites.valid(Sites.FULL);

    assertThat(SiteChecks.contradictions(site, Sites.DICTIONARY, "edited")).isEmpty();
  }

  private static String position(String position) {
    return fact("excavationPosition", position);
  }

  private static String fact(String name, String value) {
    return "\"" + name + "\": \"" + value + "\",";
  }
}
