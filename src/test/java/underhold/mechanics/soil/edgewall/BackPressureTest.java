package underhold.mechanics.soil.edgewall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.pressure.TriangularThrust;
import underhold.quantity.Seeds;

class BackPressureTest {
  private static final BackPressure WET = BackPressure.of(0.5, 20, 10, 3);

  @Test
  @DisplayName(
      "Own case by hand: K 0.5, 20 kN/m3, 10 kPa, water at 3 m: 64.81 kPa at 5 m, 159.81 kN/m, 277.37 kN m/m")
  void pressure_force_and_moment_by_hand() {
    assertThat(WET.atTopKilopascals()).isEqualTo(5);
    assertThat(WET.perMetre()).isEqualTo(10);
    assertThat(WET.perMetreBelowWater()).isCloseTo(4.905, within(1e-12));
    assertThat(WET.atDepthKilopascals(5)).isCloseTo(64.81, within(1e-9));
    assertThat(WET.forceAbove(5)).isCloseTo(159.81, within(1e-9));
    assertThat(WET.momentAbove(5)).isCloseTo(277.3733, within(1e-3));
    assertThat(WET.forceBetween(2, 4)).isCloseTo(72.4525, within(1e-9));
    assertThat(WET.momentAboutLower(3, 4)).isCloseTo(19.9842, within(1e-3));
    assertThat(WET.depthOfForce(60)).isCloseTo(3, within(1e-9)); // just at the water
    assertThat(WET.depthOfForce(159.81)).isCloseTo(5, within(1e-9));
    assertThat(WET.depthOfForce(30)).isCloseTo(2, within(1e-9));
  }

  @Test
  void dry_soil_agrees_with_the_triangular_thrust() {
    BackPressure dry = BackPressure.of(0.3, 18, 0, 100);
    assertThat(dry.forceAbove(4))
        .isCloseTo(TriangularThrust.soil(0.3, 18, 4).forceKilonewtonsPerMetre(), within(1e-12));
    assertThat(dry.momentAbove(4) / dry.forceAbove(4)).isCloseTo(4.0 / 3, within(1e-12));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label("Outside check: closed integrals equal Hipparchus' Gauss quadrature of the pressure")
  void integrals_equal_quadrature(
      @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
      @ForAll @DoubleRange(min = 8, max = 25) double weight,
      @ForAll @DoubleRange(min = 0, max = 300) double surcharge,
      @ForAll @DoubleRange(min = 0, max = 12) double water,
      @ForAll @DoubleRange(min = 0.1, max = 15) double depth) {
    BackPressure back = BackPressure.of(coefficient, weight, surcharge, water);
    double knee = Math.min(water, depth);
    // Gauss points are exact for these polynomials on each side of the water.
    double force =
        integral(back::atDepthKilopascals, 0, knee)
            + integral(back::atDepthKilopascals, knee, depth);
    double moment =
        integral(z -> back.atDepthKilopascals(z) * (depth - z), 0, knee)
            + integral(z -> back.atDepthKilopascals(z) * (depth - z), knee, depth);
    assertThat(back.forceAbove(depth)).isCloseTo(force, within(1e-8 * (1 + force)));
    assertThat(back.momentAbove(depth)).isCloseTo(moment, within(1e-8 * (1 + moment)));
    if (force > 1e-6) {
      assertThat(back.forceAbove(back.depthOfForce(force)))
          .isCloseTo(force, within(1e-7 * (1 + force)));
    }
  }

  private static double integral(
      org.hipparchus.analysis.UnivariateFunction f, double from, double to) {
    return to - from < 1e-9
        ? 0
        : new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-12).integrate(10_000, f, from, to);
  }

  @Test
  void nothing_pushes_where_nothing_is_held() {
    BackPressure none = BackPressure.of(0, 18, 50, 100);
    assertThat(none.forceAbove(5)).isZero();
    assertThat(none.momentAbove(5)).isZero();
    assertThat(none.depthOfForce(0)).isZero();
  }

  @Test
  @DisplayName(
      "Own case by hand: water 2 m over the top, q 60 kPa: a = 0.4 x 60 + 0.6 x 19.62 = 35.77 kPa")
  void water_over_the_top_presses_from_the_top() {
    BackPressure deep = new BackPressure(0.4, 20, 60, 0, 2);
    assertThat(deep.atTopKilopascals()).isCloseTo(35.772, within(1e-9));
    // effective 60 + 60 - 49.05 = 70.95: 0.4 x 70.95 + 49.05
    assertThat(deep.atDepthKilopascals(3)).isCloseTo(77.43, within(1e-9));
    assertThat(deep.headAt(3)).isCloseTo(5, within(1e-12));
    assertThat(deep.forceAbove(3)).isCloseTo((35.772 + 77.43) / 2 * 3, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> new BackPressure(0.4, 20, 19, 0, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new BackPressure(0.4, 20, 60, 1, 2));
  }

  @Test
  void impossible_soils_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> BackPressure.of(1.1, 18, 0, 9));
    assertThatIllegalArgumentException().isThrownBy(() -> BackPressure.of(0.5, 0, 0, 9));
    assertThatIllegalArgumentException().isThrownBy(() -> BackPressure.of(0.5, 18, -1, 9));
    assertThatIllegalArgumentException().isThrownBy(() -> BackPressure.of(0.5, 18, 0, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> WET.forceBetween(3, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> WET.atDepthKilopascals(Double.NaN));
  }
}
