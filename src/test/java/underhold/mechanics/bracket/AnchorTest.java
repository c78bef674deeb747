package underhold.mechanics.bracket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class AnchorTest {
  private static final double INCH = 0.0254;
  private static final double PSI = 6.894757293;
  private static final double KSI = 1000 * PSI;
  private static final double KIP = 4.448221615;
  private static final double POUND = KIP / 1000;
  private static final Percentage PRINTED = withPercentage(0.2);

  @Test
  @DisplayName(
      "Design guide on concrete breakout to ACI 318-19, October 2025, p. 86: kc 21, hef 5.75 in: ANco 297.56, psi_ed 0.978, Nb 18,313, Ncbg 92,221 lb (unrounded 92,242)")
  void published_breakout() {
    TensionBreakout breakout = new TensionBreakout(21, 4000 * PSI, 5.75 * INCH);
    double area = 44.25 * 34.625 * INCH * INCH;
    assertThat(area / INCH / INCH).isCloseTo(1532.16, withPercentage(0.1));
    assertThat(breakout.fullArea() / INCH / INCH).isCloseTo(297.56, withPercentage(0.1));
    assertThat(breakout.edgeFactor(8 * INCH)).isCloseTo(0.978, withPercentage(0.1));
    assertThat(breakout.basic() / POUND).isCloseTo(18_313, withPercentage(0.1));
    assertThat(breakout.group(area, 8 * INCH, 0) / POUND).isCloseTo(92_221, withPercentage(0.1));
    assertThat(breakout.group(area, 8 * INCH, 0) / POUND).isCloseTo(92_242, withPercentage(0.01));
  }

  @Test
  @DisplayName(
      "Same guide, p. 93: 16 anchors in rows at 0, 4, 12, 20 in, 20,000 lb at 1 in: 1059, 1144, 1314, 1483 lb")
  void published_eccentric_group() {
    List<Double> positions = new ArrayList<>();
    for (double row : new double[] {0, 4, 12, 20}) {
      for (int i = 0; i < 4; i++) {
        positions.add(row * INCH);
      }
    }
    List<Double> shares = AnchorGroup.shares(positions, 20_000 * POUND, INCH);
    double[] printed = {1059, 1144, 1314, 1483};
    for (int row = 0; row < 4; row++) {
      assertThat(shares.get(4 * row) / POUND)
          .isCloseTo(printed[row], within(1.0)); // printed to 1 lb
    }
    assertThat(shares.stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(20_000 * POUND, withPercentage(1e-6));
  }

  @Test
  @DisplayName(
      "Same guide, p. 90: ratios 10,000/59,943 and 15,000/17,562: 1.02 of 1.2; by 5/3 powers 0.82")
  void published_interaction() {
    double n = 10_000.0 / 59_943;
    double v = 15_000.0 / 17_562;
    assertThat(AnchorGroup.sum(n, v)).isCloseTo(1.02, withPercentage(1)); // two decimals printed
    assertThat(AnchorGroup.powers(n, v)).isCloseTo(0.82, withPercentage(1));
    assertThat(AnchorGroup.GREATEST_SUM).isEqualTo(1.2);
  }

  @Test
  @DisplayName(
      "Own case: post-installed kc 17, f'c 3.5 ksi, hef 8 in, two anchors 8 in apart 9 in from one edge: Nb 22.76, 672 of 576 in2, 0.925, 24.56, phi 15.96 kip: fails under 24")
  void breakout_of_a_bracket() {
    TensionBreakout breakout =
        new TensionBreakout(TensionBreakout.POST_INSTALLED, 3.5 * KSI, 8 * INCH);
    double area = breakout.rowArea(8 * INCH, 9 * INCH);
    assertThat(breakout.basic() / KIP).isCloseTo(22.76, PRINTED);
    assertThat(area / INCH / INCH).isCloseTo(672, withPercentage(1e-6));
    assertThat(breakout.fullArea() / INCH / INCH).isCloseTo(576, withPercentage(1e-6));
    assertThat(breakout.edgeFactor(9 * INCH)).isCloseTo(0.925, PRINTED);
    double group = breakout.group(area, 9 * INCH, 0);
    assertThat(group / KIP).isCloseTo(24.56, PRINTED);
    double design = TensionBreakout.PHI_POST_INSTALLED * group / KIP;
    assertThat(design).isCloseTo(15.96, PRINTED).isLessThan(1.6 * 15);
    assertThat(breakout.edgeFactor(1)).isEqualTo(1);
    // 3 in from the middle: 1 / (1 + 3/12) = 0.8
    assertThat(breakout.group(area, 9 * INCH, 3 * INCH)).isCloseTo(0.8 * group, within(1e-9));
    assertThat(breakout.rowArea(0, 20 * INCH)).isCloseTo(breakout.fullArea(), within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case: kc 24, hef 4 in, f'c 4,000 psi: 12,143 lb, phi 0.70 8,500; metric kc 10 and 7, hef 100 mm, 25 MPa (from memory, verify): 50.0 and 35.0 kN")
  void basic_breakout() {
    TensionBreakout cast = new TensionBreakout(TensionBreakout.CAST_IN, 4000 * PSI, 4 * INCH);
    assertThat(cast.basic() / POUND).isCloseTo(12_143, withPercentage(0.1));
    assertThat(TensionBreakout.PHI_CAST_IN * cast.basic() / POUND)
        .isCloseTo(8500, withPercentage(0.1));
    // the metric coefficients are rounded: within 2 %
    assertThat(new TensionBreakout(24, 25_000, 0.1).basic()).isCloseTo(50.0, withPercentage(2));
    assertThat(new TensionBreakout(17, 25_000, 0.1).basic()).isCloseTo(35.0, withPercentage(2));
  }

  @Test
  @DisplayName(
      "Own case: two 1 in rods of 55 ksi, Ase 0.606 in2, futa 75 ksi: phi N 68.2, phi V 35.5 kip")
  void anchor_steel() {
    AnchorSteel rods = new AnchorSteel(2, 0.606 * INCH * INCH, 75 * KSI, 55 * KSI);
    assertThat(rods.designTension() / KIP).isCloseTo(68.2, PRINTED);
    assertThat(rods.designShear() / KIP).isCloseTo(35.5, PRINTED);
    assertThat(new AnchorSteel(1, 1e-4, 150 * KSI, 120 * KSI).strength())
        .isCloseTo(125 * KSI, withPercentage(1e-6));
    assertThat(new AnchorSteel(1, 1e-4, 75 * KSI, 36 * KSI).strength())
        .isCloseTo(68.4 * KSI, withPercentage(1e-6));
  }

  @Test
  @DisplayName(
      "ACI 318-19 17.7.2 (from memory, verify), by hand: 1 in anchor, le 8 in, ca1 9 in, f'c 4,000: 9 sqrt(4000) 27 = 15.37 kip; 1/2 in: 7 x 1.5157 x 0.7071 = 7.503, 12.81 kip")
  void shear_breakout() {
    ShearBreakout one = new ShearBreakout(4000 * PSI, 9 * INCH, INCH, 8 * INCH);
    assertThat(one.basic() / KIP).isCloseTo(15.37, PRINTED);
    ShearBreakout half = new ShearBreakout(4000 * PSI, 9 * INCH, 0.5 * INCH, 10 * INCH);
    assertThat(half.basic() / KIP).isCloseTo(12.81, PRINTED);
    assertThat(one.fullArea() / INCH / INCH).isCloseTo(364.5, PRINTED);
    assertThat(one.depthFactor(6 * INCH)).isCloseTo(1.5, within(1e-9));
    assertThat(one.depthFactor(20 * INCH)).isEqualTo(1);
  }

  @Test
  @DisplayName(
      "ACI 318-19 17.6.5 and 17.7.3 (from memory, verify): 200 psi x pi x 0.75 x 6 in = 2.827 kip, 0.55 sustained; pry-out 1 below 2.5 in, else 2")
  void adhesive_and_pry_out() {
    AdhesiveBond bond = new AdhesiveBond(0.75 * INCH, 6 * INCH);
    assertThat(bond.basic(AdhesiveBond.OUTDOORS_KILOPASCALS) / KIP).isCloseTo(2.827, PRINTED);
    assertThat(bond.sustained(AdhesiveBond.INDOORS_KILOPASCALS) / KIP)
        .isCloseTo(2.827 * 1.5 * 0.55, PRINTED);
    assertThat(AnchorGroup.pryOutFactor(2.4 * INCH)).isEqualTo(1);
    assertThat(AnchorGroup.pryOutFactor(2.5 * INCH)).isEqualTo(2);
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> AnchorGroup.shares(List.of(), 1, 0)).hasMessageContaining("at least");
    assertThatThrownBy(() -> AnchorGroup.shares(List.of(1.0, 1.0), 1, 1))
        .hasMessageContaining("one line");
    assertThat(AnchorGroup.shares(List.of(1.0, 1.0), 8, 0)).containsExactly(4.0, 4.0);
    assertThatThrownBy(() -> AnchorGroup.shares(List.of(1.0, 2.0), Double.NaN, 1))
        .hasMessageContaining("pull");
    assertThatThrownBy(() -> AnchorGroup.sum(-1, 0)).hasMessageContaining("tension");
    assertThatThrownBy(() -> AnchorGroup.sum(0, -1)).hasMessageContaining("shear");
    assertThatThrownBy(() -> AnchorGroup.powers(-1, 0)).hasMessageContaining("tension");
    assertThatThrownBy(() -> AnchorGroup.powers(0, -1)).hasMessageContaining("shear");
    assertThatThrownBy(() -> new AnchorSteel(0, 1, 1, 1)).hasMessageContaining("anchor");
    assertThatThrownBy(() -> new TensionBreakout(17, 1, 0)).hasMessageContaining("embedment");
    assertThatThrownBy(() -> new TensionBreakout(17, 1, 1).group(0, 1, 0))
        .hasMessageContaining("area");
    assertThatThrownBy(() -> new TensionBreakout(17, 1, 1).eccentricityFactor(-1))
        .hasMessageContaining("eccentricity");
    assertThatThrownBy(() -> new ShearBreakout(1, 0, 1, 1)).hasMessageContaining("edge");
    assertThatThrownBy(() -> new AdhesiveBond(0, 1)).hasMessageContaining("diameter");
  }
}
