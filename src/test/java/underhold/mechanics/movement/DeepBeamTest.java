package underhold.mechanics.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.movement.DeepBeam.Bending;
import underhold.quantity.Seeds;

class DeepBeamTest {
  private static final double STRAIN = 0.075e-2;

  @ParameterizedTest(
      name =
          "Burland and Wroth 1974 by derivation, critical D/L x 1000 at 0.075 %: L/H {0}, E/G {1}: hogging {2} bending, {3} shear; sagging {4}, {5}")
  @CsvSource({
    "1, 2.6, 1.0375, 0.7981, 0.6125, 0.9423",
    "2, 2.6, 0.6125, 0.9423, 0.4938, 1.5192",
    "3, 2.6, 0.5125, 1.1827, 0.5375, 2.4808",
    "2, 12.5, 2.4688, 0.7900, 1.4219, 0.9100",
    "2, 0.5, 0.2187, 1.7500, 0.2969, 4.7500"
  })
  void criticalDeflectionRatios(
      double slenderness,
      double ratio,
      double hogBending,
      double hogShear,
      double sagBending,
      double sagShear) {
    // Tolerance: the table is rounded to four decimals.
    DeepBeam hogging = new DeepBeam(slenderness * 7, 7, Bending.HOGGING, ratio);
    DeepBeam sagging = new DeepBeam(slenderness * 7, 7, Bending.SAGGING, ratio);
    assertThat(1000 * STRAIN * hogging.bendingFactor()).isCloseTo(hogBending, within(0.51e-4));
    assertThat(1000 * STRAIN * hogging.diagonalFactor()).isCloseTo(hogShear, within(0.51e-4));
    assertThat(1000 * STRAIN * sagging.bendingFactor()).isCloseTo(sagBending, within(0.51e-4));
    assertThat(1000 * STRAIN * sagging.diagonalFactor()).isCloseTo(sagShear, within(0.51e-4));
    assertThat(1000 * hogging.criticalDeflectionRatio(STRAIN))
        .isCloseTo(Math.min(hogBending, hogShear), within(0.51e-4));
  }

  @Test
  @DisplayName(
      "Burland and Wroth 1974 (from memory): E/G 2.6 for masonry, 12.5 for frames, 0.5 flexible")
  void moduliOfTheMethod() {
    assertThat(DeepBeam.MASONRY_RATIO).isEqualTo(2.6);
    assertThat(DeepBeam.FRAME_RATIO).isEqualTo(12.5);
    assertThat(DeepBeam.FLEXURAL_RATIO).isEqualTo(0.5);
  }

  @ParameterizedTest(
      name =
          "Timoshenko beam, centre load, solved as a matrix (Hipparchus): L {0} m, H {1} m, {2}, E/G {3}")
  @CsvSource({
    "10, 5, SAGGING, 2.6",
    "10, 5, HOGGING, 2.6",
    "24, 6, HOGGING, 12.5",
    "3, 9, SAGGING, 0.5",
    "40, 4, HOGGING, 0.5"
  })
  void strainsOfAnIndependentBeam(double length, double height, Bending bending, double ratio) {
    CentreLoadedBeam beam = new CentreLoadedBeam(length, height, bending, ratio);
    DeepBeam wall = new DeepBeam(length, height, bending, ratio);
    // Tolerance 1e-6 %: the elements are exact, the solver rounds.
    assertThat(wall.bendingStrain(beam.deflection() / length))
        .isCloseTo(beam.fibreStrain(), withPercentage(1e-6));
    assertThat(wall.diagonalStrain(beam.deflection() / length))
        .isCloseTo(beam.diagonalStrain(), withPercentage(1e-6));
  }

  @ParameterizedTest(name = "Eigenvalues (Hipparchus) of the strain tensor: eh {0}, ed {1}, v {2}")
  @CsvSource({"0.0005, 0.0004, 0.3", "0, 0.0007, 0.3", "0.001, 0, 0.3", "0.0003, 0.0009, 0.2"})
  void diagonalTensionIsAPrincipalStrain(double horizontal, double shear, double poisson) {
    assertThat(CombinedStrain.diagonal(shear, horizontal, poisson))
        .isCloseTo(largest(horizontal, shear, -poisson * horizontal), within(1e-15));
  }

  @ParameterizedTest(name = "Eigenvalues (Hipparchus) of the panel's strain: eL {0}, b {1}")
  @CsvSource({"0.001, 0.002", "0, 0.00334", "0.0007, 0", "0.0004, 0.0004"})
  void pointStrainIsAPrincipalStrain(double lateral, double distortion) {
    PointStrain strain = new PointStrain(lateral, distortion);
    assertThat(strain.principal()).isCloseTo(largest(lateral, distortion / 2, 0), within(1e-15));
    double q = Math.toRadians(strain.angleDegrees());
    assertThat(lateral * Math.cos(q) * Math.cos(q) + distortion * Math.sin(q) * Math.cos(q))
        .isCloseTo(strain.principal(), within(1e-15));
  }

  private static double largest(double along, double shear, double across) {
    RealMatrix tensor =
        MatrixUtils.createRealMatrix(new double[][] {{along, shear}, {shear, across}});
    double[] values = new EigenDecompositionSymmetric(tensor).getEigenvalues();
    return Math.max(values[0], values[1]);
  }

  @Test
  @DisplayName(
      "Burland 1995 (form derived): at v = 0.3, edt = 0.35 eh + sqrt((0.65 eh)^2 + ed^2); eh 0.0004, ed 0.0003: 0.00053699")
  void combinedStrainByHand() {
    assertThat(CombinedStrain.diagonal(0.0003, 0.0004, 0.3))
        .isCloseTo(0.35 * 0.0004 + Math.sqrt(0.26e-3 * 0.26e-3 + 0.3e-3 * 0.3e-3), within(1e-15));
    assertThat(CombinedStrain.diagonal(0.0003, 0.0004, 0.3)).isCloseTo(0.00053699, within(1e-8));
    assertThat(CombinedStrain.bending(0.0003, 0.0004)).isCloseTo(0.0007, within(1e-15));
  }

  @Test
  @DisplayName(
      "Own case: wall 10 x 6 m hogging, D/L 0.25 x 10^-3, eh 0.5 x 10^-3: diagonal 0.56 x 10^-3 governs bending by hand")
  void wallByHand() {
    DeepBeam wall = new DeepBeam(10, 6, Bending.HOGGING, 2.6);
    // I = 72 m3, t = 6 m; bending factor 10/72 + 1.5 x 72 x 2.6 / (6 x 10 x 6) = 0.138889 + 0.78
    assertThat(wall.secondMoment()).isCloseTo(72, within(1e-9));
    assertThat(wall.tensionFibreMetres()).isEqualTo(6);
    assertThat(wall.bendingFactor()).isCloseTo(0.918889, within(1e-6));
    // diagonal factor 1 + 6 x 100 / (18 x 72 x 2.6) = 1.178063
    assertThat(wall.diagonalFactor()).isCloseTo(1.178063, within(1e-6));
    double diagonal =
        0.35 * 0.5e-3 + Math.sqrt(Math.pow(0.325e-3, 2) + Math.pow(0.25e-3 / 1.178063, 2));
    double bending = 0.25e-3 / 0.918889 + 0.5e-3;
    assertThat(wall.tensileStrain(0.25e-3, 0.5e-3))
        .isCloseTo(Math.max(diagonal, bending), within(1e-9));
    assertThat(bending).isGreaterThan(diagonal);
  }

  @Property(seed = Seeds.BUILD)
  void moreBendingAndMorePullNeverStrainLess(
      @ForAll @DoubleRange(min = 1, max = 60) double length,
      @ForAll @DoubleRange(min = 1, max = 40) double height,
      @ForAll Bending bending,
      @ForAll @DoubleRange(min = 0.1, max = 20) double ratio,
      @ForAll @DoubleRange(min = 0, max = 0.01) double deflection,
      @ForAll @DoubleRange(min = 0, max = 0.01) double pull) {
    DeepBeam wall = new DeepBeam(length, height, bending, ratio);
    double strain = wall.tensileStrain(deflection, pull);
    assertThat(strain).isFinite().isGreaterThanOrEqualTo(pull);
    assertThat(wall.tensileStrain(deflection * 1.1, pull)).isGreaterThanOrEqualTo(strain);
    assertThat(wall.tensileStrain(deflection, pull * 1.1)).isGreaterThanOrEqualTo(strain);
    assertThat(wall.tensileStrain(0, 0)).isZero();
    // The critical ratio is where the strain without pull just reaches the limit.
    double critical = wall.criticalDeflectionRatio(STRAIN);
    assertThat(wall.tensileStrain(critical, 0)).isCloseTo(STRAIN, within(1e-12));
  }

  @Test
  void wallsThatCannotBeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DeepBeam(0, 5, Bending.SAGGING, 2.6))
        .withMessageContaining("length of the wall");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DeepBeam(5, Double.NaN, Bending.SAGGING, 2.6));
    assertThatIllegalArgumentException().isThrownBy(() -> new DeepBeam(5, 5, Bending.SAGGING, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DeepBeam(20_000, 1, Bending.SAGGING, 2.6))
        .withMessageContaining("length over height");
    assertThatIllegalArgumentException().isThrownBy(() -> new PointStrain(-1e-6, 0));
  }
}
