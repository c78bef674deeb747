package underhold.mechanics.foundationbeam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class BromsTest {
  private static final double FOOT = 0.3048;
  private static final double KSF = 47.88025898;
  private static final double KIP = 4.448221615;
  private static final double KIP_FOOT = KIP * FOOT;
  private static final Percentage PRINTED = withPercentage(0.2);
  private static final double WIDTH = 7 * 0.0254;

  @Test
  @DisplayName(
      "Own case, Broms 1964 (from memory, verify): su 1 ksf, b 7 in, M 30 kip-ft alone: g 4.781, L 5.66 ft; doubled 6.761, 7.64 ft")
  void moment_alone_in_clay() {
    BromsClay clay = new BromsClay(KSF, WIDTH);
    assertThat(clay.resistingLength(30 * KIP_FOOT, 0) / FOOT).isCloseTo(4.781, PRINTED);
    assertThat(clay.leastLength(30 * KIP_FOOT, 0) / FOOT).isCloseTo(5.66, PRINTED);
    assertThat(clay.resistingLength(60 * KIP_FOOT, 0) / FOOT).isCloseTo(6.761, PRINTED);
    assertThat(clay.leastLength(60 * KIP_FOOT, 0) / FOOT).isCloseTo(7.64, PRINTED);
  }

  @Test
  @DisplayName(
      "Own case, Broms 1964 (from memory, verify): M 30 and H 3 doubled: f 1.143, Mmax 68.68, g 7.234, L 9.25 ft")
  void moment_and_force_in_clay() {
    BromsClay clay = new BromsClay(KSF, WIDTH);
    assertThat(clay.depthOfGreatestMoment(6 * KIP) / FOOT).isCloseTo(1.143, PRINTED);
    assertThat(clay.greatestMoment(60 * KIP_FOOT, 6 * KIP) / KIP_FOOT).isCloseTo(68.68, PRINTED);
    assertThat(clay.resistingLength(60 * KIP_FOOT, 6 * KIP) / FOOT).isCloseTo(7.234, PRINTED);
    assertThat(clay.leastLength(60 * KIP_FOOT, 6 * KIP) / FOOT).isCloseTo(9.25, PRINTED);
  }

  @Test
  @DisplayName(
      "Own case, Broms 1964 (from memory, verify): P 5, M 20 doubled, su 0.75 ksf: f 2.540, Mmax 61.45, g 7.901, L 11.32 ft")
  void reduced_strength_in_clay() {
    BromsClay clay = new BromsClay(0.75 * KSF, WIDTH);
    assertThat(clay.depthOfGreatestMoment(10 * KIP) / FOOT).isCloseTo(2.540, PRINTED);
    assertThat(clay.greatestMoment(40 * KIP_FOOT, 10 * KIP) / KIP_FOOT).isCloseTo(61.45, PRINTED);
    assertThat(clay.resistingLength(40 * KIP_FOOT, 10 * KIP) / FOOT).isCloseTo(7.901, PRINTED);
    assertThat(clay.leastLength(40 * KIP_FOOT, 10 * KIP) / FOOT).isCloseTo(11.32, PRINTED);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label(
      "Root finding (Hipparchus): force and moment balance about the head give the same length in clay")
  void equilibrium_in_clay(
      @ForAll @DoubleRange(min = 10, max = 200) double strength,
      @ForAll @DoubleRange(min = 0.1, max = 0.5) double width,
      @ForAll @DoubleRange(min = 1, max = 200) double moment,
      @ForAll @DoubleRange(min = 0, max = 50) double force) {
    double p = 9 * strength * width;
    double top = 1.5 * width;
    // pressure one way from the top to t, the other way from t to L: H = p (2t - top - L)
    double length =
        new BrentSolver(1e-12)
            .solve(
                500,
                l -> {
                  double t = (force / p + top + l) / 2;
                  double resisting = p * (l * l - 2 * t * t + top * top) / 2;
                  return resisting - moment;
                },
                top + force / p,
                top + force / p + 1000);
    assertThat(new BromsClay(strength, width).leastLength(moment, force))
        .isCloseTo(length, withPercentage(1e-4));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label("Root finding (Hipparchus): the cubic of a short pile in sand")
  void short_pile_in_sand(
      @ForAll @DoubleRange(min = 8, max = 22) double weight,
      @ForAll @DoubleRange(min = 2, max = 6) double passive,
      @ForAll @DoubleRange(min = 0.5, max = 200) double moment,
      @ForAll @DoubleRange(min = 0, max = 100) double force) {
    double c = weight * 0.2 * passive;
    double root =
        new BrentSolver(1e-12).solve(500, l -> c * l * l * l / 2 - force * l - moment, 0.01, 1000);
    assertThat(new BromsSand(weight, 0.2, passive).leastLength(moment, force))
        .isCloseTo(root, withPercentage(1e-6));
  }

  @Test
  @DisplayName(
      "Broms 1964, sand (from memory, verify): f = 0.816 sqrt(H / (gamma b Kp)), Mmax = M + 0.667 H f, by hand")
  void long_pile_in_sand() {
    BromsSand sand = new BromsSand(10, 0.2, 3);
    // 0.816 x sqrt(24 / 6) = 1.632
    assertThat(sand.depthOfGreatestMoment(24)).isCloseTo(1.633, withPercentage(0.1));
    assertThat(sand.greatestMoment(5, 24)).isCloseTo(5 + 0.667 * 24 * 1.633, PRINTED);
    // moment alone: L^3 = 2 x 81 / 6 = 27
    assertThat(sand.leastLength(81, 0)).isCloseTo(3, within(1e-9));
    assertThat(sand.leastLength(0, 0)).isZero();
    assertThat(sand.leastLength(0, 27)).isCloseTo(3, within(1e-9));
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> new BromsClay(0, 1)).hasMessageContaining("undrained strength");
    assertThatThrownBy(() -> new BromsClay(1, -1)).hasMessageContaining("width");
    assertThatThrownBy(() -> new BromsClay(1, 1).leastLength(-1, 0)).hasMessageContaining("moment");
    assertThatThrownBy(() -> new BromsClay(1, 1).leastLength(1, -1)).hasMessageContaining("force");
    assertThatThrownBy(() -> new BromsSand(0, 1, 3)).hasMessageContaining("unit weight");
    assertThatThrownBy(() -> new BromsSand(1, 1, 0)).hasMessageContaining("passive");
    assertThatThrownBy(() -> new BromsSand(1, 1, 3).leastLength(-1, 0))
        .hasMessageContaining("moment");
    assertThatThrownBy(() -> new BromsSand(1, 1, 3).leastLength(1, -1))
        .hasMessageContaining("force");
    assertThatThrownBy(() -> new BromsSand(1, 1, 3).greatestMoment(-1, 1))
        .hasMessageContaining("moment");
    assertThatThrownBy(() -> new BromsSand(1, 1, 3).depthOfGreatestMoment(-1))
        .hasMessageContaining("force");
  }
}
