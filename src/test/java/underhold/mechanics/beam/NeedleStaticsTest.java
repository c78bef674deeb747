package underhold.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.mechanics.steel.UsSteel.*;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.steel.BeamShear;
import underhold.mechanics.steel.ConcentratedForce;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.NominalStrength;
import underhold.mechanics.steel.RolledSection;
import underhold.mechanics.steel.Steel;
import underhold.mechanics.steel.StrongAxisFlexure;
import underhold.mechanics.steel.WebLocalCrippling;
import underhold.mechanics.steel.WebLocalYielding;
import underhold.mechanics.steel.WebSideswayBuckling;
import underhold.quantity.Seeds;

class NeedleStaticsTest {
  private static final double E = Steel.AISC_MODULUS_KILOPASCALS;

  @Test
  @DisplayName(
      "AISC Design Examples v15.1, F.1-1A: 35 ft, D 0.45, L 0.75 klf: Mu 266, Ma 184 kip-ft, I for"
          + " L/360 live 746 in4")
  void beam_of_an_ordinary_floor() {
    assertThat(new UniformLoadBeam((1.2 * 0.45 + 1.6 * 0.75) * KLF, 35 * FOOT).moment() / KIP_FOOT)
        .isCloseTo(266, withPercentage(0.5));
    assertThat(new UniformLoadBeam(1.2 * KLF, 35 * FOOT).moment() / KIP_FOOT)
        .isCloseTo(184, withPercentage(0.5));
    double inertia = new UniformLoadBeam(0.75 * KLF, 35 * FOOT).secondMomentFor(35 * FOOT / 360, E);
    // The example rounds L/360 to 1.17 in; unrounded 748.5.
    assertThat(inertia / Math.pow(INCH, 4)).isCloseTo(746, withPercentage(0.5));
    assertThat(inertia / Math.pow(INCH, 4)).isCloseTo(748.5, withPercentage(0.02));
  }

  @Test
  @DisplayName("AISC Design Examples v15.1, F.4: 30 ft, D 0.8, L 2.0 klf: Mu 468, Ma 315 kip-ft")
  void heavier_floor_beam() {
    UniformLoadBeam factored = new UniformLoadBeam((1.2 * 0.8 + 1.6 * 2) * KLF, 30 * FOOT);
    assertThat(factored.moment() / KIP_FOOT).isCloseTo(468, withPercentage(0.2));
    assertThat(new UniformLoadBeam(2.8 * KLF, 30 * FOOT).moment() / KIP_FOOT)
        .isCloseTo(315, withPercentage(0.2));
    double inertia = new UniformLoadBeam(2 * KLF, 30 * FOOT).secondMomentFor(FOOT, E);
    assertThat(inertia * 12 / Math.pow(INCH, 4)).isCloseTo(1256.9, withPercentage(0.05));
  }

  @Test
  @DisplayName(
      "AISC Design Examples v15.1, G.1A and G.6: Vu 289.6 and Va 193; Vu 120 and Va 80 kip")
  void load_combinations() {
    assertThat(1.2 * 48 + 1.6 * 145).isCloseTo(289.6, within(1e-9));
    assertThat(48 + 145).isEqualTo(193);
    assertThat(new UniformLoadBeam(2 * (1.2 * 20 + 1.6 * 60) * KLF, FOOT).reaction() / KIP)
        .isCloseTo(120, withPercentage(1e-6));
    assertThat(new UniformLoadBeam(2 * 80 * KLF, FOOT).reaction() / KIP)
        .isCloseTo(80, withPercentage(1e-6));
  }

  /** Not published; worked by hand with W24X94, Fy 50, self-weight in. */
  @Test
  @DisplayName(
      "Own case: column D 120, L 60 kip on two W24X94, 14 ft, load in the middle: 317.3 of 512.5"
          + " kip-ft, V 45.7 of 250.3, web 255.8/240.8/265.2/150.0 kip, 0.1135 in")
  void pair_of_needles() {
    RolledSection w = shape("W24X94");
    double span = 14 * FOOT;
    double each = new NeedlePair(180 * KIP, 0, 2).nearer(0.5);
    assertThat(each / KIP).isCloseTo(90, within(1e-9));
    UniformLoadBeam own = new UniformLoadBeam(0.094 * KLF, span);
    PointLoadBeam load = PointLoadBeam.midspan(each, span);
    assertThat((load.moment() + own.moment()) / KIP_FOOT).isCloseTo(317.3, withPercentage(0.5));
    PointLoadBeam factored = PointLoadBeam.midspan(120 * KIP, span);
    assertThat((factored.moment() + 1.2 * own.moment()) / KIP_FOOT)
        .isCloseTo(422.8, withPercentage(0.5));
    assertThat((load.largestReaction() + own.reaction()) / KIP)
        .isCloseTo(45.7, withPercentage(0.5));
    NominalStrength moment = new StrongAxisFlexure(w, Steel.A992).nominal(span, 1);
    assertThat(moment.available(DesignMethod.ASD) / KIP_FOOT).isCloseTo(512.5, withPercentage(0.5));
    assertThat(moment.available(DesignMethod.LRFD) / KIP_FOOT)
        .isCloseTo(770.3, withPercentage(0.5));
    assertThat(asd(new BeamShear(w, Steel.A992).alongWeb())).isCloseTo(250.3, withPercentage(0.5));
    ConcentratedForce seat = new ConcentratedForce(8 * INCH, span / 2);
    ConcentratedForce end = new ConcentratedForce(12 * INCH, 6 * INCH);
    assertThat(asd(WebLocalYielding.of(w, Steel.A992, seat))).isCloseTo(255.8, withPercentage(0.5));
    assertThat(asd(WebLocalCrippling.of(w, Steel.A992, seat)))
        .isCloseTo(240.8, withPercentage(0.5));
    assertThat(asd(WebLocalYielding.of(w, Steel.A992, end))).isCloseTo(265.2, withPercentage(0.5));
    assertThat(asd(WebLocalCrippling.of(w, Steel.A992, end))).isCloseTo(150.0, withPercentage(0.5));
    assertThat(WebSideswayBuckling.of(w, span, false, true)).isEmpty();
    double stiffness = E * w.strong().secondMoment();
    double deflection = load.largestDeflection(stiffness);
    assertThat(deflection / INCH).isCloseTo(0.1135, withPercentage(0.5));
    assertThat(span / deflection).isCloseTo(1480, withPercentage(0.5));
    assertThat(load.deflectionAtLoad(stiffness)).isCloseTo(deflection, within(1e-12));
  }

  @Test
  @DisplayName("Own case: 500 kN in the middle of 4.5 m: M 562.5 kN m, V 250 kN")
  void midspan() {
    PointLoadBeam beam = PointLoadBeam.midspan(500, 4.5);
    assertThat(beam.moment()).isCloseTo(562.5, within(1e-9));
    assertThat(beam.firstReaction()).isCloseTo(250, within(1e-9));
    assertThat(beam.secondReaction()).isCloseTo(250, within(1e-9));
    assertThat(beam.spanMetres()).isEqualTo(4.5);
  }

  @Test
  @DisplayName(
      "Own case: 100 kN at 2 m of a 5 m span: 120 kN m, 60 and 40 kN; at the stations 1 and 4 m: 60"
          + " and 40 kN m")
  void eccentric() {
    PointLoadBeam beam = new PointLoadBeam(100, 2, 3);
    assertThat(beam.moment()).isCloseTo(120, within(1e-9));
    assertThat(beam.largestReaction()).isCloseTo(60, within(1e-9));
    assertThat(new PointLoadBeam(100, 3, 2).largestReaction()).isCloseTo(60, within(1e-9));
    assertThat(beam.momentAt(1)).isCloseTo(60, within(1e-9));
    assertThat(beam.momentAt(2)).isCloseTo(120, within(1e-9));
    assertThat(beam.momentAt(4)).isCloseTo(40, within(1e-9));
    assertThat(beam.largestDeflection(1000)).isGreaterThan(beam.deflectionAtLoad(1000));
    assertThat(beam.largestDeflection(1000))
        .isCloseTo(new PointLoadBeam(100, 3, 2).largestDeflection(1000), within(1e-12));
    assertThatThrownBy(() -> beam.momentAt(-0.1)).hasMessageContaining("off the beam");
    assertThatThrownBy(() -> beam.momentAt(5.1)).hasMessageContaining("off the beam");
  }

  @Test
  @DisplayName("Own case: 10 kN/m over 4 m: 20 kN m, 15 kN m at 1 m, 20 kN, 33.3 m4 kPa over E I")
  void uniform() {
    UniformLoadBeam beam = new UniformLoadBeam(10, 4);
    assertThat(beam.moment()).isCloseTo(20, within(1e-9));
    assertThat(beam.momentAt(1)).isCloseTo(15, within(1e-9));
    assertThat(beam.momentAt(4)).isCloseTo(0, within(1e-9));
    assertThat(beam.reaction()).isCloseTo(20, within(1e-9));
    assertThat(beam.midspanDeflection(1000)).isCloseTo(5.0 * 10 * 256 / 384 / 1000, within(1e-12));
    assertThatThrownBy(() -> beam.momentAt(4.1)).hasMessageContaining("off the beam");
    assertThatThrownBy(() -> beam.momentAt(-1)).hasMessageContaining("off the beam");
  }

  @Test
  @DisplayName(
      "Own case: overhang 1.2 m, back span 3 m, 200 kN: 240 kN m, fulcrum 280, uplift 80 kN")
  void cantilever() {
    TailedCantilever needle = new TailedCantilever(200, 1.2, 3);
    assertThat(needle.moment()).isCloseTo(240, within(1e-9));
    assertThat(needle.fulcrum()).isCloseTo(280, within(1e-9));
    assertThat(needle.uplift()).isCloseTo(80, within(1e-9));
    assertThat(needle.largestShear()).isCloseTo(200, within(1e-9));
    assertThat(new TailedCantilever(200, 3, 2).largestShear()).isCloseTo(300, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: 300 kN, 0.1 m off the mid-line of needles 1 m apart: 180 kN on the nearer")
  void shares() {
    NeedlePair pair = new NeedlePair(300, 0.1, 1);
    assertThat(pair.share()).isCloseTo(0.6, within(1e-12));
    assertThat(pair.nearer(0.55)).isCloseTo(180, within(1e-9));
    assertThat(pair.nearer(0.7)).isCloseTo(210, within(1e-9));
    assertThatThrownBy(() -> pair.nearer(0.4)).hasMessageContaining("least share");
    assertThatThrownBy(() -> pair.nearer(1.1)).hasMessageContaining("least share");
    assertThatThrownBy(() -> new NeedlePair(300, 0.6, 1)).hasMessageContaining("outside the pair");
  }

  @Test
  void what_no_beam_can_have_is_refused() {
    assertThatThrownBy(() -> new PointLoadBeam(-1, 1, 1)).hasMessageContaining("load");
    assertThatThrownBy(() -> new PointLoadBeam(1, 0, 1)).hasMessageContaining("first support");
    assertThatThrownBy(() -> new PointLoadBeam(1, 1, Double.NaN))
        .hasMessageContaining("second support");
    assertThatThrownBy(() -> new TwoLoadBeam(1, 3, 5)).hasMessageContaining("far support");
    assertThatThrownBy(() -> new TailedCantilever(1, 1, Double.POSITIVE_INFINITY))
        .hasMessageContaining("back span");
    assertThatThrownBy(() -> new UniformLoadBeam(1, 5).midspanDeflection(0))
        .hasMessageContaining("E I");
  }

  @Property(seed = Seeds.BUILD)
  void more_load_never_lowers_an_effect_and_none_gives_none(
      @ForAll @DoubleRange(min = 0, max = 3000) double load,
      @ForAll @DoubleRange(min = 0.1, max = 9) double a,
      @ForAll @DoubleRange(min = 0.1, max = 9) double b) {
    PointLoadBeam less = new PointLoadBeam(load, a, b);
    PointLoadBeam more = new PointLoadBeam(load + 10, a, b);
    assertThat(more.moment()).isGreaterThan(less.moment());
    assertThat(more.largestDeflection(1e4)).isGreaterThan(less.largestDeflection(1e4));
    assertThat(less.firstReaction() + less.secondReaction())
        .isCloseTo(load, within(1e-9 * (1 + load)));
    PointLoadBeam none = new PointLoadBeam(0, a, b);
    assertThat(none.moment()).isZero();
    assertThat(none.largestDeflection(1e4)).isZero();
    assertThat(new TailedCantilever(0, a, b).fulcrum()).isZero();
  }

  private static double asd(NominalStrength strength) {
    return strength.available(DesignMethod.ASD) / KIP;
  }
}
