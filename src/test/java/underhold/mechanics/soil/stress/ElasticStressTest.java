package underhold.mechanics.soil.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class ElasticStressTest {

  @Test
  @DisplayName(
      "Published strip in a half-space, 100 kPa, width 1 m, below the edge at 1 m (secondary, from an open"
          + " test suite drawing on M. Budhu's textbooks): 40.92, 9.08, 15.92 kPa")
  void stripBelowItsEdge() {
    StripStress stress = StripStress.at(100, 1, 0.5, 1);
    // Tolerance 0.01 kPa: printed to two decimals.
    assertThat(stress.verticalKilopascals()).isCloseTo(40.92, within(0.01));
    assertThat(stress.horizontalKilopascals()).isCloseTo(9.08, within(0.01));
    assertThat(stress.shearKilopascals()).isCloseTo(15.92, within(0.01));
  }

  @Test
  @DisplayName(
      "B. M. Das, Principles of Foundation Engineering, 7th edition, Example 5.1 (secondary): 19.65 kPa below"
          + " the centre of 2.5 by 5 m")
  void rectangleBelowItsCentre() {
    // Tolerance 0.5 %: the example reads its influence value from a table; the exact value is
    // 19.68.
    assertThat(RectangleStress.belowCentreKilopascals(150, 2.5, 5, 6.25))
        .isCloseTo(19.65, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "Published corner of a square, 100 kPa, 1 m, 1 m deep (secondary, from an open test suite drawing on"
          + " M. Budhu's textbooks): 17.52 kPa")
  void squareBelowItsCorner() {
    // Tolerance 0.1 %: printed to four figures.
    assertThat(RectangleStress.belowCornerKilopascals(100, 1, 1, 1))
        .isCloseTo(17.52, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Quadrature (Hipparchus) of J. Boussinesq's point load over the area, below a point outside the"
          + " rectangle")
  void rectangleIsTheIntegralOfPointLoads() {
    double x = 1.7;
    double y = -0.4;
    double z = 1.3;
    IterativeLegendreGaussIntegrator outer = new IterativeLegendreGaussIntegrator(16, 1e-9, 1e-12);
    IterativeLegendreGaussIntegrator inner = new IterativeLegendreGaussIntegrator(16, 1e-9, 1e-12);
    double sum =
        outer.integrate(
            100_000,
            u ->
                inner.integrate(
                    100_000,
                    v -> {
                      double square = (x - u) * (x - u) + (y - v) * (y - v) + z * z;
                      return 3 * z * z * z / (2 * Math.PI * Math.pow(square, 2.5));
                    },
                    -1.5,
                    1.5),
            -1,
            1);
    // Tolerance 1e-4 %: accuracy of the double quadrature.
    assertThat(RectangleStress.belowPointKilopascals(100, 2, 3, x, y, z))
        .isCloseTo(100 * sum, withPercentage(1e-4));
  }

  @Test
  @DisplayName("Own case: a long rectangle is a strip, and the centre is a point")
  void limitsAgree() {
    assertThat(RectangleStress.belowPointKilopascals(100, 2, 2000, 0.5, 0, 3))
        .isCloseTo(StripStress.at(100, 2, 0.5, 3).verticalKilopascals(), withPercentage(1e-3));
    assertThat(RectangleStress.belowPointKilopascals(100, 2, 3, 0, 0, 3))
        .isCloseTo(RectangleStress.belowCentreKilopascals(100, 2, 3, 3), withPercentage(1e-9));
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void stressesAreFiniteAndNeverAboveTheLoad(
      @ForAll @DoubleRange(min = 0, max = 1e5) double load,
      @ForAll @DoubleRange(min = 0.01, max = 1e3) double width,
      @ForAll @DoubleRange(min = 0.01, max = 1e3) double length,
      @ForAll @DoubleRange(min = -1e3, max = 1e3) double offset,
      @ForAll @DoubleRange(min = 0.01, max = 1e3) double depth) {
    double limit = load * (1 + 1e-9);
    assertThat(StripStress.at(load, width, offset, depth).verticalKilopascals())
        .isFinite()
        .isBetween(-1e-9 * load, limit);
    assertThat(
            RectangleStress.belowPointKilopascals(load, width, length, offset, offset / 2, depth))
        .isFinite()
        .isBetween(0.0, limit);
    assertThat(RectangleStress.belowCentreKilopascals(load, width, length, depth * 2))
        .isLessThanOrEqualTo(
            RectangleStress.belowCentreKilopascals(load, width, length, depth) * (1 + 1e-9));
  }
}
