package underhold.mechanics.soil.edgewall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.edgewall.ProppedWall.Forces;
import underhold.quantity.Seeds;

class ProppedWallTest {
  private static final BackPressure WET = BackPressure.of(0.5, 20, 10, 3);
  private static final ProppedWall TWO = new ProppedWall(WET, List.of(1.0, 3.0), 4);

  @Test
  @DisplayName(
      "Own case by hand: props at 1 and 3 m, ground at 4 m: hinges 33.75, 46.23, foot 22.47")
  void two_props_by_hinges() {
    Forces forces = TWO.byHinges();
    assertThat(forces.props().get(0)).isCloseTo(33.75, within(1e-9));
    assertThat(forces.props().get(1)).isCloseTo(46.2342, within(1e-3));
    assertThat(forces.foot()).isCloseTo(22.4683, within(1e-3));
  }

  @Test
  @DisplayName("Own case by hand: the same by tributary lengths 30.00, 49.36, foot 23.09")
  void two_props_by_tributary_lengths() {
    Forces forces = TWO.byTributaryLengths();
    assertThat(forces.props().get(0)).isCloseTo(30, within(1e-9));
    assertThat(forces.props().get(1)).isCloseTo(49.3631, within(1e-3));
    assertThat(forces.foot()).isCloseTo(23.0894, within(1e-3));
  }

  @Test
  @DisplayName("Own case by hand: 4.17 kN m/m over the first prop, 12.56 at 2.066 m, shear 28.33")
  void moments_and_shear_by_hand() {
    assertThat(TWO.momentOverFirst()).isCloseTo(4.1667, within(1e-3));
    assertThat(TWO.below(0).depthMetres()).isCloseTo(2.0658, within(1e-3));
    assertThat(TWO.below(0).kilonewtonMetresPerMetre()).isCloseTo(12.555, within(2e-3));
    assertThat(TWO.greatestMoment()).isCloseTo(12.555, within(2e-3));
    // lower end of the upper length: 60 - 10 - 21.667 = 28.333
    assertThat(TWO.greatestShear()).isCloseTo(28.3333, within(1e-3));
  }

  @Test
  @DisplayName("Own case: a prop below the resultant takes all, the foot never pulls")
  void low_single_prop_takes_all() {
    ProppedWall low = new ProppedWall(WET, List.of(3.5), 4);
    assertThat(low.byHinges().props().get(0)).isCloseTo(WET.forceAbove(4), within(1e-9));
    assertThat(low.byHinges().foot()).isZero();
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label(
      "Outside check: hinge forces equal a linear system of moment equations solved by Hipparchus with loads by quadrature")
  void hinge_forces_equal_a_linear_system(
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double coefficient,
      @ForAll @DoubleRange(min = 0, max = 100) double surcharge,
      @ForAll @DoubleRange(min = 0, max = 8) double water,
      @ForAll @DoubleRange(min = 0.2, max = 1.2) double first,
      @ForAll @DoubleRange(min = 1.5, max = 3) double spacing,
      @ForAll @IntRange(min = 1, max = 4) int count) {
    BackPressure back = BackPressure.of(coefficient, 19, surcharge, water);
    double[] at = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      at[i] = first + i * spacing;
    }
    List<Double> levels = java.util.Arrays.stream(at).limit(count).boxed().toList();
    Forces forces = new ProppedWall(back, levels, at[count]).byHinges();
    // No moment at any support below the first; all loads and reactions above it balance there.
    double[][] matrix = new double[count + 1][count + 1];
    double[] loads = new double[count + 1];
    for (int row = 0; row < count; row++) {
      double hinge = at[row + 1];
      for (int prop = 0; prop <= row; prop++) {
        matrix[row][prop] = hinge - at[prop];
      }
      loads[row] = integral(z -> back.atDepthKilopascals(z) * (hinge - z), hinge, water);
    }
    java.util.Arrays.fill(matrix[count], 1);
    loads[count] = integral(back::atDepthKilopascals, at[count], water);
    RealVector solved =
        new LUDecomposition(new Array2DRowRealMatrix(matrix))
            .getSolver()
            .solve(new ArrayRealVector(loads));
    for (int prop = 0; prop < count; prop++) {
      assertThat(forces.props().get(prop))
          .as("prop %d", prop)
          .isCloseTo(solved.getEntry(prop), within(1e-6 * (1 + loads[count])));
    }
    assertThat(forces.foot()).isCloseTo(solved.getEntry(count), within(1e-6 * (1 + loads[count])));
  }

  private static double integral(
      org.hipparchus.analysis.UnivariateFunction f, double to, double water) {
    double knee = Math.min(water, to);
    return part(f, 0, knee) + part(f, knee, to);
  }

  private static double part(org.hipparchus.analysis.UnivariateFunction f, double from, double to) {
    return to - from < 1e-9
        ? 0
        : new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-12).integrate(10_000, f, from, to);
  }

  @Property(tries = 50, seed = Seeds.BUILD)
  @Label("Outside check: the span moment equals a finite-difference solution of M'' = -p")
  void span_moment_equals_finite_differences(
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double coefficient,
      @ForAll @DoubleRange(min = 0, max = 100) double surcharge,
      @ForAll @DoubleRange(min = 0, max = 6) double water,
      @ForAll @DoubleRange(min = 0.1, max = 2) double first,
      @ForAll @DoubleRange(min = 1, max = 4) double length) {
    BackPressure back = BackPressure.of(coefficient, 19, surcharge, water);
    ProppedWall wall = new ProppedWall(back, List.of(first), first + length);
    int nodes = 400;
    double h = length / nodes;
    // Thomas solution of M[i-1] - 2 M[i] + M[i+1] = -p h^2 with M = 0 at both ends
    double[] c = new double[nodes];
    double[] d = new double[nodes];
    for (int i = 1; i < nodes; i++) {
      double p = back.atDepthKilopascals(first + i * h);
      double pivot = -2 - c[i - 1];
      c[i] = 1 / pivot;
      d[i] = (-p * h * h - d[i - 1]) / pivot;
    }
    double largest = 0;
    double next = 0;
    for (int i = nodes - 1; i > 0; i--) {
      next = d[i] - c[i] * next;
      largest = Math.max(largest, next);
    }
    // 400 nodes: the kink at the water and the place between nodes leave about 1e-4.
    assertThat(wall.below(0).kilonewtonMetresPerMetre())
        .isCloseTo(largest, within(3e-4 * (largest + 0.01)));
  }

  @Test
  void props_out_of_order_or_below_the_ground_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new ProppedWall(WET, List.of(), 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ProppedWall(WET, List.of(2.0, 1.0), 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new ProppedWall(WET, List.of(2.0), 2));
  }
}
