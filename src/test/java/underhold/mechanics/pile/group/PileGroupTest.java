package underhold.mechanics.pile.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.pile.group.RigidCap.Loss;
import underhold.mechanics.pile.group.RigidCap.Position;
import underhold.quantity.Seeds;

class PileGroupTest {
  private static final double FOOT = 0.3048;
  private static final double KIP = 4.448221615;
  private static final Position CENTRE = new Position(0, 0);

  @Test
  @DisplayName(
      "Own case: six piles 3 x 2, a corner lost: the worst of the rest carries 1.8 times as much; nine piles 1.5 times")
  void loss_of_a_corner_pile() {
    RigidCap six = RigidCap.grid(3, 2, 1, 1);
    Loss worst = six.worstLoss(600, CENTRE).orThrow();
    assertThat(worst.largestKilonewtons()).isCloseTo(180, within(1e-9));
    assertThat(worst.lost()).isIn(0, 2, 3, 5);
    assertThat(worst.loadsKilonewtons().get(worst.lost())).isZero();
    assertThat(RigidCap.grid(3, 3, 1, 1).worstLoss(900, CENTRE).orThrow().largestKilonewtons())
        .isCloseTo(150, within(1e-9));
    assertThat(RigidCap.grid(2, 2, 1, 1).worstLoss(400, CENTRE).orThrow().largestKilonewtons())
        .isCloseTo(200, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: leaving out Ixy would be wrong: six piles less a corner, by hand with the whole tensor")
  void whole_tensor_of_inertia() {
    // piles (0,-.5)(1,-.5)(-1,.5)(0,.5)(1,.5); centroid (0.2, 0.1); by
    // hand: Sx'^2 = 0.04+0.64+1.44+0.04+0.64 = 2.8; Sy'^2 = 2x0.36+3x0.16 = 1.2;
    // Sx'y' = (-.2)(-.6)+(.8)(-.6)+(-1.2)(.4)+(-.2)(.4)+(.8)(.4) = -0.6
    // e = (-0.2, -0.1): a = (-.2x1.2 - -.1x-.6)/(2.8x1.2-.36) = -.3/3 = -0.1;
    // b = (-.1x2.8 - -.2x-.6)/3 = -.4/3; P at (0,-.5): 1/5 + .02 + .08 = 0.3
    Loss loss = RigidCap.grid(3, 2, 1, 1).without(0, 1000, CENTRE).orThrow();
    assertThat(loss.loadsKilonewtons().get(1)).isCloseTo(300, within(1e-9));
    assertThat(loss.loadsKilonewtons().get(2)).isCloseTo(200, within(1e-9));
    assertThat(loss.loadsKilonewtons().get(3)).isCloseTo(266.6667, within(1e-3));
    assertThat(loss.loadsKilonewtons().get(4)).isCloseTo(166.6667, within(1e-3));
    assertThat(loss.loadsKilonewtons().get(5)).isCloseTo(66.6667, within(1e-3));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label("Hipparchus (linear algebra): loads agree with a rigid plate on springs, any pile lost")
  void loads_agree_with_a_plate_on_springs(
      @ForAll @IntRange(min = 2, max = 5) int columns,
      @ForAll @IntRange(min = 2, max = 4) int rows,
      @ForAll @DoubleRange(min = 0.5, max = 3) double spacing,
      @ForAll @DoubleRange(min = -1, max = 1) double ex,
      @ForAll @DoubleRange(min = -1, max = 1) double ey,
      @ForAll @IntRange(min = 0, max = 19) int which) {
    RigidCap cap = RigidCap.grid(columns, rows, spacing, spacing * 1.3);
    int lost = which % cap.piles().size();
    Position at = new Position(ex, ey);
    List<Double> loads = cap.without(lost, 1000, at).orThrow().loadsKilonewtons();
    List<Position> left = new ArrayList<>(cap.piles());
    left.remove(lost);
    List<Double> springs = springs(left, 1000, at);
    springs.add(lost, 0.0);
    for (int i = 0; i < loads.size(); i++) {
      assertThat(loads.get(i)).isCloseTo(springs.get(i), within(1e-6));
    }
    assertThat(loads.stream().mapToDouble(d -> d).sum()).isCloseTo(1000, within(1e-6));
  }

  /** Sinking and two turns of a plate on equal springs, from equilibrium about the origin. */
  private static List<Double> springs(List<Position> piles, double load, Position at) {
    RealMatrix k = new Array2DRowRealMatrix(3, 3);
    for (Position pile : piles) {
      double[] row = {1, pile.x(), pile.y()};
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          k.addToEntry(i, j, row[i] * row[j]);
        }
      }
    }
    RealVector w =
        new LUDecomposition(k)
            .getSolver()
            .solve(new ArrayRealVector(new double[] {load, load * at.x(), load * at.y()}));
    List<Double> loads = new ArrayList<>();
    for (Position pile : piles) {
      loads.add(w.getEntry(0) + w.getEntry(1) * pile.x() + w.getEntry(2) * pile.y());
    }
    return loads;
  }

  @Test
  void piles_on_one_line_bear_a_load_on_that_line_only() {
    RigidCap line = RigidCap.grid(3, 1, 2, 1);
    List<Double> loads = line.loadsKilonewtons(300, new Position(1, 0)).orThrow();
    assertThat(loads.get(0)).isCloseTo(25, within(1e-9));
    assertThat(loads.get(1)).isCloseTo(100, within(1e-9));
    assertThat(loads.get(2)).isCloseTo(175, within(1e-9));
    assertThat(line.loadsKilonewtons(300, new Position(0, 0.1)).reason())
        .hasValueSatisfying(why -> assertThat(why).contains("turns over"));
    RigidCap one = RigidCap.grid(1, 1, 1, 1);
    assertThat(one.loadsKilonewtons(300, CENTRE).orThrow()).containsExactly(300.0);
    assertThat(one.loadsKilonewtons(300, new Position(0.1, 0)).reason()).isPresent();
    assertThat(one.worstLoss(300, CENTRE).reason()).isPresent();
    assertThat(RigidCap.grid(2, 1, 1, 1).worstLoss(300, CENTRE).reason()).isPresent();
    assertThatThrownBy(() -> new RigidCap(List.of())).hasMessageContaining("at least one");
  }

  @Test
  @DisplayName("Own case: a slanted line of piles is a line too")
  void slanted_line() {
    RigidCap line =
        new RigidCap(List.of(new Position(-1, -1), new Position(0, 0), new Position(1, 1)));
    List<Double> loads = line.loadsKilonewtons(300, new Position(0.5, 0.5)).orThrow();
    assertThat(loads.get(0)).isCloseTo(25, within(1e-9));
    assertThat(loads.get(1)).isCloseTo(100, within(1e-9));
    assertThat(loads.get(2)).isCloseTo(175, within(1e-9));
    assertThat(line.loadsKilonewtons(300, new Position(0.5, 0)).reason()).isPresent();
  }

  @Test
  @DisplayName(
      "AASHTO 10.8.3.6 (from memory): 0.65 at 2.5 D; 1.0 at 4 D in sand and at 6 D in clay")
  void factors_by_spacing() {
    assertThat(GroupEfficiency.sand(2.5).orThrow()).isCloseTo(0.65, within(1e-12));
    assertThat(GroupEfficiency.sand(3.25).orThrow()).isCloseTo(0.825, within(1e-12));
    assertThat(GroupEfficiency.sand(4).orThrow()).isCloseTo(1, within(1e-12));
    assertThat(GroupEfficiency.sand(9).orThrow()).isCloseTo(1, within(1e-12));
    assertThat(GroupEfficiency.clay(3).orThrow()).isCloseTo(0.7, within(1e-12));
    assertThat(GroupEfficiency.clay(6).orThrow()).isCloseTo(1, within(1e-12));
    assertThat(GroupEfficiency.clay(2.4).reason()).isPresent();
  }

  @Test
  @DisplayName(
      "Civil Engineering Formulas, ch. 4, eq. 4.11 and 4.12, p. 108: block and downdrag of a group, own numbers")
  void block_and_group_downdrag() {
    double block = GroupEfficiency.blockKilonewtons(2, 3, 10, 30, 450);
    assertThat(block).isEqualTo(2 * 5 * 10 * 30 + 6 * 450);
    assertThat(GroupEfficiency.block(block, 6, 950)).isCloseTo(1.0, within(1e-12));
    assertThat(Downdrag.groupKilonewtons(6, 19, 2, 10, 8, 20)).isEqualTo(228 + 1600);
    assertThat(Downdrag.clayKilonewtons(0.5, 20, 0.8, 5)).isCloseTo(40, within(1e-9));
    assertThat(Downdrag.sandKilonewtons(0.5, 45, 100, 0.8, 5)).isCloseTo(200, within(1e-9));
    assertThat(Downdrag.clayKilonewtons(0.5, 20, 0.8, 0)).isZero();
  }

  @Test
  @DisplayName(
      "Own case: 300 kip over 3 ft at the centre of 12 ft: 787.5 kip-ft and 150 kip; 3 ft past a 9 ft back span: 400, 100 kip and 900 kip-ft")
  void transfer_beam() {
    TransferBeam.Centred needle = TransferBeam.centred(300 * KIP, 12 * FOOT, 3 * FOOT);
    assertThat(needle.momentKilonewtonMetres() / KIP / FOOT).isCloseTo(787.5, within(1e-9));
    assertThat(needle.shearKilonewtons() / KIP).isCloseTo(150, within(1e-9));
    TransferBeam.Cantilever arm = TransferBeam.cantilever(300 * KIP, 3 * FOOT, 9 * FOOT);
    assertThat(arm.nearKilonewtons() / KIP).isCloseTo(400, within(1e-9));
    assertThat(arm.farKilonewtons() / KIP).isCloseTo(100, within(1e-9));
    assertThat(arm.momentKilonewtonMetres() / KIP / FOOT).isCloseTo(900, within(1e-9));
  }

  @Test
  void number_of_piles() {
    assertThat(PileCount.needed(1000, 1, 250)).isEqualTo(4);
    assertThat(PileCount.needed(1001, 1, 250)).isEqualTo(5);
    assertThat(PileCount.needed(1000, 0.8, 250)).isEqualTo(5);
    assertThat(PileCount.needed(0, 1, 250)).isEqualTo(1);
    assertThatThrownBy(() -> PileCount.needed(1, 1, 0)).hasMessageContaining("allowable");
  }

  @Property(seed = Seeds.BUILD)
  void more_load_never_needs_fewer_piles(
      @ForAll @DoubleRange(min = 0, max = 50_000) double load,
      @ForAll @DoubleRange(min = 0, max = 5000) double more,
      @ForAll @DoubleRange(min = 50, max = 2000) double allowable) {
    int piles = PileCount.needed(load, 1, allowable);
    assertThat(PileCount.needed(load + more, 1, allowable)).isGreaterThanOrEqualTo(piles);
    assertThat(piles * allowable).isGreaterThanOrEqualTo(load * (1 - 1e-9));
    assertThat((piles - 1) * allowable).isLessThanOrEqualTo(load);
  }

  @Test
  void worst_loss_is_never_lighter_than_the_mean_of_the_rest() {
    Loss worst = RigidCap.grid(4, 2, 1, 2).worstLoss(800, CENTRE).orThrow();
    assertThat(worst.largestKilonewtons()).isGreaterThan(800 / 7.0);
    assertThat(worst.largestKilonewtons()).isCloseTo(161.905, withPercentage(0.01));
  }
}
