package underhold.mechanics.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import underhold.quantity.Seeds;

class InfluenceRuleTest {
  /** Base 3 m below the footing, 4 m below ground. */
  private static ExcavationBeside at(double gap) {
    return new ExcavationBeside(gap, 3, 4, true);
  }

  @ParameterizedTest(name = "{3}: {0}, 3 m below the footing and 4 m deep, reaches {1} m; {2}")
  @CsvSource({
    "STRESS_OVERLAP, 1.7321, PUBLISHED, UFC 3-220-20 5-2.5 (30 degrees from the vertical)",
    "FORTY_FIVE_DEGREES, 3, COMMON_PRACTICE, practitioner opinion",
    "CLEARANCE_AS_DEPTH, 3, PUBLISHED, UK house-building standard (secondary)",
    "ONE_ON_ONE, 3, PUBLISHED, attributed to Merritt (secondary)",
    "ONE_ON_ONE_AND_A_HALF, 4.5, FROM_MEMORY, local guides (from memory)",
    "TEN_ON_SIX, 5, COMMON_PRACTICE, practitioner opinion",
    "ONE_ON_TWO, 6, PUBLISHED, attributed to Merritt (secondary)",
    "FIRM_GROUND_1914, 6, PUBLISHED, Engineering News 1914",
    "BERM, 9, STANDARD, DIN 4123:2013-04 7.2: 2 + 2 x (3 + 0.5)",
    "MONITORING_DEPTH, 4, STANDARD, NYC Building Code 2014 3309.4.4",
    "MONITORING_HISTORIC, 27.432, STANDARD, NYC Building Code 2014 3309.4.4 (90 ft)"
  })
  void reaches(InfluenceRule rule, double metres, Provenance provenance, String source) {
    assertThat(rule.reachMetres(at(1)).orThrow()).isCloseTo(metres, within(1e-4));
    assertThat(rule.citation().provenance()).isEqualTo(provenance);
    assertThat(rule.inside(at(metres - 0.01)).orThrow()).isTrue();
    assertThat(rule.inside(at(metres + 0.01)).orThrow()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(InfluenceRule.class)
  void everyRuleSaysWhatItIsForAndAtTheLimitAFootingIsInside(InfluenceRule rule) {
    assertThat(rule.title()).isNotBlank();
    assertThat(rule.purpose()).isNotBlank();
    assertThat(rule.formula()).isNotBlank();
    double reach = rule.reachMetres(at(1)).orThrow();
    assertThat(rule.inside(at(reach)).orThrow()).isTrue();
  }

  @Test
  @DisplayName("UFC 3-220-20: its 30 degrees are about neighbouring footings, not excavations")
  void only_one_rule_is_for_comparison() {
    for (InfluenceRule rule : InfluenceRule.values()) {
      assertThat(rule.forExcavations()).isEqualTo(rule != InfluenceRule.STRESS_OVERLAP);
    }
  }

  @Test
  @DisplayName(
      "DIN 4123:2013-04 7.2: the berm rule ends at 4 m below the footing; top 0.5 m above it")
  void bermRule() {
    ExcavationBeside deep = new ExcavationBeside(50, 4.01, 5, false);
    assertThat(InfluenceRule.BERM.inside(deep).reason().orElseThrow()).contains("4 m");
    assertThat(InfluenceRule.BERM.reachMetres(new ExcavationBeside(1, 4, 5, false)).orThrow())
        .isCloseTo(11, within(1e-12));
    assertThat(InfluenceRule.BERM.reachMetres(new ExcavationBeside(1, -0.25, 2, false)).orThrow())
        .isCloseTo(2.5, within(1e-12));
    assertThat(InfluenceRule.BERM.inside(new ExcavationBeside(0, -0.5, 2, false)).orThrow())
        .isFalse();
  }

  @ParameterizedTest(
      name =
          "NYC Building Code 2014 3309.4.4: {0} m deep, {1} m away, {2} m below the footing: {3}")
  @CsvSource({
    "1.5, 1.4, 0.5, true",
    "1.5, 1.5, 0.5, true",
    "1.5, 1.6, 0.5, false",
    "1.5, 1.4, 0, false",
    "1.5, 1.4, -0.2, false",
    "1.6, 1.5, -0.2, true",
    "1.524, 1.53, 0.5, false",
    "1.525, 1.525, 0.5, true"
  })
  void smallWork(double depth, double gap, double below, boolean watched) {
    ExcavationBeside excavation = new ExcavationBeside(gap, below, depth, false);
    assertThat(InfluenceRule.MONITORING_DEPTH.inside(excavation).orThrow()).isEqualTo(watched);
  }

  @Test
  void aRuleForHistoricStructuresDoesNotServeOthers() {
    ExcavationBeside plain = new ExcavationBeside(5, 3, 4, false);
    assertThat(InfluenceRule.MONITORING_HISTORIC.inside(plain).reason().orElseThrow())
        .contains("not protected");
  }

  @Test
  void linesReachNowhereFromAnExcavationAboveTheFooting() {
    ExcavationBeside shallow = new ExcavationBeside(0, 0, 1, false);
    for (InfluenceRule rule :
        new InfluenceRule[] {
          InfluenceRule.FORTY_FIVE_DEGREES, InfluenceRule.ONE_ON_TWO, InfluenceRule.STRESS_OVERLAP
        }) {
      assertThat(rule.reachMetres(shallow).orThrow()).isZero();
      assertThat(rule.inside(shallow).orThrow()).isFalse();
    }
  }

  @Property(seed = Seeds.BUILD)
  void aDeeperOrNearerExcavationIsNeverLessFelt(
      @ForAll InfluenceRule rule,
      @ForAll @DoubleRange(min = 0, max = 60) double gap,
      @ForAll @DoubleRange(min = -30, max = 3.5) double below,
      @ForAll @DoubleRange(min = 0, max = 40) double depth) {
    boolean inside = rule.inside(new ExcavationBeside(gap, below, depth, true)).orThrow();
    boolean deeper =
        rule.inside(new ExcavationBeside(gap, below + 0.5, depth + 0.5, true)).orThrow();
    boolean nearer = rule.inside(new ExcavationBeside(gap / 2, below, depth, true)).orThrow();
    if (inside) {
      assertThat(deeper).isTrue();
      assertThat(nearer).isTrue();
    }
  }

  @Test
  void excavationsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new ExcavationBeside(-1, 1, 1, false));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ExcavationBeside(1, Double.POSITIVE_INFINITY, 1, false));
    assertThatIllegalArgumentException().isThrownBy(() -> new ExcavationBeside(1, 1, -1, false));
  }
}
