package underhold.mechanics.bracket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SeatBearingByHandTest {
  @Test
  @DisplayName(
      "ACI 318 bearing (from memory, verify), own numbers: f'c 28 MPa, A2/A1 2.25: 0.65 x 0.85 x 28 x 1.5 = 23.205 MPa")
  void spread_support_bears_more() {
    assertThat(SeatBearing.factored(28_000, 2.25)).isCloseTo(23_205, within(1e-6));
    assertThat(SeatBearing.factored(28_000, 9)).isCloseTo(30_940, within(1e-6)); // at most 2
    assertThatThrownBy(() -> SeatBearing.factored(0, 1)).hasMessageContaining("concrete strength");
    for (double none : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> SeatBearing.allowable(none, 1))
          .hasMessageContaining("concrete strength");
    }
  }
}
