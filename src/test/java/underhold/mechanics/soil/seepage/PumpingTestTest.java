package underhold.mechanics.soil.seepage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.seepage.PumpingTest.Well;

class PumpingTestTest {
  private static final Well NEAR = new Well(15, 11.5);
  private static final Well FAR = new Well(30, 11.7);

  @Test
  @DisplayName(
      "Published pumping test (secondary, from an open test suite drawing on M. Budhu's textbooks): wells at 15 and 30 m,"
          + " 11.5 and 11.7 m of water, 0.0106 m3/s: 0.05 cm/s")
  void published_pumping_test() {
    // Tolerance 2 %: printed to one figure; by hand 5.04e-4 m/s.
    assertThat(PumpingTest.permeability(0.0106, NEAR, FAR)).isCloseTo(0.05e-2, withPercentage(2));
    assertThat(PumpingTest.permeability(0.0106, NEAR, FAR)).isCloseTo(5.040e-4, within(5e-7));
  }

  @Test
  void wells_in_the_wrong_order_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PumpingTest.permeability(0.01, FAR, NEAR))
        .withMessageContaining("distance between wells");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PumpingTest.permeability(0.01, NEAR, new Well(30, 11.5)))
        .withMessageContaining("rise of water");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PumpingTest.permeability(0, NEAR, FAR))
        .withMessageContaining("flow");
  }
}
