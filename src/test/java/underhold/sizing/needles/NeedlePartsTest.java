package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.steel.ConcentratedForce;
import underhold.sizing.Amount;
import underhold.sizing.zone.SoilClass;

/** The small parts of the sheet by themselves, worked by hand. */
class NeedlePartsTest {
  private static final double FAR = 1e3;

  @Test
  @DisplayName("own hand calculation: squares that only meet stay squares; wider ones are one mat")
  void pads() {
    Pad meeting = new Pad(1.2, 1.2, 3);
    assertThat(meeting.joined()).isFalse();
    assertThat(meeting.area()).isCloseTo(1.44, within(1e-12));
    assertThat(meeting.width()).isEqualTo(1.2);
    assertThat(meeting.length()).isEqualTo(1.2);

    Pad pair = new Pad(2, 0.8, 2);
    assertThat(pair.joined()).isTrue();
    assertThat(pair.area()).isCloseTo(1.6, within(1e-12));
    assertThat(pair.width()).isCloseTo(1.6, within(1e-12));
    assertThat(pair.length()).isEqualTo(2);

    Pad row = new Pad(2, 0.8, 5);
    assertThat(row.width()).isEqualTo(2);
    assertThat(row.length()).isCloseTo(4, within(1e-12));
  }

  @Test
  @DisplayName("own hand calculation: use is demand over capacity; nothing asked uses nothing")
  void limbs() {
    assertThat(limb(30, 40).utilisation()).isCloseTo(0.75, within(1e-12));
    assertThat(limb(0, 0).utilisation()).isZero();
    assertThat(limb(-1, 0).utilisation()).isZero();
    assertThat(limb(5, 0).utilisation()).isEqualTo(1e6);
    assertThat(limb(5, 1e-9).utilisation()).isEqualTo(1e6);
  }

  private static Limb limb(double demand, double capacity) {
    return new Limb("own", "own", demand, capacity, Amount.force(0));
  }

  @Test
  @DisplayName("AISC 360 J10.7: only a jack near an end stands at a free end")
  void free_ends() {
    assertThat(place("jack", 0.15).atFreeEnd()).isTrue();
    assertThat(place("jack", FAR).atFreeEnd()).isFalse();
    assertThat(place("load", 0.15).atFreeEnd()).isFalse();
    assertThat(place("load", FAR).atFreeEnd()).isFalse();
  }

  private static WebPlace place(String id, double fromEnd) {
    return new WebPlace(id, id, 1, new ConcentratedForce(0.1, fromEnd));
  }

  @Test
  @DisplayName(
      "own hand calculation: a bearing near a free end is no longer than twice its distance from it")
  void bearing_near_an_end() {
    NeedleBeam pair = new NeedleBeam.Seated(100, 2, 3);
    NeedleCase near = NeedleSites.settled("pair", "end-distance=0.08 m");
    assertThat(WebPlace.load(near, pair).bearing()).isEqualTo(new ConcentratedForce(0.2, FAR));
    assertThat(WebPlace.jack(near, pair, 0).bearing().bearingMetres())
        .isCloseTo(0.16, within(1e-12));
    assertThat(WebPlace.jack(near, pair, 0).bearing().fromEndMetres()).isEqualTo(0.08);
    // 100 kN at 3 of 5 m from the farther seat
    assertThat(WebPlace.jack(near, pair, 0).force()).isCloseTo(60, within(1e-9));
    assertThat(WebPlace.jack(near, pair, 0).words()).isEqualTo("over the jack");

    NeedleBeam tailed = new NeedleBeam.Tailed(100, 1, 1.5);
    NeedleCase tip = NeedleSites.settled("cantilever-pair", "end-distance=0.08 m");
    assertThat(WebPlace.load(tip, tailed).bearing().bearingMetres()).isCloseTo(0.16, within(1e-12));
    assertThat(WebPlace.load(tip, tailed).bearing().fromEndMetres()).isEqualTo(0.08);
    assertThat(WebPlace.jack(tip, tailed, 0).bearing()).isEqualTo(new ConcentratedForce(0.3, FAR));
    assertThat(WebPlace.jack(tip, tailed, 0).force()).isCloseTo(100 * 2.5 / 1.5, within(1e-9));
    assertThat(WebPlace.jack(tip, tailed, 0).words()).isEqualTo("over the fulcrum");

    NeedleCase lrfd = NeedleSites.settled("pair", "code=aisc-lrfd");
    assertThat(WebPlace.load(lrfd, pair).force()).isCloseTo(160, within(1e-9));
    assertThat(WebPlace.jack(lrfd, pair, 2).force()).isCloseTo(1.6 * (60 + 5), within(1e-9));
  }

  @Test
  @DisplayName(
      "own hand calculation: a free tip counts 2.5 overhangs, a held one its own; the back span if longer")
  void unbraced_lengths() {
    assertThat(new NeedleBeam.Tailed(1, 1, 1.5).unbraced(false, 2.5)).isEqualTo(2.5);
    assertThat(new NeedleBeam.Tailed(1, 1, 1.5).unbraced(true, 2.5)).isEqualTo(1.5);
    assertThat(new NeedleBeam.Tailed(1, 2, 1.5).unbraced(true, 2.5)).isEqualTo(2);
    assertThat(new NeedleBeam.Tailed(1, 1, 4).unbraced(false, 2.5)).isEqualTo(4);
    assertThat(new NeedleBeam.Seated(1, 2, 3).unbraced(false, 2.5)).isEqualTo(5);
    assertThat(new NeedleBeam.Seated(1, 2, 3).unbraced(true, 2.5)).isEqualTo(3);
    assertThat(new NeedleBeam.Seated(1, 2, 3).length()).isEqualTo(5);
    assertThat(new NeedleBeam.Tailed(1, 2, 3).length()).isEqualTo(5);
  }

  @Test
  @DisplayName("judgement of the method: clay 200 times its undrained strength, at least 1 MPa")
  void moduli() {
    assertThat(SeatSoil.modulusKilopascals(SoilClass.STIFF_CLAY, 50)).isEqualTo(10_000);
    assertThat(SeatSoil.modulusKilopascals(SoilClass.SOFT_CLAY, 15)).isEqualTo(3_000);
    assertThat(SeatSoil.modulusKilopascals(SoilClass.SOFT_CLAY, 2)).isEqualTo(1_000);
    assertThat(SeatSoil.modulusKilopascals(SoilClass.DENSE_SAND, 50)).isEqualTo(40_000);
  }

  @Test
  void the_method_goes_by_its_name() {
    assertThat(new NeedleMethod().id()).isEqualTo("needles");
  }
}
