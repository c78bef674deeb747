package underhold.mechanics.masonry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule of the masonry calculators at its very edge. */
class MasonryBoundariesTest {
  @ParameterizedTest(name = "{0} is refused")
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void what_no_wall_has_is_refused(double bad) {
    ArchOverGap arch = new ArchOverGap(100, 3, 0.4, 0.6, 0.1);
    LoadTriangle triangle = new LoadTriangle(2);
    refused(() -> new ArchOverGap(bad, 3, 0.4, 0.6, 0.1), "line load is");
    refused(() -> new ArchOverGap(100, bad, 0.4, 0.6, 0.1), "wall height is");
    refused(() -> new ArchOverGap(100, 3, bad, 0.6, 0.1), "wall thickness is");
    refused(() -> new ArchOverGap(100, 3, 0.4, bad, 0.1), "rise share is");
    refused(() -> new ArchOverGap(100, 3, 0.4, 0.6, bad), "compressed share is");
    refused(() -> arch.rise(bad), "span is");
    refused(() -> arch.longestSpan(bad), "allowable compression is");
    refused(() -> new LoadTriangle(bad), "clear span is");
    refused(() -> triangle.weight(bad, 1, 45), "unit weight is");
    refused(() -> triangle.weight(1, bad, 45), "wall thickness is");
    refused(() -> new MasonryBearing("x", bad, 1), "allowable compression is");
    refused(() -> new MasonryBearing("x", 1, bad), "allowable compression is");
    refused(() -> MasonryBearing.concentrated(bad, 1, 1), "prism strength is");
    refused(() -> MasonryBearing.concentrated(1, bad, 1), "loaded area is");
    refused(() -> MasonryBearing.concentrated(1, 1, bad), "support area is");
  }

  private static void refused(Runnable call, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(call::run)
        .withMessageStartingWith(name)
        .withMessageEndingWith("it must be above 0");
  }

  @Test
  @DisplayName(
      "Own case, statics: wall 2 m high, rise at most 1.2 m, so from 2.4 m of span the rise stays")
  void arch_on_both_sides_of_its_greatest_rise() {
    ArchOverGap arch = new ArchOverGap(50, 2, 0.5, 0.6, 0.1);
    assertThat(arch.rise(2.4)).isCloseTo(1.2, within(1e-12));
    assertThat(arch.rise(3)).isCloseTo(1.2, within(1e-12));
    assertThat(arch.rise(1)).isCloseTo(0.5, within(1e-12));
    // 50 x 9 / (8 x 1.2) = 46.875 kN over 0.1 x 2 x 0.5 = 0.1 m2
    assertThat(arch.thrust(3)).isCloseTo(46.875, within(1e-9));
    assertThat(arch.compression(3)).isCloseTo(468.75, within(1e-9));
    // 468.75 kPa back: H = 46.875; 4 H / w = 3.75 passes 2.4, so sqrt(8 x 1.2 x 46.875 / 50) = 3
    assertThat(arch.longestSpan(468.75)).isCloseTo(3, within(1e-9));
    // 250 kPa: H = 25, 4 H / w = 2, below 2.4
    assertThat(arch.longestSpan(250)).isCloseTo(2, within(1e-9));
    // 300 kPa: H = 30, 4 H / w = 2.4: both forms give 2.4
    assertThat(arch.longestSpan(300)).isCloseTo(2.4, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: triangle of 2 m: base 2.2, 1.1 and 1.905 m high; 20 kN/m3 x 0.5 m at 45 degrees"
          + " weighs 10 kN")
  void triangle_by_hand() {
    LoadTriangle triangle = new LoadTriangle(2);
    assertThat(triangle.baseMetres()).isCloseTo(2.2, within(1e-12));
    assertThat(triangle.loadHeightMetres()).isCloseTo(1.1, within(1e-12));
    assertThat(triangle.interactionHeightMetres()).isCloseTo(1.9053, within(1e-4));
    assertThat(triangle.weight(20, 0.5, 45)).isCloseTo(10, within(1e-9)); // 20 x 0.5 x 4 / 4
    assertThat(triangle.moment(20, 0.5, 45)).isCloseTo(10.0 * 2 / 6, within(1e-9));
    assertThat(triangle.shear(20, 0.5, 45)).isCloseTo(5, within(1e-9));
    assertThat(new LoadTriangle(3).leastPierMetres()).isCloseTo(0.6, within(1e-12));
    assertThat(new LoadTriangle(3.1).leastPierMetres()).isCloseTo(0.62, within(1e-12));
  }

  @Test
  void the_table_of_allowable_compression_has_names() {
    assertThat(MasonryBearing.names()).contains("rubble").hasSize(7);
  }

  @Test
  @DisplayName("TMS 402 ASD (from memory): 0.33 f'm, the root of the area ratio from 1 to 2")
  void concentrated_load() {
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.1)).isCloseTo(3300, within(1e-6));
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.05)).isCloseTo(3300, within(1e-6));
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.144)).isCloseTo(3960, within(1e-6));
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.4)).isCloseTo(6600, within(1e-6));
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.41)).isCloseTo(6600, within(1e-6));
  }
}
