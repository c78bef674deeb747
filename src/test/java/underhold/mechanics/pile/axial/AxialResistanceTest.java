package underhold.mechanics.pile.axial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.axial.AllowableLoad.TestRegime;
import underhold.mechanics.pile.axial.RockSide.Joints;
import underhold.mechanics.pile.axial.SandBetaRational.Grain;
import underhold.quantity.Seeds;

class AxialResistanceTest {
  private static final double KSF = 47.88025898;
  private static final double PSI = 6.894757293;
  private static final double FOOT = 0.3048;
  private static final double KIP = 4.448221615;

  @ParameterizedTest
  @CsvSource({
    "1, 0.55, 0.660",
    "2, 0.55, 0.480",
    "3, 0.55, 0.420",
    "4, 0.511, 0.390",
    "5, 0.464, 0.372"
  })
  @DisplayName("Own case: alpha of 1999/2010 and of 2018 for su 1 to 5 ksf, by hand")
  void alpha_by_strength(double ksf, double older, double newer) {
    assertThat(ClayAlpha.oneillReese(ksf * KSF).orThrow()).isCloseTo(older, within(5e-4));
    assertThat(ClayAlpha.brown2018(ksf * KSF)).isCloseTo(newer, within(5e-4));
  }

  @Test
  void alpha_ends_where_clay_ends_and_never_passes_one() {
    assertThat(ClayAlpha.oneillReese(2.5 * 101.325).orThrow()).isCloseTo(0.45, within(1e-12));
    assertThat(ClayAlpha.oneillReese(2.51 * 101.325).reason())
        .hasValueSatisfying(why -> assertThat(why).contains("2.5"));
    assertThat(ClayAlpha.oneillReese(0).orThrow()).isEqualTo(0.55);
    assertThat(ClayAlpha.brown2018(0)).isEqualTo(1);
    assertThat(ClayAlpha.brown2018(20)).isEqualTo(1);
    assertThatThrownBy(() -> ClayAlpha.sideKilopascals(1.1, 50)).hasMessageContaining("alpha");
    assertThatThrownBy(() -> ClayAlpha.brown2018(-1)).hasMessageContaining("undrained strength");
  }

  @ParameterizedTest
  @CsvSource({"5, 1.198", "10, 1.073", "20, 0.896", "40, 0.646", "60, 0.454", "86, 0.250"})
  @DisplayName(
      "Own case: O'Neill and Reese's beta of sand at 5 to 86 ft, by hand with 0.135 sqrt(ft)")
  void beta_by_depth(double feet, double beta) {
    // 0.0015: the metric coefficient 0.245 is 0.13526 in feet, the other edition prints 0.135
    assertThat(SandBetaOneillReese.sand(feet * FOOT, 15)).isCloseTo(beta, within(0.0025));
  }

  @Test
  void beta_falls_with_loose_sand_and_stays_within_its_limits() {
    assertThat(SandBetaOneillReese.sand(4, 10)).isCloseTo(1.01 * 10 / 15, within(1e-12));
    assertThat(SandBetaOneillReese.sand(4, 40)).isCloseTo(1.01, within(1e-12));
    assertThat(SandBetaOneillReese.sand(0, 15)).isEqualTo(1.2);
    assertThat(SandBetaOneillReese.gravellySand(0)).isEqualTo(1.8);
    assertThat(SandBetaOneillReese.gravellySand(16)).isCloseTo(0.8, within(1e-12));
    assertThat(SandBetaOneillReese.gravellySand(100)).isEqualTo(0.25);
    assertThat(SandBetaOneillReese.sideKilopascals(0.5, 100)).isEqualTo(50);
    assertThat(SandBetaOneillReese.sideKilopascals(1.2, 500)).isEqualTo(200);
  }

  @Test
  @DisplayName(
      "Own case: beta from stress history, N60 25, sv' 2 ksf, m 0.6: phi 40.36, sp' 6.861 ksf, beta 0.665, fs 1.33 ksf")
  void beta_from_stress_history() {
    double phi = SandBetaRational.frictionAngleDegrees(25);
    double past = Grain.CLEAN_SAND.preconsolidationKilopascals(25);
    assertThat(phi).isCloseTo(40.36, within(0.005));
    assertThat(past / KSF).isCloseTo(6.861, within(0.005));
    double beta = SandBetaRational.beta(phi, past, 2 * KSF);
    assertThat(beta).isCloseTo(0.665, within(0.001));
    assertThat(SandBetaRational.largestBeta(phi)).isCloseTo(3.97, within(0.01));
    assertThat(SandBetaOneillReese.sideKilopascals(beta, 2 * KSF) / KSF)
        .isCloseTo(1.33, within(0.005));
  }

  @Test
  void stress_history_at_its_limits() {
    assertThat(Grain.SILTY_SAND.preconsolidationKilopascals(10))
        .isCloseTo(0.47 * Math.pow(10, 0.8) * 101.325, within(1e-9));
    assertThat(Grain.GRAVEL.preconsolidationKilopascals(20)).isCloseTo(303.975, within(1e-9));
    // normally loaded: (1 - sin 30) tan 30
    assertThat(SandBetaRational.beta(30, 10, 100)).isCloseTo(0.288675, within(1e-6));
    // Kp tan 30 = 3 x 0.57735
    assertThat(SandBetaRational.beta(30, 1e6, 1)).isCloseTo(1.732051, within(1e-6));
    assertThat(SandBetaRational.frictionAngleDegrees(0)).isEqualTo(20);
    assertThat(SandBetaRational.frictionAngleDegrees(1)).isEqualTo(27.5);
    assertThat(SandBetaRational.frictionAngleDegrees(1000)).isEqualTo(45);
    assertThat(SandBetaRational.correctedBlowCount(20, 405.3)).isCloseTo(10, within(1e-9));
    assertThat(SandBetaRational.correctedBlowCount(20, 1)).isEqualTo(40);
  }

  @Test
  @DisplayName(
      "Own case: socket 24 in x 10 ft in rock of 5000 psi, concrete 4000 psi governs: 2193.6, 1382, 855.5 kip")
  void rock_socket_by_three_ways() {
    double area = PileSection.uncased(24 * 0.0254).perimeterMetres() * 10 * FOOT;
    double rock = 5000 * PSI;
    double concrete = 4000 * PSI;
    double normal = RockSide.normalSocketKilopascals(RockSide.NORMAL_SOCKET, rock, concrete);
    // 0.05 %: the hand figures take the atmosphere as 2.116 ksf and 14.7 psi
    assertThat(normal / KSF).isCloseTo(34.91, withPercentage(0.05));
    assertThat(normal * area / KIP).isCloseTo(2193.6, withPercentage(0.05));
    assertThat(RockSide.normalSocketKilopascals(RockSide.LOWER_BOUND, rock, concrete) * area / KIP)
        .isCloseTo(1382, withPercentage(0.05));
    double jointed =
        RockSide.jointedRockKilopascals(
            RockSide.jointFactor(50, Joints.CLOSED).orThrow(), rock, concrete);
    assertThat(jointed * area / KIP).isCloseTo(855.5, withPercentage(0.05));
    assertThat(normal * area / KIP * LrfdFactor.ROCK.side()).isCloseTo(1206, withPercentage(0.1));
    assertThat(AllowableLoad.kilonewtons(normal * area, 0, 2.5) / KIP)
        .isCloseTo(877, withPercentage(0.1));
  }

  @ParameterizedTest
  @CsvSource({
    "100, 1.00, 0.85",
    "85, 0.925, 0.70",
    "70, 0.85, 0.55",
    "60, 0.725, 0.55",
    "50, 0.60, 0.55",
    "40, 0.55, 0.525",
    "30, 0.50, 0.50",
    "25, 0.475, 0.475",
    "20, 0.45, 0.45"
  })
  @DisplayName("AASHTO/GEC 10 table of aE by RQD (from memory), straight between its rows")
  void joint_factor(double rqd, double closed, double open) {
    assertThat(RockSide.jointFactor(rqd, Joints.CLOSED).orThrow()).isCloseTo(closed, within(1e-9));
    assertThat(RockSide.jointFactor(rqd, Joints.OPEN).orThrow()).isCloseTo(open, within(1e-9));
  }

  @Test
  void joint_factor_ends_at_a_fifth_of_sound_core() {
    assertThat(RockSide.jointFactor(19, Joints.CLOSED).reason()).isPresent();
    assertThatThrownBy(() -> RockSide.jointFactor(101, Joints.OPEN)).hasMessageContaining("RQD");
  }

  @Test
  @DisplayName("Tomlinson and Woodward, 5th ed., p. 207: the weaker of rock and concrete governs")
  void the_weaker_material_governs() {
    assertThat(RockSide.weakerKilopascals(20_000, 30_000)).isEqualTo(20_000);
    assertThat(RockSide.weakerKilopascals(40_000, 30_000)).isEqualTo(30_000);
    assertThat(RockSide.dasKilopascals(100 * PSI, 4000 * PSI)).isCloseTo(15 * PSI, within(1e-9));
    assertThat(RockBase.baseKilopascals(20_000, 30_000)).isEqualTo(50_000);
    assertThat(RockBase.baseKilopascals(40_000, 30_000)).isEqualTo(75_000);
  }

  @Test
  void base_of_sand_and_of_denser_ground() {
    assertThat(SandBase.baseKilopascals(50).orThrow()).isEqualTo(2875);
    assertThat(SandBase.baseKilopascals(51).reason()).isPresent();
    assertThat(SandBase.wideBaseFactor(1.27)).isEqualTo(1);
    assertThat(SandBase.wideBaseFactor(2.54)).isEqualTo(0.5);
    // 0.59 (60 x 101.325/200)^0.8 x 200 = 0.59 x 30.3975^0.8 x 200
    assertThat(SandBase.intermediateKilopascals(60, 200))
        .isCloseTo(0.59 * 15.3557 * 200, withPercentage(0.01));
    assertThat(SandBase.intermediateKilopascals(300, 200))
        .isEqualTo(SandBase.intermediateKilopascals(100, 200));
  }

  @Test
  void base_by_vesic_outside_its_angles_says_so() {
    assertThat(VesicPileBase.base(vesic(24)).reason()).isPresent();
    assertThat(VesicPileBase.base(vesic(46)).reason()).isPresent();
    assertThat(VesicPileBase.base(vesic(25)).value()).isPresent();
    assertThat(VesicPileBase.base(vesic(45)).orThrow().reducedIndex())
        .isCloseTo(VesicPileBase.base(vesic(45)).orThrow().rigidityIndex(), within(1e-9));
    assertThat(BerezantzevBase.baseKilopascals(100, 0, 0.5)).isZero();
  }

  private static VesicPileBase.Case vesic(double degrees) {
    return new VesicPileBase.Case(100, degrees, 30, 50_000, 0.3, 8, 1);
  }

  @Test
  @DisplayName(
      "O'Neill and Reese 1999 (from memory): 5 ft at the top and one diameter at the base do not count; Das, ex. 12.5, lengths 7.0 and 5.5 ft agree")
  void excluded_lengths() {
    assertThat(ExcludedLength.of(0, 12, 5, 0).lengthMetres()).isEqualTo(7);
    assertThat(ExcludedLength.of(12, 20, 0, 2.5).lengthMetres()).isEqualTo(5.5);
    ExcludedLength counted = ExcludedLength.of(3, 10, 1.5, 1);
    assertThat(counted.fromMetres()).isEqualTo(4.5);
    assertThat(counted.toMetres()).isEqualTo(9);
    assertThat(counted.withinMetres(0, 6)).isEqualTo(1.5);
    assertThat(counted.withinMetres(6, 20)).isEqualTo(3);
    assertThat(counted.withinMetres(10, 20)).isZero();
    assertThat(ExcludedLength.of(3, 4, 1.5, 1).lengthMetres()).isZero();
    assertThat(ExcludedLength.TOP_METRES).isEqualTo(5 * FOOT);
  }

  @Test
  @DisplayName(
      "EM 1110-2-2906, chapter 4 (from memory): 2.0, 2.5, 3.0; unusual 1.5, 1.9, 2.25; extreme 1.15, 1.4, 1.7")
  void factors_of_safety() {
    assertThat(TestRegime.STATIC.usual()).isEqualTo(2);
    assertThat(TestRegime.DYNAMIC.usual()).isEqualTo(2.5);
    assertThat(TestRegime.NONE.usual()).isEqualTo(3);
    assertThat(TestRegime.STATIC.unusual()).isEqualTo(1.5);
    assertThat(TestRegime.DYNAMIC.unusual()).isEqualTo(1.9);
    assertThat(TestRegime.NONE.unusual()).isEqualTo(2.25);
    assertThat(TestRegime.STATIC.extreme()).isEqualTo(1.15);
    assertThat(TestRegime.DYNAMIC.extreme()).isEqualTo(1.4);
    assertThat(TestRegime.NONE.extreme()).isEqualTo(1.7);
    assertThat(AllowableLoad.kilonewtons(300, 100, 2)).isEqualTo(200);
    assertThatThrownBy(() -> AllowableLoad.kilonewtons(1, 1, 0.9)).hasMessageContaining("factor");
  }

  @Test
  @DisplayName("AASHTO 10.5.5.2.4-1 (from memory): side, base and uplift factors")
  void lrfd_factors() {
    assertThat(LrfdFactor.CLAY.side()).isEqualTo(0.45);
    assertThat(LrfdFactor.CLAY.base()).isEqualTo(0.40);
    assertThat(LrfdFactor.CLAY.uplift()).isEqualTo(0.35);
    assertThat(LrfdFactor.SAND.side()).isEqualTo(0.55);
    assertThat(LrfdFactor.SAND.base()).isEqualTo(0.50);
    assertThat(LrfdFactor.SAND.uplift()).isEqualTo(0.45);
    assertThat(LrfdFactor.INTERMEDIATE.side()).isEqualTo(0.60);
    assertThat(LrfdFactor.ROCK.uplift()).isEqualTo(0.40);
    assertThat(LrfdFactor.STATIC_TEST.base()).isEqualTo(0.70);
    assertThat(LrfdFactor.NOT_REDUNDANT).isEqualTo(0.8);
    assertThat(EurocodePile.UK_R4_UNCHECKED.designKilonewtons(1600, 2000))
        .isCloseTo(2000 / 1.2, within(1e-9));
    assertThat(EurocodePile.R1.designKilonewtons(1600, 2000)).isEqualTo(3600);
  }

  @Property(seed = Seeds.BUILD)
  void stronger_clay_never_holds_less(
      @ForAll @DoubleRange(min = 0, max = 250) double strength,
      @ForAll @DoubleRange(min = 0, max = 250) double other) {
    double weak = Math.min(strength, other);
    double strong = Math.max(strength, other);
    assertThat(side2018(weak)).isLessThanOrEqualTo(side2018(strong) + 1e-9);
    assertThat(ClayBase.factor(weak, 10)).isLessThanOrEqualTo(ClayBase.factor(strong, 10));
  }

  private static double side2018(double strength) {
    return ClayAlpha.sideKilopascals(ClayAlpha.brown2018(strength), strength);
  }

  @Property(seed = Seeds.BUILD)
  void sides_of_sand_are_finite_and_limited(
      @ForAll @DoubleRange(min = 0, max = 100) double depth,
      @ForAll @DoubleRange(min = 0, max = 100) double blows,
      @ForAll @DoubleRange(min = 0, max = 5000) double stress) {
    double side =
        SandBetaOneillReese.sideKilopascals(SandBetaOneillReese.sand(depth, blows), stress);
    assertThat(side).isBetween(0.0, 200.0);
    if (blows == 0 || stress == 0) {
      assertThat(side).isZero();
    }
  }
}
