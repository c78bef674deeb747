package underhold.mechanics.pile.lateral;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LateralPileTest {
  @Test
  @DisplayName(
      "Das, Principles of Foundation Engineering, ex. 12.7: a companion prints Qc 100,615.6 kN and Mc 52,912 kN m with exponent 0.6 in both, which is wrong; the method's 0.68 and 0.46 (from memory) give 37,607 kN and 296,139 kN m")
  void characteristic_load_and_moment() {
    double load = DuncanCharacteristicLoad.loadKilonewtons(1, 22e6, 1, 100);
    double moment = DuncanCharacteristicLoad.momentKilonewtonMetres(1, 22e6, 1, 100);
    assertThat(load).isCloseTo(37_607, withPercentage(0.1));
    assertThat(moment).isCloseTo(296_139, withPercentage(0.1));
    // what the companion computes: not used here
    assertThat(7.34 * 22e6 * Math.pow(100 / 22e6, 0.6)).isCloseTo(100_615.6, withPercentage(0.1));
    assertThat(3.86 * 22e6 * Math.pow(100 / 22e6, 0.6)).isCloseTo(52_912, withPercentage(0.1));
  }

  @Test
  void characteristic_load_scales_with_diameter() {
    assertThat(DuncanCharacteristicLoad.loadKilonewtons(2, 22e6, 1, 100))
        .isCloseTo(4 * 37_607, withPercentage(0.1));
    assertThat(DuncanCharacteristicLoad.momentKilonewtonMetres(2, 22e6, 1, 100))
        .isCloseTo(8 * 296_139, withPercentage(0.1));
    assertThat(DuncanCharacteristicLoad.loadKilonewtons(1, 22e6, 0.5, 100))
        .isCloseTo(37_607 * Math.pow(0.5, 0.32), withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Das, ex. 12.7b (companion): 338e-6 T^3 + 300.6e-6 T^2 = 0.00435 gives T 2.08 m, moment 403.16 kN m")
  void moment_below_ground() {
    double bending = 22e6 * 0.049;
    double t = MatlockReese.relativeStiffnessMetres(0.00435, 150, 200, bending);
    assertThat(t).isCloseTo(2.0814, withPercentage(0.1));
    assertThat(MatlockReese.deflectionMetres(150, 200, bending, t))
        .isCloseTo(0.00435, within(1e-9));
    assertThat(MatlockReese.momentKilonewtonMetres(150, 200, t, 0.75, 0.845))
        .isCloseTo(403.16, withPercentage(0.1));
  }
}
