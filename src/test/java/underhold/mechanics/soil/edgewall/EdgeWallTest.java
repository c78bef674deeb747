package underhold.mechanics.soil.edgewall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Us;
import underhold.mechanics.soil.bearing.PresumptiveBearing;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.quantity.Seeds;

class EdgeWallTest {
  /** 8 ft by 3 ft, 6,000 plf, 480 psf, 120 pcf, 32 degrees, mu 0.45, dry. */
  private static EdgeWall ownCase(double structurePressure) {
    return new EdgeWall(
        8 * Us.FOOT,
        3 * Us.FOOT,
        150 * Us.PCF,
        6000 * Us.PLF,
        structurePressure,
        BackPressure.of(RankinePressure.activeCoefficient(32), 120 * Us.PCF, 480 * Us.PSF, 100),
        Holding.friction(0.45));
  }

  @Test
  @DisplayName(
      "Own case: the load taken away, sliding falls from 1.831 to 0.687 and the wall turns over")
  void taking_the_load_away_loses_the_wall() {
    Case before = ownCase(0).at(1);
    Case after = ownCase(0).at(0);
    assertThat(before.sliding().value().orElseThrow()).isCloseTo(1.831, within(0.001));
    assertThat(after.sliding().value().orElseThrow()).isCloseTo(0.687, within(0.001));
    assertThat(after.overturning().value().orElseThrow()).isCloseTo(0.687, within(0.001));
    assertThat(after.contact().value()).isEmpty();
  }

  @Test
  @DisplayName(
      "Own case by hand: share 0.4 of 6,000 plf and 2,000 psf: thrust 4,326.2 plf, friction 2,700 plf")
  void partial_share_counts_on_the_wall_and_behind_it() {
    Case part = ownCase(2000 * Us.PSF).at(0.4);
    // 2,359.7 + Ka 0.30726 x 800 x 8 = 4,326.2; 0.45 x (3,600 + 2,400) = 2,700
    assertThat(part.sliding().demand() / Us.PLF).isCloseTo(4326.2, withPercentage(0.05));
    assertThat(part.sliding().resistance() / Us.PLF).isCloseTo(2700, withPercentage(0.05));
  }

  @Test
  @DisplayName("Own case: 1 m of water over the base lifts 0.9 m of it with 8.83 kN/m")
  void standing_water_lifts_the_base() {
    EdgeWall wet =
        new EdgeWall(4, 0.9, 23.6, 0, 0, BackPressure.of(0.4, 19, 0, 3), Holding.friction(0.3));
    assertThat(wet.uplift()).isCloseTo(8.829, within(1e-9));
    assertThat(wet.weight()).isCloseTo(84.96, within(1e-9));
    assertThat(wet.at(0).normalKilonewtonsPerMetre()).isCloseTo(76.131, within(1e-9));
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void share_behind_alone_never_eases_and_share_on_top_alone_never_harms(
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0, max = 1) double other,
      @ForAll @DoubleRange(min = 0.5, max = 8) double height) {
    double less = Math.min(share, other);
    double more = Math.max(share, other);
    BackPressure back = BackPressure.of(0.4, 19, 10, 2);
    EdgeWall behind = new EdgeWall(height, 0.9, 23.6, 0, 80, back, Holding.friction(0.3));
    assertThat(behind.at(more).sliding().demand())
        .isGreaterThanOrEqualTo(behind.at(less).sliding().demand());
    EdgeWall onTop = new EdgeWall(height, 0.9, 23.6, 80, 0, back, Holding.friction(0.3));
    assertThat(onTop.at(more).sliding().resistance())
        .isGreaterThanOrEqualTo(onTop.at(less).sliding().resistance());
    assertThat(onTop.at(more).sliding().demand()).isEqualTo(onTop.at(less).sliding().demand());
  }

  @Test
  void no_soil_and_no_water_ask_for_nothing() {
    EdgeWall free =
        new EdgeWall(3, 0.9, 23.6, 50, 50, BackPressure.of(0, 19, 0, 9), Holding.friction(0.3));
    assertThat(free.at(1).sliding().demand()).isZero();
    assertThat(free.at(1).overturning().demand()).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> free.at(1.2));
  }

  @Test
  @DisplayName(
      "IBC Table 1804.2 (now 1806.2) as quoted in code change S148-07/08: gravel 0.35, rock 0.70 and 0.35, sand 0.25, clay 130 psf; passive 200, 150, 100 psf/ft")
  void presumptive_values_hold_the_base() {
    assertThat(row("crystalline-rock").base(100, 1)).isCloseTo(70, within(1e-9));
    assertThat(row("sedimentary-rock").base(100, 1)).isCloseTo(35, within(1e-9));
    assertThat(row("gravel").base(100, 1)).isCloseTo(35, within(1e-9));
    assertThat(row("sand").base(100, 1)).isCloseTo(25, within(1e-9));
    assertThat(row("sand").base(-5, 1)).isZero();
    assertThat(row("clay").clay()).isTrue();
    assertThat(row("sand").clay()).isFalse();
    assertThat(row("clay").base(100, 2 * Us.FOOT) / Us.PLF).isCloseTo(260, within(0.01));
    assertThat(row("clay").base(2, 5)).isCloseTo(1, within(1e-9)); // half of the vertical force
    assertThat(row("sand").front(2 * Us.FOOT) / Us.PLF).isCloseTo(300, within(0.01));
    assertThat(row("gravel").front(2 * Us.FOOT) / Us.PLF).isCloseTo(400, within(0.01));
    assertThat(row("clay").front(2 * Us.FOOT) / Us.PLF).isCloseTo(200, within(0.01));
    assertThat(row("sand").frontMoment(3)).isCloseTo(row("sand").front(3), within(1e-9));
  }

  private static PresumptiveSliding row(String id) {
    return new PresumptiveSliding(PresumptiveBearing.find(id).orElseThrow());
  }
}
