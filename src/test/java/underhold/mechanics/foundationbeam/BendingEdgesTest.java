package underhold.mechanics.foundationbeam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Closed solutions at the edges of the formulas. */
class BendingEdgesTest {
  private static final BromsSand SAND = new BromsSand(10, 0.2, 3);

  @Test
  @DisplayName(
      "Broms 1964, gamma b Kp = 6: M alone cbrt(2 M / 6); H alone sqrt(2 H / 6); together at L = 2 m M = 24 - 2 H")
  void least_length_in_sand() {
    assertThat(SAND.leastLength(81, 0)).isCloseTo(3, within(1e-9));
    assertThat(SAND.leastLength(0, 12)).isCloseTo(2, within(1e-9));
    assertThat(SAND.leastLength(10, 7)).isCloseTo(2, within(1e-9));
    assertThat(SAND.leastLength(14, 5)).isCloseTo(2, within(1e-9));
    assertThat(SAND.leastLength(0, 0)).isZero();
    assertThatThrownBy(() -> SAND.leastLength(-1, 0)).hasMessageContaining("moment");
    assertThatThrownBy(() -> SAND.leastLength(0, -1)).hasMessageContaining("force");
    // 1.5 x 6 f2 = 36: f = 2 m; M + 2/3 x 36 x 2
    assertThat(SAND.depthOfGreatestMoment(36)).isCloseTo(2, within(1e-12));
    assertThat(SAND.greatestMoment(5, 36)).isCloseTo(53, within(1e-9));
    assertThatThrownBy(() -> SAND.greatestMoment(-1, 1)).hasMessageContaining("moment");
    assertThatThrownBy(() -> SAND.depthOfGreatestMoment(-1)).hasMessageContaining("force");
  }

  @Test
  @DisplayName(
      "Hetenyi: a moment on a free head dies as exp(-x)(cos x + sin x): zero at 3 pi / 4; half at x with that value 0.5")
  void moment_on_a_free_head() {
    // E I 4, k 16: lambda (16 / 16)^0.25 = 1 a metre
    PileOnSprings springs = new PileOnSprings(4, 16);
    DeflectedPile bent = springs.momentOnFreeHead(10);
    assertThat(springs.lambda()).isCloseTo(1, within(1e-12));
    assertThat(bent.depthOfNoMoment()).isCloseTo(0.75 * Math.PI, within(1e-9));
    double half = bent.depthWhereMomentFallsTo(5);
    assertThat(Math.exp(-half) * (Math.cos(half) + Math.sin(half))).isCloseTo(0.5, within(1e-9));
    assertThat(half).isLessThan(0.75 * Math.PI);
    assertThat(bent.depthWhereMomentFallsTo(10)).isZero();
    assertThat(bent.depthWhereMomentFallsTo(0)).isCloseTo(0.75 * Math.PI, within(1e-9));
    assertThatThrownBy(() -> bent.depthWhereMomentFallsTo(-1)).hasMessageContaining("strength");
    assertThat(springs.momentOnFreeHead(0).depthOfNoMoment()).isZero();
    // the other way round bends the other way, to the same depths
    DeflectedPile other = new DeflectedPile(bent.deflection().times(-1), 4, 0);
    assertThat(other.depthOfNoMoment()).isCloseTo(0.75 * Math.PI, within(1e-9));
    assertThat(other.depthWhereMomentFallsTo(5)).isCloseTo(half, within(1e-9));
  }
}
