package underhold.mechanics.pile.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.structure.IbcAllowable.Concrete;
import underhold.mechanics.pile.structure.IbcAllowable.Steel;

class PileStructureTest {
  private static final double KSI = 6894.757293;

  @Test
  @DisplayName("IBC Table 1810.3.2.6 (from memory): shares of f'c and Fy with their limits")
  void allowable_stresses() {
    assertThat(IbcAllowable.concreteKilopascals(Concrete.IN_CASING_OR_ROCK, 30_000))
        .isCloseTo(9900, within(1e-9));
    assertThat(IbcAllowable.concreteKilopascals(Concrete.UNCASED, 30_000))
        .isCloseTo(9000, within(1e-9));
    assertThat(IbcAllowable.concreteKilopascals(Concrete.CONFINED, 30_000))
        .isCloseTo(12_000, within(1e-9));
    assertThat(Steel.CORE.stressKilopascals(50 * KSI)).isCloseTo(25 * KSI, withPercentage(1e-6));
    assertThat(Steel.CORE.stressKilopascals(80 * KSI)).isCloseTo(32 * KSI, withPercentage(1e-3));
    assertThat(Steel.MICROPILE_PIPE.stressKilopascals(80 * KSI))
        .isCloseTo(32 * KSI, withPercentage(1e-3));
    assertThat(Steel.MICROPILE_PIPE.stressKilopascals(50 * KSI))
        .isCloseTo(20 * KSI, withPercentage(1e-6));
    assertThat(Steel.BARS.stressKilopascals(100 * KSI)).isCloseTo(30 * KSI, withPercentage(1e-3));
    assertThat(Steel.OTHER_PIPE.stressKilopascals(36 * KSI))
        .isCloseTo(12.6 * KSI, withPercentage(1e-6));
    assertThat(Steel.OTHER_PIPE.stressKilopascals(80 * KSI))
        .isCloseTo(16 * KSI, withPercentage(1e-3));
  }

  @Test
  @DisplayName(
      "Own case: pipe 9.625 x 0.545 in at 32 ksi carries 497.5 kip, and its fill of 4 ksi at 0.33 another 75.5 kip")
  void allowable_load() {
    PileSection pipe = new PileSection(9.625 * 0.0254, 0.545 * 0.0254);
    double load =
        IbcAllowable.kilonewtons(
            pipe, Concrete.IN_CASING_OR_ROCK, 4 * KSI, Steel.MICROPILE_PIPE, 80 * KSI);
    assertThat(load / 4.448221615).isCloseTo(497.5 + 75.5, withPercentage(0.05));
    double bare =
        IbcAllowable.kilonewtons(
            PileSection.uncased(0.3), Concrete.UNCASED, 30_000, Steel.OTHER_PIPE, 250_000);
    assertThat(bare).isCloseTo(9000 * Math.PI * 0.09 / 4, within(1e-9));
  }

  @Test
  @DisplayName(
      "ACI 318 chapter 22 (from memory): 0.65 x 0.80 [0.85 x 30 x (0.09 - 0.002) + 420 x 0.002] = 1603.7 kN, own numbers")
  void tied_column() {
    assertThat(AciTiedColumn.designKilonewtons(0.09, 0.002, 30_000, 420_000))
        .isCloseTo(0.52 * (2244 + 840), within(1e-9));
    assertThatThrownBy(() -> AciTiedColumn.designKilonewtons(0.09, 0.1, 30_000, 420_000))
        .hasMessageContaining("bars");
  }

  @Test
  @DisplayName(
      "Das, Principles of Foundation Engineering, ex. 12.7c (companion): M 400 kN m, D 1.0 m, I 0.049 m4 gives 4081.63 kPa")
  void bending_stress() {
    assertThat(BendingStress.kilopascals(400, 1, 0.049)).isCloseTo(4081.63, withPercentage(0.01));
  }
}
