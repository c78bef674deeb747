package underhold.mechanics.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;

class EurocodeTest {
  private static final RolledSection HEB400 = UsSteel.shape("HEB400");
  private static final EurocodeBending BEAM = new EurocodeBending(HEB400, Steel.S355);

  @Test
  @DisplayName(
      "Own case: HEB400 S355, 4.5 m, load at the centroid: Mcr 3742, lambda 0.554, chi 0.938, Mb"
          + " 1075.7 kN m")
  void load_at_the_centroid() {
    double critical = BEAM.criticalMoment(4.5, 1.365, 0.553, 0);
    assertThat(critical).isCloseTo(3742, withPercentage(1));
    assertThat(BEAM.slenderness(critical)).isCloseTo(0.554, withPercentage(1));
    assertThat(BEAM.reduction(critical)).isCloseTo(0.938, withPercentage(1));
    assertThat(BEAM.bucklingMoment(critical)).isCloseTo(1075.7, withPercentage(0.2));
  }

  @Test
  @DisplayName(
      "Own case: the same with the load on the top flange: Mcr 2426.8, lambda 0.688, chi 0.876, Mb"
          + " 1004.8 kN m")
  void load_on_the_top_flange() {
    double critical =
        BEAM.criticalMoment(4.5, EurocodeBending.MIDSPAN_C1, EurocodeBending.MIDSPAN_C2, 0.2);
    assertThat(critical).isCloseTo(2426.8, withPercentage(0.2));
    assertThat(BEAM.slenderness(critical)).isCloseTo(0.688, within(0.001));
    assertThat(BEAM.reduction(critical)).isCloseTo(0.876, within(0.001));
    assertThat(BEAM.bucklingMoment(critical)).isCloseTo(1004.8, withPercentage(0.2));
  }

  @Test
  @DisplayName(
      "Own case: HEB400 S355: Vpl 1434 kN; patch inside, ss 200: 2168.6, end, ss 300: 2005.7")
  void shear_and_patch_load() {
    assertThat(EurocodeShear.resistance(HEB400, Steel.S355)).isCloseTo(1434, withPercentage(0.1));
    assertThat(PatchLoad.inside(HEB400, Steel.S355, 0.2).kilonewtons())
        .isCloseTo(2168.6, withPercentage(0.1));
    assertThat(PatchLoad.end(HEB400, Steel.S355, 0.3, 0).kilonewtons())
        .isCloseTo(2005.7, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Own case: HEB400 S235, end, ss 100, c 0: kF 3.70, lambda 0.355, m2 0: 773 kN by hand")
  void stocky_end_patch() {
    double flange = 0.024;
    double factor = 2 + 6 * 0.1 / 0.352;
    double edge = Math.min(factor * 210e6 * 0.0135 * 0.0135 / (2 * 235e3 * 0.352), 0.1);
    double m1 = 0.3 / 0.0135;
    double length =
        Math.min(
            0.1 + 2 * flange * (1 + Math.sqrt(m1)),
            Math.min(
                edge + flange * Math.sqrt(m1 / 2 + Math.pow(edge / flange, 2)),
                edge + flange * Math.sqrt(m1)));
    double critical = 0.9 * factor * 210e6 * Math.pow(0.0135, 3) / 0.352;
    assertThat(Math.sqrt(length * 0.0135 * 235e3 / critical)).isLessThan(0.5);
    assertThat(PatchLoad.end(HEB400, Steel.S235, 0.1, 0).kilonewtons())
        .isCloseTo(length * 0.0135 * 235e3, withPercentage(1e-6));
    assertThat(PatchLoad.end(HEB400, Steel.S235, 0.1, 0.1).kilonewtons())
        .isGreaterThan(PatchLoad.end(HEB400, Steel.S235, 0.1, 0).kilonewtons());
  }

  @Test
  void a_patch_longer_than_the_web_is_deep_counts_only_that_depth() {
    assertThat(PatchLoad.inside(HEB400, Steel.S355, 0.352).kilonewtons())
        .isCloseTo(PatchLoad.inside(HEB400, Steel.S355, 0.9).kilonewtons(), within(1e-6));
    assertThat(PatchLoad.end(HEB400, Steel.S355, 0.352, 0).kilonewtons())
        .isCloseTo(PatchLoad.end(HEB400, Steel.S355, 0.9, 0).kilonewtons(), within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"HEA260,3", "HEA280,3", "HEA300,3", "HEA320,2", "HEA400,1", "HEB400,1", "IPE600,1"})
  @DisplayName("EN 1993-1-1 Table 5.2 (from memory): classes in bending, S355, by hand")
  void classes(String name, int expected) {
    assertThat(EurocodeClass.inBending(UsSteel.shape(name), Steel.S355)).isEqualTo(expected);
  }

  @Test
  @DisplayName("EN 1993-1-1 6.2.5 (from memory): class 3 takes Wel, classes 1 and 2 Wpl")
  void modulus_by_class() {
    RolledSection h = UsSteel.shape("HEA280");
    assertThat(new EurocodeBending(h, Steel.S355).sectionMoment())
        .isCloseTo(1013e-6 * 355_000, within(1e-6));
    assertThat(new EurocodeBending(h, Steel.S235).sectionMoment())
        .isCloseTo(1112e-6 * 235_000, within(1e-6));
    assertThatThrownBy(() -> new EurocodeBending(h, Steel.S355.withYield(1_500_000)))
        .hasMessageContaining("class 4");
  }

  @Test
  @DisplayName("EN 1993-1-1 6.3.2.3 (from memory): curve c where h/b is above 2")
  void slender_profile() {
    EurocodeBending ipe = new EurocodeBending(UsSteel.shape("IPE600"), Steel.S355);
    double critical = ipe.criticalMoment(6, 1, 0, 0);
    double lambda = ipe.slenderness(critical);
    double phi = 0.5 * (1 + 0.49 * (lambda - 0.4) + 0.75 * lambda * lambda);
    double chi = 1 / (phi + Math.sqrt(phi * phi - 0.75 * lambda * lambda));
    assertThat(ipe.reduction(critical))
        .isCloseTo(Math.min(chi, 1 / lambda / lambda), within(1e-12));
    assertThat(ipe.reduction(1e9)).isEqualTo(1);
  }

  @Test
  @DisplayName("EN 1993-1-1 6.2.6 (from memory): a web above 72 epsilon is refused")
  void slender_web() {
    assertThat(EurocodeShear.applies(HEB400, Steel.S355)).isTrue();
    assertThatThrownBy(() -> EurocodeShear.resistance(HEB400, Steel.S355.withYield(3_000_000)))
        .hasMessageContaining("buckles");
    RolledSection ipe = UsSteel.shape("IPE200");
    assertThat(EurocodeShear.area(ipe)).isCloseTo(14.0e-4, within(0.005e-4));
  }

  @ParameterizedTest
  @CsvSource({"A0,0.725,0.9", "A,0.666,1.0", "B,0.597,1.0", "C,0.540,1.0", "D,0.467,1.0"})
  @DisplayName("EN 1993-1-1 Table 6.2 (curve values from memory): chi at lambda 0.9 or 1.0")
  void column_curves(EurocodeColumn.Curve curve, double expected, double lambda) {
    double length = lambda * Math.PI * 0.05 * Math.sqrt(210_000 / 355.0);
    EurocodeColumn column = new EurocodeColumn(0.01, 0.05, length, Steel.S355, curve);
    assertThat(column.slenderness()).isCloseTo(lambda, within(1e-9));
    double alpha = curve.imperfection();
    double phi = 0.5 * (1 + alpha * (lambda - 0.2) + lambda * lambda);
    assertThat(column.reduction())
        .isCloseTo(1 / (phi + Math.sqrt(phi * phi - lambda * lambda)), within(1e-12));
    if (lambda == 1.0) {
      assertThat(column.reduction()).isCloseTo(expected, within(0.001));
    }
    assertThat(column.resistance()).isCloseTo(column.reduction() * 3550, within(1e-6));
  }

  @Test
  @DisplayName("EN 1993-1-1 6.3.1 (from memory): a stocky column keeps its full strength")
  void stocky_column() {
    assertThat(new EurocodeColumn(0.01, 0.05, 0.1, Steel.S355, EurocodeColumn.Curve.C).reduction())
        .isEqualTo(1);
  }

  @Test
  @DisplayName(
      "Own case: 130 x 15 plates in HEB400 S355: strip 15 epsilon tw each side; bearing (130 - 27) x"
          + " 2 x 15 x 355")
  void stiffeners() {
    EurocodeStiffeners pair =
        new EurocodeStiffeners(new BearingStiffeners(HEB400, Steel.S355, 0.13, 0.015, 0.027));
    assertThat(pair.bearing()).isCloseTo(2 * 0.103 * 0.015 * 355_000, within(1e-6));
    double side = 15 * Math.sqrt(235 / 355.0) * 0.0135;
    double inside = 2 * 0.13 * 0.015 + (2 * side + 0.015) * 0.0135;
    double end = 2 * 0.13 * 0.015 + (side + 0.015) * 0.0135;
    assertThat(pair.columnArea(true)).isCloseTo(inside, within(1e-12));
    assertThat(pair.columnArea(false)).isCloseTo(end, within(1e-12));
    double inertia = 0.015 * Math.pow(0.2735, 3) / 12 + 2 * side * Math.pow(0.0135, 3) / 12;
    double radius = Math.sqrt(inertia / inside);
    assertThat(pair.columnRadius(true)).isCloseTo(radius, within(1e-9));
    assertThat(pair.column(true))
        .isCloseTo(
            new EurocodeColumn(inside, radius, 0.75 * 0.352, Steel.S355, EurocodeColumn.Curve.C)
                .resistance(),
            within(1e-6));
    assertThat(pair.column(false)).isLessThan(pair.column(true));
  }

  @Property(seed = Seeds.BUILD)
  void a_longer_or_higher_loaded_beam_buckles_no_later(
      @ForAll @IntRange(min = 0, max = 17) int row,
      @ForAll @DoubleRange(min = 1, max = 15) double length,
      @ForAll @DoubleRange(min = 0, max = 0.4) double height) {
    EurocodeBending beam = new EurocodeBending(SectionTable.EU_HEB.sections().get(row), Steel.S355);
    double critical = beam.criticalMoment(length, 1.365, 0.553, height);
    assertThat(critical).isPositive();
    assertThat(beam.criticalMoment(length * 1.1, 1.365, 0.553, height)).isLessThan(critical);
    assertThat(beam.criticalMoment(length, 1.365, 0.553, height + 0.05)).isLessThan(critical);
    assertThat(beam.bucklingMoment(critical))
        .isPositive()
        .isLessThanOrEqualTo(beam.sectionMoment());
  }
}
