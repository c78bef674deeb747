package underhold.mechanics.micropile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CombinedStressByHandTest {
  /** A = pi x 10 x 190 = 5969.03 mm2; I = pi (200^4 - 180^4)/64 = 2.70098e7 mm4; S 270,098 mm3. */
  private static final CasingSection CASING = new CasingSection(0.2, 0.01);

  @Test
  @DisplayName(
      "FHWA NHI-05-039 eq. 5-3 (from memory, verify), own numbers: fa 20, fb 60, Fa 100, Fb 200, F'e 50 MPa: 0.2 + 0.3/0.6 = 0.7")
  void moment_is_amplified() {
    CombinedStress stress = new CombinedStress(CASING, 100_000, 200_000, OptionalDouble.of(50_000));
    // P = 20 000 x 5.96903e-3, M = 60 000 x 2.70098e-4; amplifier 1 - 20/50 = 0.6
    assertThat(stress.ratio(119.3805, 16.20588).orElseThrow()).isCloseTo(0.7, within(1e-4));
    // (1 - 0.2) x 0.6 x 200 000 x 2.70098e-4
    assertThat(stress.greatestMoment(119.3805)).isCloseTo(25.9294, within(1e-3));
  }

  @Test
  @DisplayName(
      "Own case by hand: a stub of Fy 350 MPa is held to 0.47 Fy = 164.5, and to 0.55 Fy = 192.5 MPa in bending")
  void stub_is_held_to_the_share_of_yield() {
    CombinedStress stub = CombinedStress.free(new FreeLength(CASING, 350_000, 0.1, 1));
    assertThat(stub.allowableAxialKilopascals()).isCloseTo(164_500, within(1e-6));
    assertThat(stub.allowableBendingKilopascals()).isCloseTo(192_500, within(1e-6));
  }

  @Test
  void nonsense_is_refused() {
    CombinedStress stress = CombinedStress.braced(CASING, 350_000);
    assertThatThrownBy(() -> stress.axialStress(-1)).hasMessageContaining("load");
    assertThatThrownBy(() -> stress.bendingStress(-1)).hasMessageContaining("moment");
    assertThatThrownBy(() -> new CombinedStress(CASING, 1, 1, OptionalDouble.of(-1)))
        .hasMessageContaining("amplifier");
    assertThatThrownBy(() -> CASING.less(-1e-3)).hasMessageContaining("loss");
    BondZone bond = new BondZone(100, 0.2, 2);
    assertThatThrownBy(() -> bond.allowableLoad(-1)).hasMessageContaining("bond length");
    assertThatThrownBy(() -> bond.lengthFor(-1)).hasMessageContaining("load");
    assertThatThrownBy(() -> PileShortening.whole(-1, 1, 1)).hasMessageContaining("load");
    assertThatThrownBy(() -> PileShortening.whole(1, -1, 1)).hasMessageContaining("length");
    assertThatThrownBy(() -> PileShortening.whole(1, 1, 0)).hasMessageContaining("stiffness");
    assertThatThrownBy(() -> PileShortening.residual(-1, 0)).hasMessageContaining("shortening");
  }
}
