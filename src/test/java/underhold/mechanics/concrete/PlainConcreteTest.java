package underhold.mechanics.concrete;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class PlainConcreteTest {
  private static final double PSI = 6.894757293;
  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;
  private static final double KIP = 4.448221615;

  @Test
  @DisplayName(
      "Own case: pier 36 in thick against soil, f'c 3,000 psi: phi Mn 31.66 kip-ft/ft, phi Vn 17.88 kip/ft")
  void unreinforced_pier() {
    PlainConcrete concrete = PlainConcrete.normalWeight(3000 * PSI);
    double thickness = PlainConcrete.effectiveThickness(36 * INCH);
    assertThat(thickness / INCH).isCloseTo(34, within(1e-9));
    double moment =
        concrete.designMoment(
            PlainConcrete.sectionModulus(thickness)); // kN m per m = 4.448 x kip ft/ft
    assertThat(moment / KIP).isCloseTo(31.66, withPercentage(0.05));
    assertThat(concrete.designShear(thickness) / KIP * FOOT).isCloseTo(17.88, withPercentage(0.05));
  }

  @Test
  @DisplayName(
      "Own case: plain strip 12 x 36 in on soil, f'c 2,500 psi: 28.90 kip-ft, 16.3 kip; spans 6.21/5.44 and 4.81/3.26 ft")
  void plain_strip_spans() {
    PlainConcrete concrete = PlainConcrete.normalWeight(2500 * PSI);
    double h = 34 * INCH;
    double b = 12 * INCH;
    double moment = concrete.designMoment(b * h * h / 6);
    double shear = concrete.designShear(b * h);
    assertThat(moment / KIP / FOOT).isCloseTo(28.90, withPercentage(0.1));
    assertThat(shear / KIP).isCloseTo(16.3, withPercentage(0.2));
    SpanOverGap six = new SpanOverGap(moment, shear, 6 * KIP / FOOT);
    assertThat(six.byMoment() / FOOT).isCloseTo(6.21, within(0.01));
    assertThat(six.longest() / FOOT).isCloseTo(5.44, within(0.01));
    SpanOverGap ten = new SpanOverGap(moment, shear, 10 * KIP / FOOT);
    assertThat(ten.byMoment() / FOOT).isCloseTo(4.81, within(0.01));
    assertThat(ten.byShear() / FOOT).isCloseTo(3.26, within(0.01));
    assertThat(ten.longestCantilever()).isCloseTo(ten.longest() / 2, within(1e-9));
  }

  @Test
  @DisplayName(
      "ACI 318M-19 (from memory): the metric coefficients 0.42 and 0.11 lie within 1.5 % of the inch-pound ones")
  void metric_and_inch_pound_editions_agree() {
    PlainConcrete metric = new PlainConcrete(25_000, 1, PlainConcrete.Edition.METRIC);
    PlainConcrete inch = PlainConcrete.normalWeight(25_000);
    assertThat(metric.flexuralTension()).isCloseTo(0.42 * 5 * 1000, within(1e-6));
    assertThat(metric.shearStress()).isCloseTo(0.11 * 5 * 1000, within(1e-6));
    assertThat(inch.flexuralTension()).isCloseTo(metric.flexuralTension(), withPercentage(1.5));
    assertThat(inch.shearStress()).isCloseTo(metric.shearStress(), withPercentage(1.5));
  }

  @Test
  @DisplayName(
      "Published beam of a university course (reinforced concrete, 20 x 26 in, seven No. 9): a 6.17 in, c 7.27 in, 7,338,870 lb-in")
  void reinforced_beam() {
    ReinforcedSection beam =
        new ReinforcedSection(20 * INCH, 22.5 * INCH, 7 * INCH * INCH, 4000 * PSI, 60_000 * PSI);
    assertThat(beam.stressBlock() / INCH).isCloseTo(6.17, within(0.01));
    assertThat(beam.neutralAxis() / INCH).isCloseTo(7.27, within(0.01));
    assertThat(beam.steelStrain()).isCloseTo(0.0063, within(0.0001));
    assertThat(beam.designMoment() / KIP * 1000 / INCH).isCloseTo(7_338_870, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Own case: shear of that beam without stirrups, 8 lambda_s rho^(1/3) sqrt(f'c) b d, by hand 33.1 kip")
  void reinforced_beam_shear() {
    ReinforcedSection beam =
        new ReinforcedSection(20 * INCH, 22.5 * INCH, 7 * INCH * INCH, 4000 * PSI, 60_000 * PSI);
    // lambda_s = sqrt(2/3.25) = 0.7845; rho = 7/450 = 0.015556, cube root 0.24964; sqrt 4000 =
    // 63.246
    double kip = 0.75 * 8 * 0.7845 * 0.24964 * 63.246 * 450 / 1000;
    assertThat(beam.designShear() / KIP).isCloseTo(kip, withPercentage(0.05));
  }

  @Test
  void an_over_reinforced_section_is_refused() {
    ReinforcedSection beam = new ReinforcedSection(0.3, 0.4, 0.006, 20_000, 420_000);
    assertThat(beam.tensionControlled()).isFalse();
    assertThatThrownBy(beam::designMoment).hasMessageContaining("tension controlled");
  }

  @Test
  @DisplayName(
      "ACI 318-19 14.5.6 (from memory): bearing 0.6 x 0.85 f'c A1, at most doubled by a wider support")
  void bearing() {
    PlainConcrete concrete = PlainConcrete.normalWeight(20_000);
    assertThat(concrete.designBearing(0.3, 0.3)).isCloseTo(0.6 * 0.85 * 20_000 * 0.3, within(1e-6));
    assertThat(concrete.designBearing(0.3, 30))
        .isCloseTo(2 * 0.6 * 0.85 * 20_000 * 0.3, within(1e-6));
    assertThatThrownBy(() -> concrete.designBearing(0.3, 0.2)).hasMessageContaining("smaller");
  }

  @Test
  @DisplayName(
      "Own case: slab edge 4 in thick, f'c 3,000 psi, no soil deduction: 0.438 kip-ft/ft, continuous over 2.1 ft under 1 kip/ft")
  void unreinforced_slab_edge_between_brackets() {
    PlainConcrete concrete = PlainConcrete.normalWeight(3000 * PSI);
    double moment =
        concrete.designMoment(PlainConcrete.sectionModulus(4 * INCH)) / KIP; // kip-ft per ft
    assertThat(moment).isCloseTo(0.438, withPercentage(0.1));
    assertThat(Math.sqrt(10 * moment / 1)).isCloseTo(2.1, within(0.01)); // M = w L^2 / 10
  }

  @Property(seed = Seeds.BUILD)
  void a_heavier_load_never_lengthens_the_span(
      @ForAll @DoubleRange(min = 1, max = 500) double moment,
      @ForAll @DoubleRange(min = 1, max = 500) double shear,
      @ForAll @DoubleRange(min = 1, max = 400) double load) {
    assertThat(new SpanOverGap(moment, shear, load * 1.1).longest())
        .isLessThan(new SpanOverGap(moment, shear, load).longest());
  }
}
