package underhold.mechanics.soil.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.soil.Us;
import underhold.mechanics.soil.stress.StripStress;

class SurchargeTest {

  @ParameterizedTest(
      name =
          "Caltrans, Trenching and Shoring Manual, Table 5-2, strip of 300 psf from 3 to 15 ft (secondary"
              + " digest): {0} ft deep {1} psf")
  @CsvSource({"2, 150.1", "4, 171.5", "10, 96.4"})
  void stripOfTheCaltransTable(double depthFeet, double printedPsf) {
    StripSurcharge strip = new StripSurcharge(300 * Us.PSF, 3 * Us.FOOT, 15 * Us.FOOT);
    // Tolerance 0.2 psf: at 10 ft the formula gives 96.5 and the table prints 96.4.
    assertThat(strip.atDepthKilopascals(depthFeet * Us.FOOT) / Us.PSF)
        .isCloseTo(printedPsf, within(0.2));
  }

  @ParameterizedTest(
      name =
          "Caltrans, Trenching and Shoring Manual, Table 5-2, HS-20 wheels, wall 10 ft (secondary digest):"
              + " {0} ft deep {1} psf")
  @CsvSource({"2, 77.3", "4, 150.4", "10, 84.6"})
  void wheelLoadsOfTheCaltransTable(double depthFeet, double printedPsf) {
    // The digest prints the coefficients 112.2 (m = 0.6) and 581.1 (m = 1.2); the loads are worked
    // back from them.
    double height = 10 * Us.FOOT;
    PointSurcharge near = wheel(112.2, 0.6, height);
    PointSurcharge far = wheel(581.1, 1.2, height);
    double depth = depthFeet * Us.FOOT;
    double pressure =
        near.atDepthKilopascals(depth, height) + far.atDepthKilopascals(depth, height);
    // Tolerance 0.1 psf: the table prints one decimal.
    assertThat(pressure / Us.PSF).isCloseTo(printedPsf, within(0.1));
  }

  private static PointSurcharge wheel(double coefficientPsf, double m, double height) {
    return new PointSurcharge(
        coefficientPsf * Us.PSF * height * height / (1.77 * m * m), m * height);
  }

  @Test
  @DisplayName(
      "Published strip on a rigid wall, 100 kPa, width 2 m, offset 3 m (secondary, from an open test suite"
          + " drawing on M. Budhu's textbooks): 11.85 kPa at 5 m, 121.83 kN/m on 19 m")
  void stripOnARigidWall() {
    StripSurcharge strip = new StripSurcharge(100, 3, 5);
    // Tolerance 0.1 %: printed to four figures.
    assertThat(strip.atDepthKilopascals(5)).isCloseTo(11.85, withPercentage(0.1));
    assertThat(strip.thrust(19).forceKilonewtonsPerMetre()).isCloseTo(121.83, withPercentage(0.1));
  }

  @ParameterizedTest(
      name = "Quadrature (Hipparchus) of the strip pressure, edges {0} and {1} m, wall {2} m")
  @CsvSource({"0, 2, 3", "0.5, 1.5, 4", "3, 5, 19", "2, 40, 3"})
  void stripThrustIsTheIntegralOfThePressure(double near, double far, double height) {
    StripSurcharge strip = new StripSurcharge(80, near, far);
    assertThrust(strip::atDepthKilopascals, strip.thrust(height), height);
  }

  @ParameterizedTest(
      name = "Quadrature (Hipparchus) of the line load pressure, {0} m from a 4 m wall")
  @CsvSource({"0", "0.8", "1.6", "1.7", "3", "9"})
  void lineThrustIsTheIntegralOfThePressure(double distance) {
    LineSurcharge line = new LineSurcharge(50, distance);
    assertThrust(depth -> line.atDepthKilopascals(depth, 4), line.thrust(4), 4);
  }

  @ParameterizedTest(
      name = "Quadrature (Hipparchus) of the point load pressure, {0} m from a 4 m wall")
  @CsvSource({"0", "1.2", "1.7", "3", "9"})
  void pointThrustIsTheIntegralOfThePressure(double distance) {
    PointSurcharge point = new PointSurcharge(120, distance);
    assertThrust(depth -> point.atDepthKilopascals(depth, 4), point.peakThrust(4), 4);
  }

  private static void assertThrust(DoubleUnaryOperator pressure, Resultant thrust, double height) {
    double force = integral(pressure, height);
    double moment = integral(depth -> pressure.applyAsDouble(depth) * (height - depth), height);
    // Tolerance 1e-4 %: accuracy asked of the quadrature is 1e-9, widened for its error estimate.
    assertThat(thrust.forceKilonewtonsPerMetre()).isCloseTo(force, withPercentage(1e-4));
    assertThat(thrust.momentAboutBaseKilonewtonMetresPerMetre())
        .isCloseTo(moment, withPercentage(1e-4));
  }

  private static double integral(DoubleUnaryOperator function, double height) {
    return new IterativeLegendreGaussIntegrator(20, 1e-9, 1e-12)
        .integrate(100_000, function::applyAsDouble, 0, height);
  }

  @Test
  @DisplayName(
      "Line load thrusts: 0.64 Q/(m^2 + 1) far (from memory), 0.55 Q near by the chart, which rounds the"
          + " exact 0.539 Q")
  void lineThrustsOfTheCharts() {
    assertThat(new LineSurcharge(100, 4).thrust(4).forceKilonewtonsPerMetre())
        .isCloseTo(32, withPercentage(0.01));
    double near = new LineSurcharge(100, 0.5).thrust(4).forceKilonewtonsPerMetre();
    assertThat(near).isCloseTo(53.9, withPercentage(0.1)).isCloseTo(55, withPercentage(2.1));
  }

  @Test
  @DisplayName(
      "The rigid-wall strip is twice the free-field stress of Boussinesq (method of images, R. D. Mindlin)")
  void rigidStripIsDoubled() {
    for (double depth : new double[] {0.3, 1, 2.5, 8}) {
      double freeField = StripStress.at(60, 2, 2, depth).horizontalKilopascals();
      assertThat(new StripSurcharge(60, 1, 3).atDepthKilopascals(depth))
          .isCloseTo(2 * freeField, withPercentage(1e-6));
    }
  }

  @Test
  @DisplayName("Own case: a strip from the wall to far away presses as K = 1 on a rigid wall")
  void endlessStripIsAUniformSurcharge() {
    // Tolerance 1 %: the far edge is 1000 wall heights away.
    assertThat(new StripSurcharge(10, 0, 3000).atDepthKilopascals(3))
        .isCloseTo(10, withPercentage(1));
  }

  @Test
  @DisplayName(
      "Caltrans, Trenching and Shoring Manual, 5-1-7 (secondary digest): along the wall times cos^2(1.1 t)")
  void pointLoadOffsetAlongTheWall() {
    PointSurcharge point = new PointSurcharge(100, 2);
    double straight = point.atDepthKilopascals(1, 4);
    assertThat(point.atDepthKilopascals(1, 4, 0)).isEqualTo(straight);
    assertThat(point.atDepthKilopascals(1, 4, 30))
        .isCloseTo(straight * Math.pow(Math.cos(Math.toRadians(33)), 2), within(1e-9));
    assertThat(point.atDepthKilopascals(1, 4, 90)).isZero();
  }

  @Test
  void edgesInTheWrongOrderAndDepthsBelowTheWallAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new StripSurcharge(10, 2, 2));
    LineSurcharge line = new LineSurcharge(10, 1);
    assertThatIllegalArgumentException().isThrownBy(() -> line.atDepthKilopascals(5, 4));
  }
}
