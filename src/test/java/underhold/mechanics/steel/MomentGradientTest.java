package underhold.mechanics.steel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class MomentGradientTest {
  private static final DoubleUnaryOperator POINT = x -> 5 * Math.min(x, 8 - x);
  private static final DoubleUnaryOperator UNIFORM = x -> 3 * x * (9 - x);

  @Test
  @DisplayName("AISC 360-16 (F1-1): midspan load, unbraced span 1.316, inner quarter 1.25")
  void midspan_load() {
    assertThat(MomentGradient.factor(POINT, 0, 8)).isCloseTo(1.316, within(0.0005));
    assertThat(MomentGradient.factor(POINT, 2, 4)).isCloseTo(1.25, within(1e-9));
    assertThat(MomentGradient.factor(POINT, 0, 4)).isCloseTo(1.667, within(0.0005));
  }

  @Test
  @DisplayName(
      "AISC Manual Table 3-1: uniform load, unbraced 1.14, braced at midspan 1.30, at third points"
          + " (centre) 1.01")
  void uniform_load() {
    assertThat(MomentGradient.factor(UNIFORM, 0, 9)).isCloseTo(1.14, within(0.005));
    assertThat(MomentGradient.factor(UNIFORM, 0, 4.5)).isCloseTo(1.30, within(0.005));
    assertThat(MomentGradient.factor(UNIFORM, 3, 6)).isCloseTo(1.01, within(0.005));
    assertThat(MomentGradient.factor(UNIFORM, 3, 6)).isCloseTo(1.0135, within(0.0001));
  }

  @Test
  @DisplayName("AISC 360-16 (F1-1) by hand: uniform moment 1.0, signs do not matter, none gives 1")
  void simple_diagrams() {
    assertThat(MomentGradient.factor(x -> -7, 1, 2)).isCloseTo(1, within(1e-12));
    assertThat(MomentGradient.factor(10, -8, 6, 4))
        .isCloseTo(12.5 * 10 / (25 + 24 + 24 + 12), within(1e-12));
    assertThat(MomentGradient.factor(0, 0, 0, 0)).isEqualTo(1);
  }

  @Test
  void a_largest_moment_below_another_is_refused() {
    assertThatThrownBy(() -> MomentGradient.factor(5, 6, 1, 1)).hasMessageContaining("largest");
    assertThatThrownBy(() -> MomentGradient.factor(5, 1, 6, 1)).hasMessageContaining("largest");
    assertThatThrownBy(() -> MomentGradient.factor(5, 1, 1, 6)).hasMessageContaining("largest");
    assertThatThrownBy(() -> MomentGradient.factor(POINT, 4, 4))
        .hasMessageContaining("unbraced length");
  }
}
