package underhold.mechanics.timber;

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
import underhold.quantity.Seeds;

class BoardUnderPressureTest {
  private static final double PSF = 0.04788025898;
  private static final double PSI = 6.894757293;
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  @ParameterizedTest(name = "{0} psf on {1} ft, {2} in thick: fb {3} psi, fv {4} psi, {5} in")
  @DisplayName(
      "Own cases, statics by hand: stresses and deflection of boards on the flat, E = 1,600,000 psi")
  @CsvSource({
    "432, 4, 1.5, 2304, 72.0, 0.461",
    "432, 4, 2.0, 1296, 54.0, 0.194",
    "432, 4, 3.0, 576, 36.0, 0.058",
    "259.2, 4, 1.5, 1382, 43.2, 0.276",
    "432, 3, 1.5, 1296, 54.0, 0.146",
    "712, 4, 3.0, 949, 59.3, 0.095"
  })
  void board_stresses_match_hand_calculation(
      double psf, double feet, double inches, double fb, double fv, double deflection) {
    BoardUnderPressure board = new BoardUnderPressure(psf * PSF, feet * FOOT, inches * INCH);
    assertThat(board.bendingStress() / PSI).isCloseTo(fb, withPercentage(0.1));
    assertThat(board.shearStress() / PSI).isCloseTo(fv, withPercentage(0.15));
    // Printed to 0.001 in.
    assertThat(board.deflection(1.6e6 * PSI) / INCH).isCloseTo(deflection, within(0.0006));
  }

  @Test
  @DisplayName(
      "Own case: 2x8 Douglas fir-larch No. 2, flat, wet, seven days: F'b = 1,320 psi (NDS values from memory)")
  void allowable_bending_of_a_flat_wet_board() {
    ReferenceValues fir = ReferenceValues.named("douglas-fir-larch").orElseThrow();
    double wet =
        fir.bending()
            * NdsFactors.loadDuration(7)
            * NdsFactors.WET_BENDING
            * NdsFactors.size(8)
            * NdsFactors.flatUse(8, 2);
    assertThat(wet / PSI).isCloseTo(1320, within(1.0));
    // 900 x 1.2 = 1,080 psi is below 1,150 psi, so wet service takes nothing away: 1,552 psi.
    double factor = NdsFactors.wetBending(fir.bending() * NdsFactors.size(8));
    assertThat(wet / NdsFactors.WET_BENDING * factor / PSI).isCloseTo(1552, within(1.0));
  }

  @Test
  @DisplayName(
      "Own case: a dressed 2 in board at 4 ft in Type B ground 8 ft deep fails, a rough one passes")
  void dressed_board_fails_where_rough_one_passes() {
    double pressure = SheetingSoil.B.tablePressure(8 * FOOT);
    double allowable = 1320 * PSI;
    assertThat(new BoardUnderPressure(pressure, 4 * FOOT, 1.5 * INCH).bendingStress())
        .isGreaterThan(allowable);
    assertThat(new BoardUnderPressure(pressure, 4 * FOOT, 2 * INCH).bendingStress())
        .isLessThan(allowable);
  }

  @Property(seed = Seeds.BUILD)
  void thickness_for_bending_brings_the_stress_to_the_allowable(
      @ForAll @DoubleRange(min = 1, max = 100) double pressure,
      @ForAll @DoubleRange(min = 0.5, max = 3) double span,
      @ForAll @DoubleRange(min = 2000, max = 20000) double allowable) {
    double thickness = BoardUnderPressure.thicknessForBending(pressure, span, allowable);
    assertThat(new BoardUnderPressure(pressure, span, thickness).bendingStress())
        .isCloseTo(allowable, withPercentage(1e-6));
  }

  @Test
  void no_pressure_makes_no_stress() {
    BoardUnderPressure board = new BoardUnderPressure(0, 1.2, 0.05);
    assertThat(board.bendingStress()).isZero();
    assertThat(board.shearStress()).isZero();
    assertThat(board.deflection(1e7)).isZero();
  }

  @Test
  void a_span_that_is_no_number_is_refused() {
    assertThatThrownBy(() -> new BoardUnderPressure(1, Double.NaN, 0.05))
        .hasMessageContaining("span");
    assertThatThrownBy(() -> new BoardUnderPressure(-1, 1, 0.05)).hasMessageContaining("pressure");
  }

  @Test
  @DisplayName(
      "Own case: axial load along a board lowers what is left for bending, and buckling is refused")
  void combined_stress_grows_with_axial_load() {
    double buckling = CombinedStress.bucklingStress(4.0e6, 1.2, 0.05);
    // 0.822 x 4.0e6 / 24^2 = 5,708 kPa, by hand.
    assertThat(buckling).isCloseTo(5708, within(1.0));
    assertThat(CombinedStress.sum(0, 8000, 4000, 8000, buckling)).isEqualTo(0.5);
    // (500/8000)^2 + 4000 / (8000 (1 - 500/5708)) = 0.0039 + 0.5480
    assertThat(CombinedStress.sum(500, 8000, 4000, 8000, buckling))
        .isCloseTo(0.5519, within(0.0005));
    assertThatThrownBy(() -> CombinedStress.sum(6000, 8000, 1, 8000, buckling))
        .hasMessageContaining("buckling");
  }

  @Test
  @DisplayName(
      "NDS 2018 Appendix D (from memory): Emin of Douglas fir-larch No. 2 is 580,000 psi to two figures")
  void stability_modulus_of_douglas_fir() {
    assertThat(ReferenceValues.named("douglas-fir-larch").orElseThrow().stabilityModulus() / PSI)
        .isCloseTo(580_000, withPercentage(1)); // the supplement rounds to two figures
  }

  @Test
  void duration_factor_falls_with_time() {
    assertThat(NdsFactors.loadDuration(10.0 / 1440)).isEqualTo(1.6);
    assertThat(NdsFactors.loadDuration(1)).isEqualTo(1.25);
    assertThat(NdsFactors.loadDuration(7.1)).isEqualTo(1.15);
    assertThat(NdsFactors.loadDuration(61)).isEqualTo(1.0);
    assertThat(NdsFactors.loadDuration(4000)).isEqualTo(0.9);
    assertThat(NdsFactors.size(6)).isGreaterThan(NdsFactors.size(10));
    assertThat(NdsFactors.size(14)).isEqualTo(0.9);
    assertThat(NdsFactors.flatUse(12, 4)).isEqualTo(1.1);
    assertThat(NdsFactors.bearingArea(0.05, true)).isEqualTo(1.0);
    assertThat(NdsFactors.bearingArea(0.0762, false)).isCloseTo(1.125, within(1e-9));
  }

  @ParameterizedTest(
      name =
          "NDS 2018 Supplement, No. 2 (from memory): {0}: Fb {1}, Fv {2}, Fc-perp {3}, Fc {4} psi")
  @CsvSource({
    "douglas-fir-larch, 900, 180, 625, 1350, 1600000",
    "hem-fir, 850, 150, 405, 1300, 1300000",
    "spruce-pine-fir, 875, 135, 425, 1150, 1400000",
    "southern-pine-2x6, 1000, 175, 565, 1400, 1400000",
    "southern-pine-2x8, 925, 175, 565, 1350, 1400000",
    "southern-pine-2x10, 800, 175, 565, 1300, 1400000",
    "southern-pine-2x12, 750, 175, 565, 1250, 1400000",
    "mixed-oak, 800, 170, 800, 550, 900000"
  })
  void reference_values(
      String name, double bending, double shear, double across, double along, double modulus) {
    ReferenceValues values = ReferenceValues.named(name).orElseThrow();
    assertThat(values.bending() / PSI).isCloseTo(bending, within(0.01));
    assertThat(values.shear() / PSI).isCloseTo(shear, within(0.01));
    assertThat(values.compressionAcrossGrain() / PSI).isCloseTo(across, within(0.01));
    assertThat(values.compressionAlongGrain() / PSI).isCloseTo(along, within(0.01));
    assertThat(values.elasticModulus() / PSI).isCloseTo(modulus, within(1.0));
  }
}
