package underhold.mechanics.soil.edgewall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.quantity.Seeds;

class RockEdgeTest {
  private static final ToeDowel BAR = new ToeDowel(0.032, 414_000, 20_700);

  @Test
  @DisplayName("Own case by hand: 32 mm bar, 414 MPa, in 20.7 MPa: steel 119.6 kN, dowel 61.6 kN")
  void dowel_by_hand() {
    // 0.6 x 414 x 804.25 / 1.67 = 119 626 N; 1.3 x 32^2 x sqrt(20.7 x 414) / 2 = 61 617 N
    assertThat(BAR.bySteel()).isCloseTo(119.63, within(0.01));
    assertThat(BAR.byDowelAction()).isCloseTo(61.617, within(0.01));
    assertThat(BAR.allowable()).isEqualTo(BAR.byDowelAction());
    assertThat(BAR.number(0)).isZero();
    assertThat(BAR.number(61)).isEqualTo(1);
    assertThat(BAR.number(62)).isEqualTo(2);
    assertThat(BAR.number(200)).isEqualTo(4);
  }

  @Test
  @DisplayName("Own case: in very strong rock the steel governs")
  void steel_may_govern() {
    ToeDowel strong = new ToeDowel(0.032, 414_000, 200_000);
    assertThat(strong.allowable()).isEqualTo(strong.bySteel());
  }

  @Test
  @DisplayName(
      "Own case by hand: 3 m face, 45 degrees, 25 kN/m3, c 0, 30 degrees: factor 0.577, bolts 49.96 kN/m")
  void wedge_by_hand() {
    JointWedge wedge = new JointWedge(3, 45, 25, 0, 0, 0, 30);
    assertThat(wedge.weight()).isCloseTo(112.5, within(1e-9));
    assertThat(wedge.sliding().value().orElseThrow())
        .isCloseTo(Math.tan(Math.PI / 6), within(1e-9));
    // (1.5 x 112.5 x 0.70711 - 112.5 x 0.70711 x 0.57735) / (1.5 x 0.70711 + 0.70711 x 0.57735)
    assertThat(wedge.boltForce(1.5)).isCloseTo(49.96, within(0.01));
  }

  @Test
  @DisplayName("Own case by hand: 40 kN/m down and 20 kN/m out on a joint with 10 kPa cohesion")
  void loaded_wedge_by_hand() {
    JointWedge wedge = new JointWedge(3, 45, 25, 40, 20, 10, 30);
    // hold 10 x 4.2426 + (152.5 - 20) x 0.70711 x 0.57735; drive (152.5 + 20) x 0.70711
    assertThat(wedge.sliding().resistance()).isCloseTo(96.518, within(0.01));
    assertThat(wedge.sliding().demand()).isCloseTo(121.976, within(0.01));
  }

  @Test
  @DisplayName("Own case by hand: a force that opens a steep joint takes its cohesion away")
  void opened_wedge_by_hand() {
    // W = 112.5 / tan 80 = 19.837; c h/sin d = 60.926; W sin d = 19.535; W cos d = 3.445. Up to
    // T = (3.445 x 0.46631 - 1.5 x 19.535 + 60.926) / (0.26047 + 0.45922) = 46.17 the factor is 1.5
    assertThat(new JointWedge(3, 80, 25, 0, 66.17, 20, 25).boltForce(1.5))
        .isCloseTo(20, within(0.01));
    assertThat(new JointWedge(3, 80, 25, 0, 46.17, 20, 25).sliding().value().orElseThrow())
        .isCloseTo(1.5, within(1e-3));
    // from T = (60.926 + 1.606) / 0.45922 = 136.2 nothing is left to hold
    assertThat(new JointWedge(3, 80, 25, 0, 136.1, 20, 25).sliding().resistance()).isPositive();
    assertThat(new JointWedge(3, 80, 25, 0, 136.3, 20, 25).sliding().resistance()).isZero();
  }

  @Test
  @DisplayName("Own case: unloaded and without cohesion the worst dip needs Rankine's active force")
  void worst_dip_is_the_active_wedge() {
    JointWedge worst = new JointWedge(3, 57.5, 25, 0, 0, 0, 25);
    assertThat(worst.boltForce(1))
        .isCloseTo(RankinePressure.activeCoefficient(25) * 25 * 9 / 2, within(1e-9));
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void bolts_of_that_force_give_the_factor(
      @ForAll @DoubleRange(min = 20, max = 80) double dip,
      @ForAll @DoubleRange(min = 0, max = 100) double vertical,
      @ForAll @DoubleRange(min = 0, max = 60) double horizontal,
      @ForAll @DoubleRange(min = 0, max = 20) double cohesion) {
    JointWedge wedge = new JointWedge(3, dip, 25, vertical, horizontal, cohesion, 25);
    double bolts = wedge.boltForce(1.5);
    if (bolts > 0 && bolts <= horizontal) {
      JointWedge bolted = new JointWedge(3, dip, 25, vertical, horizontal - bolts, cohesion, 25);
      assertThat(bolted.sliding().value().orElseThrow()).isCloseTo(1.5, within(1e-6));
    }
    assertThat(new JointWedge(3, dip, 25, vertical, horizontal + 5, cohesion, 25).boltForce(1.5))
        .isGreaterThanOrEqualTo(bolts);
    assertThat(new JointWedge(3, dip, 25, vertical, horizontal, cohesion + 5, 25).boltForce(1.5))
        .isLessThanOrEqualTo(bolts);
  }

  @Test
  void impossible_rock_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new JointWedge(3, 90, 25, 0, 0, 0, 25));
    assertThatIllegalArgumentException().isThrownBy(() -> new JointWedge(0, 45, 25, 0, 0, 0, 25));
    assertThatIllegalArgumentException().isThrownBy(() -> new ToeDowel(0, 414_000, 20_000));
    assertThatIllegalArgumentException().isThrownBy(() -> BAR.number(-1));
  }
}
