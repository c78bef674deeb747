package underhold.mechanics.pile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.pile.column.BaringStages;
import underhold.mechanics.pile.column.SteelColumn;
import underhold.mechanics.pile.group.Downdrag;
import underhold.mechanics.pile.group.RigidCap;
import underhold.mechanics.pile.group.RigidCap.Loss;
import underhold.mechanics.pile.group.RigidCap.Position;
import underhold.mechanics.pile.settlement.LoadSettlement;
import underhold.mechanics.pile.settlement.LoadSettlement.State;
import underhold.mechanics.pile.settlement.LoadSettlement.Stretch;
import underhold.mechanics.pile.settlement.MobilisationCurve;
import underhold.mechanics.pile.structure.BendingStress;

class PileByHandTest {
  @Test
  @DisplayName("Own case by hand: 600 mm circle, I = 6.362e-3 m4; 100 kN m on 500 mm, 8148.7 kPa")
  void circle_in_bending() {
    // pi x 0.6^4 / 64 = 3.141593 x 0.1296 / 64
    assertThat(PileSection.uncased(0.6).grossInertia()).isCloseTo(6.3617e-3, within(1e-7));
    // 32 M / (pi D^3) = 3200 / (3.141593 x 0.125)
    double inertia = PileSection.uncased(0.5).grossInertia();
    assertThat(BendingStress.kilopascals(100, 0.5, inertia)).isCloseTo(8148.73, within(0.01));
  }

  @Test
  @DisplayName(
      "AISC 360 Table B4.1a (from memory, verify), own numbers: E 200 GPa, Fy 350 MPa: D/t at most 62.86")
  void wall_is_stocky_to_its_limit() {
    // 0.11 x 200 000 / 350 = 62.857
    SteelColumn pipe = new SteelColumn(0.02, 9e-4, 350_000, 200e6);
    assertThat(pipe.wallIsStocky(0.62, 0.01)).isTrue();
    assertThat(pipe.wallIsStocky(0.63, 0.01)).isFalse();
  }

  @Test
  @DisplayName("Own case: nothing dug and no fixity is one stage without a span")
  void nothing_dug() {
    BaringStages.Case none = new BaringStages.Case(0, List.of(), 0.5, 0, 2);
    assertThat(BaringStages.stages(none)).containsExactly(new BaringStages.Stage(1, 0, 0, 0, 2));
  }

  @Test
  @DisplayName("Own case by hand: K 0.5, 30 degrees, 100 kPa, 0.8 m x 5 m of sand hangs 115.47 kN")
  void downdrag_of_sand() {
    // 0.5 x 0.577350 x 100 x 0.8 x 5
    assertThat(Downdrag.sandKilonewtons(0.5, 30, 100, 0.8, 5)).isCloseTo(115.470, within(1e-3));
  }

  @Test
  @DisplayName("Own case: a grid of 3 x 2 piles, 2 m by 3 m, lies about its middle")
  void grid_lies_about_its_middle() {
    assertThat(RigidCap.grid(3, 2, 2, 3).piles())
        .containsExactly(
            new Position(-2, -1.5),
            new Position(0, -1.5),
            new Position(2, -1.5),
            new Position(-2, 1.5),
            new Position(0, 1.5),
            new Position(2, 1.5));
  }

  @Test
  @DisplayName(
      "Own case by hand: four piles at +-1 m, 400 kN at x 0.5 m: a pile on the load's side lost leaves 300 kN on one and a pull of 100 on another")
  void worst_loss_need_not_be_the_first_pile() {
    // piles 0 (-1,-1), 1 (1,-1), 2 (-1,1), 3 (1,1); three piles are statically determinate.
    // Without 0: P2 = 100, P1 = 200, P3 = 100. Without 1: P3 = 300 (sum 400, sum x 200),
    // P0 + P2 = 100, P0 - P2 = 300: P0 = 200, P2 = -100.
    RigidCap cap = RigidCap.grid(2, 2, 2, 2);
    Position at = new Position(0.5, 0);
    assertThat(cap.without(0, 400, at).orThrow().largestKilonewtons()).isCloseTo(200, within(1e-9));
    List<Double> left = cap.without(1, 400, at).orThrow().loadsKilonewtons();
    assertThat(left.get(0)).isCloseTo(200, within(1e-9));
    assertThat(left.get(1)).isZero();
    assertThat(left.get(2)).isCloseTo(-100, within(1e-9));
    assertThat(left.get(3)).isCloseTo(300, within(1e-9));
    Loss worst = cap.worstLoss(400, at).orThrow();
    assertThat(worst.largestKilonewtons()).isCloseTo(300, within(1e-9));
    assertThat(worst.lost()).isIn(1, 3);
  }

  @Test
  @DisplayName("Own case: the loss of the only pile off a line cannot be borne, whichever it is")
  void one_loss_that_cannot_be_borne_rules() {
    RigidCap cap =
        new RigidCap(
            List.of(
                new Position(0, 0), new Position(2, 0), new Position(1, 0), new Position(1, 1)));
    Position at = new Position(1, 0.25);
    assertThat(cap.without(0, 100, at).value()).isPresent();
    assertThat(cap.without(3, 100, at).value()).isEmpty();
    assertThat(cap.worstLoss(100, at).value()).isEmpty();
  }

  @Test
  @DisplayName(
      "Closed form of an elastic pile on even springs, own numbers: EA = k = 10,000, L 2 m, 100 kN: head 10.373 mm, base 2.757 mm")
  void flexible_pile_on_even_springs() {
    // 1000 kN over 2 m, full at 0.1 x 0.5 m = 50 mm: k = 1000/(2 x 0.05) = 10 000 kN/m per m;
    // m = sqrt(k/EA) = 1/m; head Q coth(2)/(EA m) = 100 x 1.037315/10 000; base = head/cosh(2),
    // cosh(2) = 3.762196. Tolerance 0.5 %: eight pieces leave (m h)^2/24 = 0.3 %.
    LoadSettlement pile =
        new LoadSettlement(
            0.5,
            List.of(new Stretch(2, 1000, MobilisationCurve.straight(0.1), 10_000)),
            0,
            MobilisationCurve.straight(0.1));
    State state = pile.under(100).orThrow();
    assertThat(state.headSettlementMetres()).isCloseTo(0.010373, withPercentage(0.5));
    assertThat(state.baseSettlementMetres()).isCloseTo(0.002757, withPercentage(0.5));
    assertThat(state.baseLoadKilonewtons()).isZero();
  }

  @Test
  @DisplayName(
      "Own case by hand: where the side needs 20 mm and the base 1 mm, half the side is called up at 10 mm")
  void side_may_need_more_movement_than_the_base() {
    LoadSettlement pile =
        new LoadSettlement(
            1,
            List.of(new Stretch(10, 1000, MobilisationCurve.straight(0.02), 9e8)),
            0,
            MobilisationCurve.straight(0.001));
    // 500/1000 of 0.02 x 1 m; the shaft shortens by 250 x 10/9e8 = 3e-6 m
    assertThat(pile.under(500).orThrow().headSettlementMetres()).isCloseTo(0.010, within(5e-6));
  }
}
