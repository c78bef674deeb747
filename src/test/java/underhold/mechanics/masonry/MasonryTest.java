package underhold.mechanics.masonry;

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

class MasonryTest {
  private static final double FOOT = 0.3048;
  private static final double KIP = 4.448221615;
  private static final double PCF = 0.1570874606;

  @Test
  @DisplayName(
      "Building Research Establishment GBG 10 (second-hand): 800 mm clear gives base 880, heights 440 and 762 mm")
  void load_triangle() {
    LoadTriangle triangle = new LoadTriangle(0.8);
    assertThat(triangle.baseMetres()).isCloseTo(0.880, within(0.0005));
    assertThat(triangle.loadHeightMetres()).isCloseTo(0.440, within(0.0005));
    assertThat(triangle.interactionHeightMetres()).isCloseTo(0.762, within(0.0005));
    assertThat(triangle.leastPierMetres()).isEqualTo(0.6);
    assertThat(new LoadTriangle(4).leastPierMetres()).isCloseTo(0.8, within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case: 12 in wall, 120 pcf, 8 ft span: 45 and 60 degree triangles weigh 1.92 and 3.33 kip")
  void triangle_load_on_a_lintel() {
    LoadTriangle triangle = new LoadTriangle(8 * FOOT);
    double[] angles = {45, 60};
    double[][] expected = {{1.92, 2.56, 0.96}, {3.33, 4.43, 1.66}};
    for (int i = 0; i < 2; i++) {
      assertThat(triangle.weight(120 * PCF, FOOT, angles[i]) / KIP)
          .isCloseTo(expected[i][0], within(0.006));
      assertThat(triangle.moment(120 * PCF, FOOT, angles[i]) / KIP / FOOT)
          .isCloseTo(expected[i][1], within(0.006));
      assertThat(triangle.shear(120 * PCF, FOOT, angles[i]) / KIP)
          .isCloseTo(expected[i][2], within(0.006));
    }
  }

  @Property(seed = Seeds.BUILD)
  void the_longest_arch_reaches_just_the_allowable_compression(
      @ForAll @DoubleRange(min = 10, max = 400) double load,
      @ForAll @DoubleRange(min = 0.5, max = 6) double height,
      @ForAll @DoubleRange(min = 0.2, max = 1) double thickness,
      @ForAll @DoubleRange(min = 200, max = 2000) double allowable) {
    ArchOverGap arch = new ArchOverGap(load, height, thickness, 0.6, 0.1);
    double span = arch.longestSpan(allowable);
    assertThat(arch.compression(span)).isCloseTo(allowable, withPercentage(1e-6));
    assertThat(arch.compression(span * 1.05)).isGreaterThan(allowable);
  }

  @Test
  @DisplayName(
      "Own case: w 100 kN/m, wall 3 m x 0.4 m, span 1.2 m: rise 0.6 m, thrust 30 kN, 250 kPa")
  void arch_by_hand() {
    ArchOverGap arch = new ArchOverGap(100, 3, 0.4, 0.6, 0.1);
    assertThat(arch.rise(1.2)).isCloseTo(0.6, within(1e-12));
    assertThat(arch.thrust(1.2)).isCloseTo(30, within(1e-9));
    assertThat(arch.compression(1.2)).isCloseTo(250, within(1e-9));
  }

  @Test
  @DisplayName(
      "TMS 402-13 Table A.4 (from memory): rubble 120 and 100 psi; weaker mortar is never stronger")
  void bearing_table() {
    MasonryBearing rubble = MasonryBearing.named("rubble").orElseThrow();
    assertThat(rubble.strongMortarKilopascals()).isCloseTo(827.4, within(0.1));
    assertThat(rubble.ordinaryMortarKilopascals()).isCloseTo(689.5, within(0.1));
    assertThat(MasonryBearing.names())
        .allSatisfy(
            name -> {
              MasonryBearing row = MasonryBearing.named(name).orElseThrow();
              assertThat(row.ordinaryMortarKilopascals())
                  .isLessThanOrEqualTo(row.strongMortarKilopascals());
            });
    assertThat(MasonryBearing.named("cheese")).isEmpty();
    assertThat(MasonryBearing.concentrated(10_000, 0.1, 0.9)).isCloseTo(6600, within(1e-6));
  }

  @Test
  void a_wall_without_height_is_refused() {
    assertThatThrownBy(() -> new ArchOverGap(100, 0, 0.4, 0.6, 0.1))
        .hasMessageContaining("wall height");
  }

  @ParameterizedTest(name = "TMS 402-13 Table A.4 (from memory): {0}: mortar M or S {1}, N {2} psi")
  @CsvSource({
    "solid-brick-4500, 225, 200",
    "solid-brick-2500, 160, 140",
    "solid-brick-1500, 115, 100",
    "ashlar-granite, 720, 640",
    "ashlar-limestone, 450, 400",
    "ashlar-sandstone, 360, 320",
    "rubble, 120, 100"
  })
  void every_row_of_the_bearing_table(String name, double strong, double ordinary) {
    MasonryBearing row = MasonryBearing.named(name).orElseThrow();
    assertThat(row.strongMortarKilopascals() / 6.894757293168361).isCloseTo(strong, within(1e-9));
    assertThat(row.ordinaryMortarKilopascals() / 6.894757293168361)
        .isCloseTo(ordinary, within(1e-9));
    assertThat(MasonryBearing.names()).hasSize(7);
  }
}
