package underhold.mechanics.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {

  @ParameterizedTest(name = "{0} is no width")
  @ValueSource(
      doubles = {
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        -1,
        0,
        1e10,
        1e-12
      })
  void numbersThatNoGroundHasAreRefused(double value) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.positive(value, "width", "m"))
        .withMessageContaining("width is " + value + " m");
  }

  @Test
  @DisplayName("A negative zero-or-above, an out-of-bounds angle and a NaN are refused by name")
  void eachCheckRefusesItsOwn() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.notNegative(-0.1, "cohesion", "kPa"))
        .withMessageContaining("cohesion is -0.1 kPa");
    assertThatIllegalArgumentException().isThrownBy(() -> Require.frictionAngle(61));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.finite(Double.NaN, "x", "m"));
  }

  @Test
  void acceptedNumbersComeBackUnchanged() {
    assertThat(Require.positive(2.5, "width", "m")).isEqualTo(2.5);
    assertThat(Require.finite(-3, "offset", "m")).isEqualTo(-3);
    assertThat(Require.notNegative(0, "cohesion", "kPa")).isZero();
  }
}
