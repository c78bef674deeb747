package underhold.mechanics.concrete;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule of the concrete calculators at its very edge. */
class ConcreteBoundariesTest {
  private static final double PSI = 6.894757293168361;
  private static final double INCH = 0.0254;

  @ParameterizedTest(name = "{0} is refused")
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void what_no_section_has_is_refused(double bad) {
    PlainConcrete plain = PlainConcrete.normalWeight(20_000);
    refused(() -> PlainConcrete.normalWeight(bad), "concrete strength is");
    refused(
        () -> new PlainConcrete(20_000, bad, PlainConcrete.Edition.METRIC),
        "lightweight factor is");
    refused(() -> PlainConcrete.sectionModulus(bad), "thickness is");
    refused(() -> PlainConcrete.effectiveThickness(bad), "thickness is");
    refused(() -> plain.designMoment(bad), "section modulus is");
    refused(() -> plain.designShear(bad), "shear area is");
    refused(() -> plain.designBearing(bad, 1), "loaded area is");
    refused(() -> new ReinforcedSection(bad, 1, 1, 1, 1), "width is");
    refused(() -> new ReinforcedSection(1, bad, 1, 1, 1), "effective depth is");
    refused(() -> new ReinforcedSection(1, 1, bad, 1, 1), "steel area is");
    refused(() -> new ReinforcedSection(1, 1, 1, bad, 1), "concrete strength is");
    refused(() -> new ReinforcedSection(1, 1, 1, 1, bad), "steel yield is");
    refused(() -> new SpanOverGap(bad, 1, 1), "design moment is");
    refused(() -> new SpanOverGap(1, bad, 1), "design shear is");
    refused(() -> new SpanOverGap(1, 1, bad), "factored load is");
  }

  private static void refused(Runnable call, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(call::run)
        .withMessageStartingWith(name)
        .withMessageEndingWith("it must be above 0");
  }

  @Test
  @DisplayName(
      "ACI 318-19 chapter 14 (from memory): 3,000 psi gives fr 273.9 psi, v 73.03 psi, bearing 0.51"
          + " f'c sqrt(A2/A1)")
  void plain_concrete_by_hand() {
    PlainConcrete plain = PlainConcrete.normalWeight(3000 * PSI);
    // sqrt 3,000 = 54.772; x 5 = 273.86; x 4/3 = 73.03
    assertThat(plain.flexuralTension() / PSI).isCloseTo(273.86, within(0.01));
    assertThat(plain.shearStress() / PSI).isCloseTo(73.03, within(0.01));
    PlainConcrete light = new PlainConcrete(3000 * PSI, 0.75, PlainConcrete.Edition.INCH_POUND);
    assertThat(light.flexuralTension() / PSI).isCloseTo(205.40, within(0.01));
    assertThat(light.shearStress() / PSI).isCloseTo(54.77, within(0.01));
    assertThat(PlainConcrete.sectionModulus(0.6)).isCloseTo(0.06, within(1e-12));
    assertThat(PlainConcrete.LEAST_STRENGTH_KILOPASCALS).isCloseTo(17_236.9, within(0.1));
    // 0.6 x 0.85 x 20,000 x 0.5 x sqrt(0.72 / 0.5 = 1.44) = 6,120
    PlainConcrete twenty = PlainConcrete.normalWeight(20_000);
    assertThat(twenty.designBearing(0.5, 0.72)).isCloseTo(6120, within(1e-6));
    assertThat(twenty.designBearing(0.5, 2)).isCloseTo(10_200, within(1e-6));
    assertThat(twenty.designShear(2)).isCloseTo(0.6 * twenty.shearStress() * 2, within(1e-9));
  }

  @Test
  @DisplayName("ACI 318-19, 14.5.2.1 (from memory): a very weak concrete is held by 0.85 f'c")
  void crushing_governs_a_weak_concrete() {
    // f'c 25 psi: 5 sqrt(25) = 25 psi passes 0.85 x 25 = 21.25 psi
    PlainConcrete weak = PlainConcrete.normalWeight(25 * PSI);
    assertThat(weak.designMoment(1) / PSI).isCloseTo(0.6 * 21.25, within(1e-9));
    // f'c 100 psi: 5 x 10 = 50 psi, below 85 psi
    assertThat(PlainConcrete.normalWeight(100 * PSI).designMoment(2) / PSI)
        .isCloseTo(0.6 * 50 * 2, within(1e-9));
  }

  @Test
  @DisplayName(
      "ACI 318-19, 14.5.1.7 (from memory): 2 in are not counted against soil, never below 0")
  void thickness_against_soil() {
    assertThat(PlainConcrete.effectiveThickness(10 * INCH) / INCH).isCloseTo(8, within(1e-9));
    assertThat(PlainConcrete.effectiveThickness(2 * INCH)).isZero();
    assertThat(PlainConcrete.effectiveThickness(INCH)).isZero();
  }

  @ParameterizedTest(name = "f''c {0} psi: beta1 {1}")
  @DisplayName("ACI 318-19, Table 22.2.2.4.3 (from memory): beta1 at its limits and between")
  @CsvSource({"2500, 0.85", "4000, 0.85", "5000, 0.80", "7000, 0.70", "8000, 0.65", "10000, 0.65"})
  void stress_block_share(double psi, double beta) {
    ReinforcedSection section = new ReinforcedSection(0.5, 0.6, 0.002, psi * PSI, 420_000);
    // a = 0.002 x 420,000 / (0.85 f'c 0.5)
    double block = 840 / (0.425 * psi * PSI);
    assertThat(section.stressBlock()).isCloseTo(block, withPercentage(1e-9));
    assertThat(section.neutralAxis()).isCloseTo(block / beta, withPercentage(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: 0.3 x 0.5 m, 800 mm2 of 400 MPa in 20 MPa: a 62.7 mm, c 73.8 mm, strain 0.0173,"
          + " 135.0 kN m")
  void reinforced_section_by_hand() {
    ReinforcedSection section = new ReinforcedSection(0.3, 0.5, 0.0008, 20_000, 400_000);
    // a = 320 / (0.85 x 20,000 x 0.3 = 5,100) = 0.062745; 20 MPa is 2,901 psi, so beta1 = 0.85
    assertThat(section.stressBlock()).isCloseTo(0.062745, within(1e-6));
    assertThat(section.neutralAxis()).isCloseTo(0.073818, within(1e-6));
    // 0.003 x (0.5 - 0.073818) / 0.073818 = 0.01732
    assertThat(section.steelStrain()).isCloseTo(0.01732, within(1e-5));
    assertThat(section.tensionControlled()).isTrue();
    // 0.9 x 320 x (0.5 - 0.0313725) = 134.965
    assertThat(section.designMoment()).isCloseTo(134.965, within(0.001));
    // d / 10 in = 1.9685; lambda_s = sqrt(2 / 2.9685) = 0.82082; rho^(1/3) = 0.0053333^(1/3) =
    // 0.174716; sqrt(20,000 x 6.894757) = 371.342; 0.75 x 8 x 0.82082 x 0.174716 x 371.342 x 0.15
    assertThat(section.designShear()).isCloseTo(47.93, within(0.01));
  }

  @Test
  @DisplayName("ACI 318-19, 22.5.5.1.3 (from memory): the size factor ends at 1, where d is 10 in")
  void size_factor_of_shear() {
    // d 5 in: sqrt(2 / 1.5) = 1.155 counts as 1. rho = 1/125; cube root 0.2; sqrt 4,000 = 63.246.
    ReinforcedSection shallow =
        new ReinforcedSection(12.5 * INCH, 5 * INCH, 0.5 * INCH * INCH, 4000 * PSI, 60_000 * PSI);
    double area = 62.5 * INCH * INCH;
    assertThat(shallow.designShear() / (PSI * area))
        .isCloseTo(0.75 * 8 * 0.2 * 63.24555, withPercentage(0.001));
    ReinforcedSection deep =
        new ReinforcedSection(12.5 * INCH, 20 * INCH, 2 * INCH * INCH, 4000 * PSI, 60_000 * PSI);
    // sqrt(2 / 3) = 0.81650
    assertThat(deep.designShear() / (PSI * 4 * area))
        .isCloseTo(0.75 * 8 * 0.816497 * 0.2 * 63.24555, withPercentage(0.001));
  }

  @Test
  @DisplayName(
      "ACI 318-19, 21.2.2 (from memory): a steel strain of 0.005 itself is tension controlled")
  void tension_controlled_at_its_limit() {
    // c = 0.003 / 0.008 d = 0.375 d; with d 0.4: c 0.15, a = 0.85 x 0.15 = 0.1275;
    // As = 0.85 x 20,000 x 0.3 x 0.1275 / 400,000 = 0.001625625
    assertThat(new ReinforcedSection(0.3, 0.4, 0.0016256, 20_000, 400_000).tensionControlled())
        .isTrue();
    ReinforcedSection over = new ReinforcedSection(0.3, 0.4, 0.0016257, 20_000, 400_000);
    assertThat(over.tensionControlled()).isFalse();
    assertThatExceptionOfType(IllegalStateException.class)
        .isThrownBy(over::designMoment)
        .withMessageContaining("phi = 0.90 does not hold");
  }

  @Test
  @DisplayName(
      "Own case, statics: 90 kN m and 60 kN under 20 kN/m: 6 m by moment and shear; 3 m past a"
          + " support")
  void span_by_hand() {
    SpanOverGap even = new SpanOverGap(90, 60, 20);
    assertThat(even.byMoment()).isCloseTo(6, within(1e-12)); // sqrt(720 / 20)
    assertThat(even.byShear()).isCloseTo(6, within(1e-12)); // 120 / 20
    assertThat(even.longest()).isCloseTo(6, within(1e-12));
    assertThat(even.longestCantilever()).isCloseTo(3, within(1e-12)); // sqrt(180 / 20), 60 / 20
    SpanOverGap bent = new SpanOverGap(10, 60, 20);
    assertThat(bent.longest()).isCloseTo(2, within(1e-12)); // sqrt(80 / 20)
    assertThat(bent.longestCantilever()).isCloseTo(1, within(1e-12)); // sqrt(20 / 20)
    SpanOverGap sheared = new SpanOverGap(90, 20, 20);
    assertThat(sheared.longest()).isCloseTo(2, within(1e-12));
    assertThat(sheared.longestCantilever()).isCloseTo(1, within(1e-12));
  }
}
