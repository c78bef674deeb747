package underhold.mechanics.pile.settlement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.settlement.LoadSettlement.State;
import underhold.mechanics.pile.settlement.LoadSettlement.Stretch;
import underhold.quantity.Seeds;

class PileSettlementTest {
  private static final double INCH = 0.0254;
  private static final double FOOT = 0.3048;
  private static final double KIP = 4.448221615;

  @Test
  @DisplayName(
      "Das, Principles of Foundation Engineering, ex. 12.6 (companion): 0.2196 + 7.0547 + 4.1862 = 11.46 mm")
  void three_parts() {
    VesicThreePart.Result result =
        VesicThreePart.of(
            new VesicThreePart.Case(755, 250, 0.65, 11, 1.5, 21e6, 14_000, 0.3, 0.04, 945));
    assertThat(result.shorteningMetres() * 1000).isCloseTo(0.2196, within(1e-4));
    assertThat(result.baseMetres() * 1000).isCloseTo(7.0547, within(1e-4));
    assertThat(result.sideMetres() * 1000).isCloseTo(4.1862, within(1e-4));
    assertThat(result.totalMetres() * 1000).isCloseTo(11.46, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Das 2016, pp. 529-530: at 12 mm side 0.80 and base 0.235 carry 1160 + 606.77 = 1767 kN; a companion to another edition prints 2013.14 with base 0.315")
  void load_at_twelve_millimetres() {
    // 12 mm over Ds 1.0 m is 1.2 %, over Db 1.5 m is 0.8 %
    MobilisationCurve side = MobilisationCurve.through(0.012, 0.80, 0.024);
    MobilisationCurve base = MobilisationCurve.through(0.008, 0.235, 0.10);
    double carried = 1449.4 * side.shareAt(0.012 / 1.0) + 2582 * base.shareAt(0.012 / 1.5);
    assertThat(carried).isCloseTo(1767, withPercentage(0.1));
    double other = 1500.2 * 0.80 + 2580.9 * 0.315;
    assertThat(other).isCloseTo(2013.14, withPercentage(0.1));
  }

  @Test
  @DisplayName("Own case: 300 kip on 40 ft of 24 in concrete, E 3600 ksi, shortens 0.088 in")
  void shortening() {
    double stiffness =
        PileSection.uncased(24 * INCH).axialStiffnessKilonewtons(2e8, 3.6e6 * 6.894757293);
    assertThat(ElasticShortening.metres(300 * KIP, 40 * FOOT, stiffness) / INCH)
        .isCloseTo(0.0884, within(0.0001));
  }

  @Test
  void a_curve_is_straight_between_its_points_and_level_after_them() {
    MobilisationCurve curve = MobilisationCurve.through(0.01, 0.8, 0.03);
    assertThat(curve.shareAt(0)).isZero();
    assertThat(curve.shareAt(0.005)).isCloseTo(0.4, within(1e-12));
    assertThat(curve.shareAt(0.01)).isCloseTo(0.8, within(1e-12));
    assertThat(curve.shareAt(0.02)).isCloseTo(0.9, within(1e-12));
    assertThat(curve.shareAt(0.03)).isEqualTo(1);
    assertThat(curve.shareAt(5)).isEqualTo(1);
    assertThat(curve.fullAtRatio()).isEqualTo(0.03);
    assertThat(MobilisationCurve.straight(0.02).shareAt(0.005)).isCloseTo(0.25, within(1e-12));
  }

  @Test
  @DisplayName(
      "Where the movement grows with the share, the share found calls itself up again, and no smaller one does")
  void share_and_movement_agree() {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      double first = 0.001 + 0.01 * random.nextDouble();
      double share = 0.3 + 0.6 * random.nextDouble();
      MobilisationCurve curve =
          MobilisationCurve.through(first, share, first + 0.001 + 0.05 * random.nextDouble());
      double base = 0.02 * random.nextDouble();
      double perShare = 0.02 * random.nextDouble();
      double found = curve.shareWhere(base, perShare);
      assertThat(curve.shareAt(base + found * perShare)).isCloseTo(found, within(1e-12));
      for (double less = 0; less < found - 1e-9; less += found / 50) {
        assertThat(curve.shareAt(base + less * perShare)).isGreaterThan(less);
      }
    }
    MobilisationCurve straight = MobilisationCurve.straight(0.01);
    assertThat(straight.shareWhere(0, 0.01)).isZero(); // any share would do: the least is none
    assertThat(straight.shareWhere(0.002, 0.005)).isCloseTo(0.4, within(1e-12)); // s = 0.2 + s / 2
    assertThat(straight.shareWhere(0.006, 0.005)).isEqualTo(1);
    assertThatThrownBy(() -> straight.shareWhere(-0.001, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_curve_that_falls_or_starts_loaded_is_refused() {
    assertThatThrownBy(() -> MobilisationCurve.through(0.03, 0.8, 0.01))
        .hasMessageContaining("never falls");
    assertThatThrownBy(
            () ->
                new MobilisationCurve(
                    List.of(
                        new MobilisationCurve.Point(0, 0.1), new MobilisationCurve.Point(0.1, 1))))
        .hasMessageContaining("at rest");
    assertThatThrownBy(
            () ->
                new MobilisationCurve(
                    List.of(
                        new MobilisationCurve.Point(0, 0), new MobilisationCurve.Point(0.1, 0.9))))
        .hasMessageContaining("ends at the share 1");
  }

  private static LoadSettlement pile(double baseKilonewtons) {
    return new LoadSettlement(
        0.25,
        List.of(
            new Stretch(4, 0, MobilisationCurve.straight(0.01), 1.5e6),
            new Stretch(6, 300, MobilisationCurve.through(0.004, 0.7, 0.02), 1.5e6),
            new Stretch(3, 900, MobilisationCurve.straight(0.005), 0.9e6)),
        baseKilonewtons,
        MobilisationCurve.straight(0.05));
  }

  @Test
  @DisplayName(
      "Own case: a stretch without side sheds nothing, so a short load on a base spring is arithmetic")
  void a_column_on_its_base() {
    LoadSettlement column =
        new LoadSettlement(
            0.5,
            List.of(new Stretch(10, 0, MobilisationCurve.straight(0.01), 2e6)),
            1000,
            MobilisationCurve.straight(0.05));
    State state = column.under(400).orThrow();
    // base: 0.4 x 0.05 x 0.5 m = 10 mm; shaft 400 x 10/2e6 = 2 mm
    assertThat(state.baseSettlementMetres()).isCloseTo(0.010, within(1e-9));
    assertThat(state.headSettlementMetres()).isCloseTo(0.012, within(1e-9));
    assertThat(state.baseLoadKilonewtons()).isCloseTo(400, within(1e-6));
    assertThat(column.ultimateKilonewtons()).isEqualTo(1000);
    assertThat(column.under(1000).reason()).isPresent();
    assertThat(column.under(0).orThrow().headSettlementMetres()).isZero();
  }

  @Test
  @DisplayName(
      "Hipparchus (linear algebra): the curve agrees with a finite-difference solution of E A u'' = t(u), own case")
  void curve_agrees_with_finite_differences() {
    LoadSettlement pile = pile(200);
    assertThat(pile.ultimateKilonewtons()).isEqualTo(1400);
    for (double load : new double[] {150, 500, 900, 1200}) {
      double head = pile.under(load).orThrow().headSettlementMetres();
      // 1 %: both cut the shaft into pieces
      assertThat(head)
          .as("at %s kN", load)
          .isCloseTo(finiteDifferences(load, 200), withPercentage(1));
    }
  }

  /** Newton on nodes 10 cm apart: springs of the shaft between them, side springs at them. */
  private static double finiteDifferences(double load, double baseKilonewtons) {
    int nodes = 131;
    double step = 13.0 / (nodes - 1);
    RealVector u = new ArrayRealVector(nodes, 0.001);
    for (int round = 0; round < 25; round++) {
      RealMatrix stiffness = new Array2DRowRealMatrix(nodes, nodes);
      double[] rest = new double[nodes];
      rest[0] = load;
      for (int i = 0; i < nodes; i++) {
        double depth = i * step;
        if (i + 1 < nodes) {
          double k = (depth + step / 2 < 10 ? 1.5e6 : 0.9e6) / step;
          double force = k * (u.getEntry(i) - u.getEntry(i + 1));
          rest[i] -= force;
          rest[i + 1] += force;
          stiffness.addToEntry(i, i, k);
          stiffness.addToEntry(i, i + 1, -k);
          stiffness.addToEntry(i + 1, i, -k);
          stiffness.addToEntry(i + 1, i + 1, k);
        }
        double ratio = u.getEntry(i) / 0.25;
        for (int half = -1; half <= 1; half += 2) {
          double at = depth + half * step / 4;
          if (at < 4 || at > 13) {
            continue;
          }
          double unit = (at < 10 ? 300 / 6.0 : 900 / 3.0) * step / 2;
          rest[i] -= unit * (at < 10 ? through(ratio) : Math.min(ratio / 0.005, 1));
          stiffness.addToEntry(
              i,
              i,
              unit
                  / 0.25
                  * (at < 10
                      ? (ratio < 0.004 ? 0.7 / 0.004 : ratio < 0.02 ? 0.3 / 0.016 : 0)
                      : ratio < 0.005 ? 200 : 0));
        }
        if (i == nodes - 1) {
          rest[i] -= baseKilonewtons * Math.min(ratio / 0.05, 1);
          stiffness.addToEntry(i, i, ratio < 0.05 ? baseKilonewtons / 0.05 / 0.25 : 0);
        }
      }
      u = u.add(new LUDecomposition(stiffness).getSolver().solve(new ArrayRealVector(rest)));
    }
    return u.getEntry(0);
  }

  private static double through(double ratio) {
    return ratio < 0.004 ? ratio / 0.004 * 0.7 : Math.min(0.7 + (ratio - 0.004) / 0.016 * 0.3, 1);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void more_load_never_settles_less(
      @ForAll @DoubleRange(min = 0, max = 1600) double load,
      @ForAll @DoubleRange(min = 0, max = 1600) double other,
      @ForAll @DoubleRange(min = 0, max = 500) double base) {
    LoadSettlement pile = pile(base);
    double less = Math.min(load, other);
    double more = Math.max(load, other);
    pile.under(more)
        .value()
        .ifPresent(
            state -> {
              State before = pile.under(less).orThrow();
              assertThat(before.headSettlementMetres())
                  .isBetween(0.0, state.headSettlementMetres() + 1e-12);
              assertThat(before.baseLoadKilonewtons()).isLessThanOrEqualTo(less + 1e-6);
            });
    assertThat(pile.under(pile.ultimateKilonewtons() + 1).reason()).isPresent();
  }
}
