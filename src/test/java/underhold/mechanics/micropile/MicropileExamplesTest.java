package underhold.mechanics.micropile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples in the units in which they are printed. */
class MicropileExamplesTest {
  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;
  private static final double PSI = 6.894757293;
  private static final double KSI = 1000 * PSI;
  private static final double KIP = 4.448221615;
  private static final double KIP_INCH = KIP * INCH;

  /** Printed to four figures. */
  private static final Percentage PRINTED = withPercentage(0.2);

  private static final CasingSection SEVEN = CasingSection.inches(7, 0.5);

  private static FhwaCapacity pile(CasingSection casing, double barInches, double groutKsi) {
    return new FhwaCapacity(
        new PileMaterials(groutKsi * KSI, 80 * KSI, 75 * KSI), casing, barInches * INCH * INCH);
  }

  @Test
  @DisplayName(
      "FHWA NHI-05-039 (2005), p. 5-13, sample: f'c 4 ksi, casing 6.63 in2, grout 17.13 in2: 276 kip printed, 276.7 exact")
  void fhwa_cased_compression() {
    double kips = pile(CasingSection.inches(5.5, 0.415), 0, 4).casedCompression() / KIP;
    assertThat(kips).isCloseTo(276, withPercentage(0.5)); // printed without decimals
    assertThat(kips).isCloseTo(276.7, within(0.2));
  }

  @Test
  @DisplayName(
      "Own case: 7 x 0.5 in N80 with #14 Gr 75, f'c 4 ksi: cased 480.9 and 514.0, uncased in 8 in 156.1 and 92.8 kip; IBC 428.6")
  void cased_and_uncased() {
    FhwaCapacity pile = pile(SEVEN, 2.25, 4);
    assertThat(pile.groutInCasing() / INCH / INCH).isCloseTo(26.02, PRINTED);
    assertThat(pile.casedCompressionYield() / KSI).isCloseTo(75, within(1e-6));
    assertThat(pile.casedCompression() / KIP).isCloseTo(480.9, PRINTED);
    assertThat(pile.casedTension() / KIP).isCloseTo(514.0, PRINTED);
    assertThat(pile.uncasedCompression(8 * INCH) / KIP).isCloseTo(156.1, PRINTED);
    assertThat(pile.uncasedTension() / KIP).isCloseTo(92.8, PRINTED);
    IbcCapacity code = new IbcCapacity(pile.materials(), SEVEN, 2.25 * INCH * INCH);
    assertThat(code.casedCompression() / KIP).isCloseTo(428.6, PRINTED);
    assertThat(code.steelShareCased()).isCloseTo((326.7 + 67.5) / 428.6, withPercentage(0.1));
    // 0.30 x 4 x 48.02 + 30 x 2.25 = 57.6 + 67.5
    assertThat(code.uncasedCompression(8 * INCH) / KIP).isCloseTo(125.1, PRINTED);
  }

  @Test
  @DisplayName(
      "IBC 2018 Table 1810.3.2.6 (from memory, verify): 0.40 x 80 just reaches the 32 ksi of the pipe, 0.40 x 75 the 30 ksi of the bar")
  void code_caps() {
    IbcCapacity strong =
        new IbcCapacity(new PileMaterials(4 * KSI, 110 * KSI, 120 * KSI), SEVEN, 1e-3);
    assertThat(strong.pipeStress()).isCloseTo(32 * KSI, within(1e-3));
    assertThat(strong.barStress()).isCloseTo(30 * KSI, within(1e-3));
    IbcCapacity mild = new IbcCapacity(new PileMaterials(4 * KSI, 50 * KSI, 60 * KSI), SEVEN, 1e-3);
    assertThat(mild.pipeStress()).isCloseTo(20 * KSI, within(1e-6));
    assertThat(mild.barStress()).isCloseTo(24 * KSI, within(1e-6));
  }

  @Test
  @DisplayName(
      "Own case: 7 x 0.5 in N80 with #18 Gr 75, f'c 5: cased 549.5 and 586.2, less 1/16 in 501.4, uncased 233.5 and 165.0 kip")
  void heavier_bar_and_corrosion() {
    FhwaCapacity pile = pile(SEVEN, 4.0, 5);
    assertThat(pile.casedCompression() / KIP).isCloseTo(549.5, PRINTED);
    assertThat(pile.casedTension() / KIP).isCloseTo(586.2, PRINTED);
    assertThat(pile.uncasedCompression(8 * INCH) / KIP).isCloseTo(233.5, PRINTED);
    assertThat(pile.uncasedTension() / KIP).isCloseTo(165.0, PRINTED);
    CasingSection worn = SEVEN.less(Corrosion.FHWA_DEDUCTION_METRES);
    assertThat(pile(worn, 4.0, 5).casedCompression() / KIP).isCloseTo(501.4, PRINTED);
  }

  @Test
  @DisplayName(
      "Steel above 87 ksi counts as 87 ksi in compression: 0.003 x 29,000 ksi (FHWA NHI-05-039, p. 5-13)")
  void crushing_limit() {
    FhwaCapacity strong =
        new FhwaCapacity(
            new PileMaterials(4 * KSI, 110 * KSI, 120 * KSI), SEVEN, 1.25 * INCH * INCH);
    assertThat(strong.casedCompressionYield() / KSI).isCloseTo(87, within(1e-6));
    assertThat(strong.casedTensionYield() / KSI).isCloseTo(110, within(1e-6));
    assertThat(strong.barCompressionYield() / KSI).isCloseTo(87, within(1e-6));
  }

  @ParameterizedTest(name = "Own case, bond: {0} kN, {1} kPa, {2} m, FS {3}: {4} m")
  @CsvSource({
    "533.7866, 137.895146, 0.2032, 2.0, 12.128",
    "533.7866, 137.895146, 0.2032, 2.5, 15.161",
    "600, 180, 0.18, 2.0, 11.79",
    "600, 180, 0.18, 2.5, 14.74",
    "667.2, 200, 0.2032, 2.0, 10.45"
  })
  void bond_length(double load, double bond, double hole, double factor, double length) {
    assertThat(new BondZone(bond, hole, factor).lengthFor(load))
        .isCloseTo(length, withPercentage(0.1));
  }

  @Test
  @DisplayName("Own case: plunge of 5 ft at 200 kPa in 8 in, FS 2: 21.9 kip")
  void plunge() {
    assertThat(new BondZone(200, 0.2032, 2).allowableLoad(5 * FOOT) / KIP).isCloseTo(21.9, PRINTED);
  }

  @Test
  @DisplayName(
      "Own case: 7 x 0.5 in N80, 40 kip at 9 in: fa 3.918, fb 23.23 ksi, ratio 0.632, greatest e 15.27 in, joint 7.387 in3 and 291.2 kip-in")
  void combined_stress_and_joint() {
    CombinedStress stress = CombinedStress.braced(SEVEN, 80 * KSI);
    assertThat(stress.axialStress(40 * KIP) / KSI).isCloseTo(3.918, PRINTED);
    assertThat(stress.bendingStress(360 * KIP_INCH) / KSI).isCloseTo(23.23, PRINTED);
    assertThat(stress.ratio(40 * KIP, 360 * KIP_INCH).orElseThrow()).isCloseTo(0.632, PRINTED);
    assertThat(stress.greatestMoment(40 * KIP) / (40 * KIP) / INCH).isCloseTo(15.27, PRINTED);
    ThreadedJoint joint = new ThreadedJoint(SEVEN);
    assertThat(joint.sectionModulus() / Math.pow(INCH, 3)).isCloseTo(7.387, PRINTED);
    assertThat(joint.allowableMoment(stress, 40 * KIP) / KIP_INCH).isCloseTo(291.2, PRINTED);
    assertThat(joint.area() / SEVEN.area()).isCloseTo(0.48, within(0.005)); // two figures
    assertThat(joint.secondMoment() / SEVEN.secondMoment()).isCloseTo(0.44, within(0.005));
    assertThat(joint.sectionModulus() / SEVEN.sectionModulus()).isCloseTo(0.48, within(0.005));
  }

  @Test
  @DisplayName(
      "Own case: 50 kip at 10 in on 7 x 0.5 in N80: 0.130 + 0.733 = 0.863, joint 282.7 kip-in")
  void combined_stress_of_a_heavier_bracket() {
    CombinedStress stress = CombinedStress.braced(SEVEN, 80 * KSI);
    assertThat(stress.ratio(50 * KIP, 0).orElseThrow()).isCloseTo(0.130, withPercentage(0.4));
    assertThat(stress.ratio(50 * KIP, 500 * KIP_INCH).orElseThrow()).isCloseTo(0.863, PRINTED);
    assertThat(new ThreadedJoint(SEVEN).allowableMoment(stress, 50 * KIP) / KIP_INCH)
        .isCloseTo(282.7, PRINTED);
  }

  @ParameterizedTest(
      name =
          "Chart FHWA NHI-05-039 fig. 5-23 (from memory, verify): {0} x {1} in at {2} ksi reads {4}, computed {3} psi")
  @CsvSource({
    "5.5, 0.361, 80, 96.9, 97",
    "7, 0.5, 80, 106.0, 105",
    "5.5, 0.5, 36, 27.8, 27",
    "6.625, 0.5, 36, 22.8, 23"
  })
  void mascardi_limit(double od, double wall, double yield, double computed, double read) {
    double psi =
        BracedBuckling.of(CasingSection.inches(od, wall), yield * KSI).limitingStiffness() / PSI;
    assertThat(psi).isCloseTo(computed, withPercentage(0.5));
    assertThat(psi).isCloseTo(read, withPercentage(4)); // reading of a chart
  }

  @ParameterizedTest(name = "Own case: Es,lim of {0} x {1} in N80 is {2} psi")
  @CsvSource({"5.5, 0.415, 112", "9.625, 0.545, 83"})
  void mascardi_limit_of_other_casings(double od, double wall, double psi) {
    assertThat(
            BracedBuckling.of(CasingSection.inches(od, wall), 80 * KSI).limitingStiffness() / PSI)
        .isCloseTo(psi, withPercentage(0.7)); // three and two figures
  }

  @Test
  @DisplayName(
      "Solid bar: Es,lim = pi Fy^2 / E, 609.4 psi at 75 ksi (FHWA chart reads 610; from memory, verify)")
  void mascardi_limit_of_a_bar() {
    double diameter = 0.05;
    double area = Math.PI * diameter * diameter / 4;
    double inertia = Math.PI * Math.pow(diameter, 4) / 64;
    BracedBuckling bar =
        new BracedBuckling(FreeLength.STEEL_MODULUS_KILOPASCALS * inertia, 75 * KSI * area);
    assertThat(bar.limitingStiffness() / PSI).isCloseTo(609.4, withPercentage(0.05));
  }

  @Test
  @DisplayName(
      "Own case: 7 x 0.5 in N80 in soil of 50 psi: Pcr 560.9 kip below Fy A 816.8, half-wave 19.6 ft")
  void braced_buckling() {
    BracedBuckling buckling = BracedBuckling.of(SEVEN, 80 * KSI);
    assertThat(buckling.limitingStiffness() / PSI).isCloseTo(106.0, PRINTED);
    assertThat(buckling.leastCriticalLoad(50 * PSI) / KIP).isCloseTo(560.9, PRINTED);
    assertThat(buckling.yieldLoad() / KIP).isCloseTo(816.8, PRINTED);
    assertThat(buckling.halfWave(50 * PSI) / FOOT).isCloseTo(19.6, withPercentage(0.3));
  }

  @ParameterizedTest(
      name = "Own case: 7 x 0.5 in N80, f''c {0} ksi, free {1} ft: Kl/r {2}, {3} ksi, {4} kip")
  @CsvSource({
    "4, 8, 41.7, 33.16, 378.5",
    "4, 12, 62.5, 27.44, 313.2",
    "4, 18, 93.7, 15.37, 175.5",
    "5, 10, 52.1, -, 358.3",
    "5, 15, 78.1, -, 253.7",
    "5, 20, 104.1, -, 145.9",
    "5, 25, 130.2, -, 93.4"
  })
  void free_length(double grout, double feet, double ratio, String stress, double kips) {
    FreeLength free = new FreeLength(SEVEN, 80 * KSI, feet * FOOT, 1.0);
    assertThat(free.limitingSlenderness()).isCloseTo(84.59, PRINTED);
    assertThat(free.slenderness()).isCloseTo(ratio, PRINTED);
    if (!stress.equals("-")) {
      assertThat(free.allowableStress() / KSI).isCloseTo(Double.parseDouble(stress), PRINTED);
    }
    assertThat(pile(SEVEN, 0, grout).casedCompression() * free.shareOfCapacity() / KIP)
        .isCloseTo(kips, PRINTED);
  }

  @Test
  @DisplayName(
      "Own case: 100 kip, 15 ft cased and 20 ft of bond: EA 398,024 and 282,787 kip, 0.0452 + 0.0424 in")
  void shortening() {
    double cased = PileShortening.axialStiffness(SEVEN.area(), SEVEN.boreArea(), 4 * KSI);
    double bar = 4 * INCH * INCH;
    double hole = Math.PI * 16 * INCH * INCH - bar;
    double bond = PileShortening.axialStiffness(bar, hole, 4 * KSI);
    assertThat(cased / KIP).isCloseTo(398_024, withPercentage(0.01));
    assertThat(bond / KIP).isCloseTo(282_787, withPercentage(0.01));
    double upper = PileShortening.whole(100 * KIP, 15 * FOOT, cased);
    double lower = PileShortening.EVEN_TRANSFER * PileShortening.whole(100 * KIP, 20 * FOOT, bond);
    assertThat(upper / INCH).isCloseTo(0.0452, PRINTED);
    assertThat(lower / INCH).isCloseTo(0.0424, PRINTED);
    assertThat((upper + lower) * 1000).isCloseTo(2.23, PRINTED);
  }

  @Test
  @DisplayName(
      "Own case: 100 kip, 20 ft cased with #18 and 30 ft of bond, f'c 5: EA 509,933 and 302,473 kip, 0.1066 in; 80 % preload leaves 0.0213")
  void shortening_with_preload() {
    double bar = 4 * INCH * INCH;
    double cased =
        PileShortening.axialStiffness(SEVEN.area() + bar, SEVEN.boreArea() - bar, 5 * KSI);
    double bond = PileShortening.axialStiffness(bar, Math.PI * 16 * INCH * INCH - bar, 5 * KSI);
    assertThat(cased / KIP).isCloseTo(509_933, withPercentage(0.01));
    assertThat(bond / KIP).isCloseTo(302_473, withPercentage(0.01));
    double total =
        PileShortening.whole(100 * KIP, 20 * FOOT, cased)
            + PileShortening.whole(100 * KIP, 30 * FOOT, bond) / 2;
    assertThat(total / INCH).isCloseTo(0.1066, PRINTED);
    assertThat(PileShortening.residual(total, 0.8) / INCH).isCloseTo(0.0213, PRINTED);
    assertThat(PileShortening.residual(total, 1.1)).isZero();
  }

  @Test
  @DisplayName(
      "AASHTO LRFD 10.9.3 (from memory, verify): 7 x 0.5 in N80 with #14, f'c 4: 0.75 x 0.85 x (88.5 + 934.5) = 652.2 and 0.80 x 934.5 = 747.6 kip, by hand")
  void load_and_resistance_factors() {
    LrfdCapacity factored = new LrfdCapacity(pile(SEVEN, 2.25, 4));
    assertThat(factored.casedCompression() / KIP).isCloseTo(652.2, PRINTED);
    assertThat(factored.casedTension() / KIP).isCloseTo(747.6, PRINTED);
  }
}
