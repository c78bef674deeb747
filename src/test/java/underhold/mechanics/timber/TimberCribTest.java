package underhold.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class TimberCribTest {
  private static final double INCH = 0.0254;
  private static final double POUND = 4.4482216152605e-3;
  private static final double PSI = 6.894757293168361;

  @Test
  @DisplayName(
      "Published rescue cribs: 4x4 in twos 24,000 lb, in threes 55,000 lb; 6x6 in twos 60,000 lb, at"
          + " 500 psi (the tolerance is the print's rounding)")
  void rescue_cribs() {
    double stress = CribTimber.named("rescue-crib").orElseThrow().acrossGrainKilopascals();
    assertThat(crib(3.5, 2).capacity(stress) / POUND).isCloseTo(24_000, withPercentage(2.5));
    assertThat(crib(3.5, 3).capacity(stress) / POUND).isCloseTo(55_000, withPercentage(2.5));
    assertThat(crib(5.5, 2).capacity(stress) / POUND).isCloseTo(60_000, withPercentage(2.5));
    assertThat(crib(3.5, 2).capacity(stress) / POUND).isCloseTo(24_500, withPercentage(0.01));
  }

  @Test
  @DisplayName("Own case: 6x6 Douglas fir, wet, 419 psi: four nodes 50.7, nine nodes 114.0 kip")
  void wet_crib() {
    double tabulated = CribTimber.named("douglas-fir-larch").orElseThrow().acrossGrainKilopascals();
    double wet = TimberCrib.allowableStress(tabulated, true, false);
    assertThat(wet / PSI).isCloseTo(419, withPercentage(0.5));
    assertThat(crib(5.5, 2).capacity(wet) / POUND / 1000).isCloseTo(50.7, withPercentage(0.5));
    assertThat(crib(5.5, 3).capacity(wet) / POUND / 1000).isCloseTo(114.0, withPercentage(0.5));
  }

  @Test
  @DisplayName("NDS 2018 4.2.6: 0.73 Fc-perp at 0.02 in; wet 0.67 (from memory); both multiply")
  void factors() {
    assertThat(TimberCrib.allowableStress(1000, false, false)).isEqualTo(1000);
    assertThat(TimberCrib.allowableStress(1000, false, true)).isCloseTo(730, within(1e-9));
    assertThat(TimberCrib.allowableStress(1000, true, true)).isCloseTo(489.1, within(1e-9));
  }

  @Test
  @DisplayName("Published cribbing guidance: height at most three times the least width")
  void height() {
    TimberCrib crib = new TimberCrib(0.14, 3, 1.79, 0.6);
    assertThat(crib.tallestMetres()).isCloseTo(1.8, within(1e-9));
    assertThat(crib.stable()).isTrue();
    assertThat(new TimberCrib(0.14, 3, 1.81, 0.6).stable()).isFalse();
    assertThat(crib.nodes()).isEqualTo(9);
    assertThat(crib.contactArea()).isCloseTo(9 * 0.0196, within(1e-12));
  }

  @Test
  @DisplayName("NDS 2018 Supplement (from memory): Fc-perp of ten rows, psi")
  void timbers() {
    assertThat(CribTimber.names())
        .containsExactly(
            "douglas-fir-larch",
            "southern-pine",
            "southern-pine-5x5-wet",
            "mixed-oak",
            "red-oak",
            "white-oak",
            "hem-fir",
            "spruce-pine-fir",
            "falsework",
            "rescue-crib");
    double[] psi = {625, 565, 375, 800, 820, 800, 405, 425, 450, 500};
    for (int i = 0; i < psi.length; i++) {
      CribTimber row = CribTimber.named(CribTimber.names().get(i)).orElseThrow();
      assertThat(row.acrossGrainKilopascals() / PSI).isCloseTo(psi[i], within(1e-9));
      assertThat(row.source()).isNotBlank();
    }
    assertThat(CribTimber.named("balsa")).isEmpty();
  }

  @Test
  void a_crib_needs_two_timbers_a_layer() {
    assertThatThrownBy(() -> new TimberCrib(0.1, 1, 1, 1)).hasMessageContaining("2 to 20");
    assertThatThrownBy(() -> new TimberCrib(0.1, 21, 1, 1)).hasMessageContaining("2 to 20");
    assertThatThrownBy(() -> new TimberCrib(0.1, 2, 1, 0)).hasMessageContaining("plan width");
  }

  private static TimberCrib crib(double inches, int timbers) {
    return new TimberCrib(inches * INCH, timbers, 1, 1);
  }
}
