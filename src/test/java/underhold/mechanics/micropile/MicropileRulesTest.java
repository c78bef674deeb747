package underhold.mechanics.micropile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.micropile.GroutBond.Grouting;
import underhold.quantity.Seeds;

class MicropileRulesTest {
  private static final CasingSection SEVEN = CasingSection.inches(7, 0.5);

  @ParameterizedTest(
      name = "FHWA NHI-05-039 Table 5-3 (from memory, verify): {0}, {1}: {2} to {3} kPa")
  @CsvSource({
    "soft-silt-clay, GRAVITY, 35, 70",
    "stiff-silt-clay, PRESSURE, 70, 190",
    "loose-sand, POST_GROUTED_ONCE, 95, 190",
    "dense-sand, POST_GROUTED_REPEATEDLY, 145, 385",
    "gravel, GRAVITY, 95, 265",
    "glacial-till, POST_GROUTED_ONCE, 120, 310",
    "granite, GRAVITY, 1380, 4200"
  })
  void bond_table(String key, Grouting grouting, double low, double high) {
    GroutBond.Range range = GroutBond.named(key).orElseThrow().range(grouting).orElseThrow();
    assertThat(range.lowKilopascals()).isEqualTo(low);
    assertThat(range.highKilopascals()).isEqualTo(high);
    assertThat(range.lowerThird()).isCloseTo(low + (high - low) / 3, within(1e-9));
    assertThat(range.at(0)).isEqualTo(low);
    assertThat(range.at(1)).isEqualTo(high);
  }

  @Test
  void rock_has_no_range_for_pressure_grouting() {
    assertThat(GroutBond.table()).hasSize(11);
    GroutBond limestone = GroutBond.named("limestone").orElseThrow();
    assertThat(limestone.range(Grouting.PRESSURE)).isEmpty();
    assertThat(limestone.ground()).isEqualTo("limestone, fresh to moderately fractured");
    assertThat(GroutBond.named("cheese")).isEmpty();
    assertThatThrownBy(() -> new GroutBond.Range(2, 1)).hasMessageContaining("below the low end");
    assertThatThrownBy(() -> new GroutBond.Range(1, 2).at(1.1)).hasMessageContaining("share");
  }

  @ParameterizedTest(name = "Corrosion tables (from memory, verify): {0} after {1} years {2} mm")
  @CsvSource({
    "NOT_AGGRESSIVE, 0, 0",
    "NOT_AGGRESSIVE, 25, 0.25",
    "BARELY_AGGRESSIVE, 50, 1.0",
    "VERY_AGGRESSIVE, 75, 5.0",
    "EUROCODE_NATURAL_SOIL, 100, 1.2",
    "EUROCODE_NATURAL_SOIL, 62.5, 0.75",
    "VERY_AGGRESSIVE, 12.5, 1.0"
  })
  void corrosion(Corrosion ground, double years, double millimetres) {
    assertThat(ground.lossMetres(years) * 1000).isCloseTo(millimetres, within(1e-9));
  }

  @Test
  void corrosion_beyond_the_tables_is_refused() {
    assertThatThrownBy(() -> Corrosion.NOT_AGGRESSIVE.lossMetres(101)).hasMessageContaining("100");
    assertThatThrownBy(() -> Corrosion.NOT_AGGRESSIVE.lossMetres(-1)).hasMessageContaining("0");
    assertThat(Corrosion.FHWA_DEDUCTION_METRES * 1000).isCloseTo(1.5875, within(1e-9));
  }

  @ParameterizedTest(
      name = "Aggressive ground (FHWA, from memory, verify): pH {0}, {1} ohm cm, {2}, {3} ppm: {4}")
  @CsvSource({
    "7, 5000, 100, 50, false",
    "4.5, 2000, 200, 100, false",
    "10, 2000, 200, 100, false",
    "4.4, 5000, 100, 50, true",
    "10.1, 5000, 100, 50, true",
    "7, 1999, 100, 50, true",
    "7, 5000, 201, 50, true",
    "7, 5000, 100, 101, true"
  })
  void aggressive(double acidity, double resistivity, double sulfate, double chloride, boolean is) {
    assertThat(Corrosion.aggressive(acidity, resistivity, sulfate, chloride)).isEqualTo(is);
  }

  @Test
  @DisplayName(
      "Spacing (FHWA, AASHTO; from memory, verify): 30 in or 3 D; clay group 0.65, 0.70, 1.0 at 2.5, 3, 6 D")
  void spacing() {
    assertThat(PileSpacing.least(0.2)).isCloseTo(0.762, within(1e-9));
    assertThat(PileSpacing.least(0.3)).isCloseTo(0.9, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(0.5, 0.2, 40, false)).isCloseTo(0.65, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(0.55, 0.2, 40, false)).isCloseTo(0.675, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(0.6, 0.2, 40, false)).isCloseTo(0.70, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(0.9, 0.2, 40, false)).isCloseTo(0.85, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(1.3, 0.2, 40, false)).isEqualTo(1);
    assertThat(PileSpacing.clayEfficiency(0.5, 0.2, 96, false)).isEqualTo(1);
    assertThat(PileSpacing.clayEfficiency(0.5, 0.2, 95, false)).isLessThan(1);
    assertThat(PileSpacing.clayEfficiency(0.5, 0.2, 40, true)).isEqualTo(1);
    assertThatThrownBy(() -> PileSpacing.clayEfficiency(0.4, 0.2, 40, false))
        .hasMessageContaining("2.5");
  }

  @Test
  @DisplayName(
      "City of Everett, contract page on micropile proof tests: 0.25, 0.50, 0.75, 1.00, 1.33, 1.67; 1 mm in ten minutes or hold 50 more")
  void proof_test_of_a_city() {
    assertThat(LoadTest.proofSteps(LoadTest.PROOF_CITY))
        .containsExactly(0.25, 0.50, 0.75, 1.00, 1.33, 1.67);
    assertThat(LoadTest.proofSteps(1.33)).containsExactly(0.25, 0.50, 0.75, 1.00, 1.33);
    assertThat(LoadTest.extendHold(0.001)).isFalse();
    assertThat(LoadTest.extendHold(0.0011)).isTrue();
    assertThat(LoadTest.creepAccepted(0.0011, 0.002)).isTrue();
    assertThat(LoadTest.creepAccepted(0.001, 0.003)).isTrue();
    assertThat(LoadTest.creepAccepted(0.0011, 0.0021)).isFalse();
    assertThat(LoadTest.FAILURE_SLOPE * 1000).isCloseTo(0.143, withPercentage(0.3)); // mm/kN
    assertThatThrownBy(() -> LoadTest.proofSteps(1)).hasMessageContaining("above 1");
    assertThatThrownBy(() -> LoadTest.proofSteps(2.6)).hasMessageContaining("2.5");
    assertThat(LoadTest.proofSteps(2.5)).hasSize(6);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label(
      "Root finding (Hipparchus): the slope of Pcr over the half-wave is zero at pi (EI/Es)^(1/4), and Pcr there is least")
  void buckling_minimum(
      @ForAll @DoubleRange(min = 50, max = 50_000) double stiffness,
      @ForAll @DoubleRange(min = 100, max = 50_000) double soil) {
    BracedBuckling buckling = new BracedBuckling(stiffness, 1000);
    double root =
        new BrentSolver(1e-10)
            .solve(
                500,
                l ->
                    -2 * Math.PI * Math.PI * stiffness / (l * l * l)
                        + 2 * soil * l / (Math.PI * Math.PI),
                0.01,
                100);
    assertThat(buckling.halfWave(soil)).isCloseTo(root, withPercentage(1e-5));
    assertThat(buckling.criticalLoad(soil, root))
        .isCloseTo(buckling.leastCriticalLoad(soil), withPercentage(1e-6));
    assertThat(buckling.criticalLoad(soil, root * 1.2))
        .isGreaterThan(buckling.leastCriticalLoad(soil));
    BracedBuckling limit = new BracedBuckling(stiffness, 1000);
    assertThat(limit.leastCriticalLoad(limit.limitingStiffness()))
        .isCloseTo(1000, withPercentage(1e-6)); // Pcr = Fy A at Es,lim
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label("Root finding (Hipparchus): the greatest moment brings the sum to 1, braced or free")
  void greatest_moment(
      @ForAll @DoubleRange(min = 0, max = 500) double load,
      @ForAll @DoubleRange(min = 0.5, max = 6) double length) {
    FreeLength free = new FreeLength(SEVEN, 551_600, length, 1);
    for (CombinedStress stress :
        new CombinedStress[] {CombinedStress.braced(SEVEN, 551_600), CombinedStress.free(free)}) {
      double moment = stress.greatestMoment(load);
      if (moment > 0) {
        double root =
            new BrentSolver(1e-12)
                .solve(500, m -> stress.ratio(load, m).orElseThrow() - 1, 0, 10_000);
        assertThat(moment).isCloseTo(root, withPercentage(1e-6));
      } else {
        assertThat(stress.ratio(load, 0).orElse(2)).isGreaterThanOrEqualTo(1);
      }
    }
  }

  @Test
  void a_load_at_the_amplifier_stress_bears_no_moment() {
    FreeLength slender = new FreeLength(SEVEN, 551_600, 15, 2.1);
    CombinedStress stress = CombinedStress.free(slender);
    double limit = slender.amplifierStress() * SEVEN.area();
    assertThat(stress.ratio(limit * 1.001, 1)).isEmpty();
    assertThat(stress.greatestMoment(limit * 1.001)).isZero();
    assertThat(stress.ratio(0, 0)).hasValue(0);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void a_longer_free_length_never_carries_more(
      @ForAll @DoubleRange(min = 0.01, max = 20) double length) {
    double shorter = new FreeLength(SEVEN, 551_600, length, 1).shareOfCapacity();
    double longer = new FreeLength(SEVEN, 551_600, length * 1.1, 1).shareOfCapacity();
    assertThat(longer).isLessThanOrEqualTo(shorter);
    assertThat(shorter).isBetween(0.0, 1.0);
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> new BondZone(100, 0.2, 0.9)).hasMessageContaining("safety factor");
    assertThatThrownBy(() -> new BondZone(Double.NaN, 0.2, 2)).hasMessageContaining("bond");
    assertThatThrownBy(() -> new BondZone(100, 0.2, Double.POSITIVE_INFINITY))
        .hasMessageContaining("safety factor");
    assertThatThrownBy(() -> new FreeLength(SEVEN, 1e5, 0, 1)).hasMessageContaining("free length");
    assertThatThrownBy(() -> new PileMaterials(-1, 1, 1)).hasMessageContaining("grout");
    assertThatThrownBy(() -> PileShortening.residual(-1, 0)).hasMessageContaining("shortening");
    assertThat(new BondZone(100, 0.2, 1).perMetre()).isCloseTo(Math.PI * 20, within(1e-9));
  }
}
