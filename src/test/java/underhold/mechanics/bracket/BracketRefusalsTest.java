package underhold.mechanics.bracket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Numbers that make no sense are refused by name; edges of ranges worked by hand. */
class BracketRefusalsTest {
  private static final double INCH = 0.0254;
  private static final SeatBearing SEAT = new SeatBearing(0.3, 0.2);

  private record Wrong(String name, ThrowingCallable call) {}

  @TestFactory
  Stream<DynamicTest> refusals() {
    return Stream.of(
            new Wrong("load", () -> SEAT.greatest(-1, 0.01)),
            new Wrong("eccentricity", () -> SEAT.greatest(1, -0.01)),
            new Wrong("load", () -> SEAT.least(-1, 0.01)),
            new Wrong("eccentricity", () -> SEAT.least(1, -0.01)),
            new Wrong("load", () -> SeatBearing.leastArea(-1, 100)),
            new Wrong("allowable pressure", () -> SeatBearing.leastArea(1, 0)),
            new Wrong("pressure", () -> SeatBearing.plateThickness(-1, 0.1, 250_000)),
            new Wrong("overhang", () -> SeatBearing.plateThickness(1, -0.1, 250_000)),
            new Wrong("yield", () -> SeatBearing.plateThickness(1, 0.1, 0)),
            new Wrong(
                "moment", () -> new BracketPlates(2, 0.02, 0.3, 250_000, 0.3).bendingStress(-1)),
            new Wrong("edge distance", () -> new TensionBreakout(17, 20_000, 0.2).edgeFactor(0)),
            new Wrong("spread", () -> new TensionBreakout(17, 20_000, 0.2).rowArea(-1, 0.2)),
            new Wrong("edge distance", () -> new TensionBreakout(17, 20_000, 0.2).rowArea(0.2, 0)),
            new Wrong("embedment", () -> AnchorGroup.pryOutFactor(0)),
            new Wrong("pull", () -> AnchorGroup.shares(List.of(0.0, 1.0), Double.NaN, 0)),
            new Wrong("eccentricity", () -> AnchorGroup.shares(List.of(0.0, 1.0), 1, Double.NaN)),
            new Wrong("load", () -> new FlatBar(0.05, 0.02, 0.6).deflection(-1)),
            new Wrong("load", () -> new FlatBar(0.05, 0.02, 0.6).moment(-1)),
            new Wrong("rotation", () -> new EccentricLoad(100, 0.3).seatDrop(-0.001)),
            new Wrong("bond", () -> new AdhesiveBond(0.02, 0.2).basic(0)))
        .map(
            wrong ->
                DynamicTest.dynamicTest(
                    wrong.name(),
                    () ->
                        assertThatThrownBy(wrong.call())
                            .isInstanceOf(IllegalArgumentException.class)
                            .hasMessageContaining(wrong.name())));
  }

  @Test
  @DisplayName(
      "AISC 360 Table J2.4 (from memory, verify): parts just at 1/4, 1/2 and 3/4 in keep the smaller leg; 5/16 in is ordered as 5/16 in")
  void fillet_legs() {
    assertThat(FilletWeld.smallestLeg(0.25 * INCH)).isCloseTo(2 / 16.0 * INCH, within(1e-9));
    assertThat(FilletWeld.smallestLeg(0.26 * INCH)).isCloseTo(3 / 16.0 * INCH, within(1e-9));
    assertThat(FilletWeld.smallestLeg(0.5 * INCH)).isCloseTo(3 / 16.0 * INCH, within(1e-9));
    assertThat(FilletWeld.smallestLeg(0.75 * INCH)).isCloseTo(4 / 16.0 * INCH, within(1e-9));
    assertThat(FilletWeld.smallestLeg(0.76 * INCH)).isCloseTo(5 / 16.0 * INCH, within(1e-9));
    double five = 5 / 16.0 * INCH;
    double just = FilletWeld.E70.allowable(five);
    assertThat(FilletWeld.E70.orderedLegFor(just)).isCloseTo(five, within(1e-9));
    assertThat(FilletWeld.E70.orderedLegFor(1.01 * just)).isCloseTo(6 / 16.0 * INCH, within(1e-9));
  }

  @Test
  @DisplayName(
      "AISC 360 F11: Lb d / t2 = 0.08 E/Fy is still plastic; the shape factor of a bar is 1.5, so 1.6 My never governs")
  void plates_at_the_plastic_limit() {
    double yield = 36 * 6_894.757293168361;
    double scale = 29_000.0 / 36;
    double thickness = 0.02;
    double depth = 0.3;
    double plastic = yield * 2 * thickness * depth * depth / 4;
    double edge = 0.08 * scale * thickness * thickness / depth;
    assertThat(new BracketPlates(2, thickness, depth, yield, edge * 0.999).nominalMoment())
        .isCloseTo(plastic, within(1e-6 * plastic));
    // (1.52 - 0.274 x 1) / 1.5 of it at Lb d / t2 = E/Fy
    double middle = scale * thickness * thickness / depth;
    assertThat(new BracketPlates(2, thickness, depth, yield, middle).nominalMoment())
        .isCloseTo(plastic * 1.246 / 1.5, within(1e-6 * plastic));
    // 1.9 E S / 4 E/Fy = 0.475 My
    assertThat(new BracketPlates(2, thickness, depth, yield, 4 * middle).nominalMoment())
        .isCloseTo(plastic * 1.9 / 4 / 1.5, within(1e-6 * plastic));
  }

  @Test
  @DisplayName(
      "statics of a rigid plate: three anchors at 1.0, 1.2, 1.7 m, 30 kN at 0.1 m from their middle")
  void shares_about_the_middle() {
    // mean 1.3; deviations -0.3, -0.1, 0.4; squares 0.26; 3 kN m / 0.26 = 11.538 kN a metre
    assertThat(AnchorGroup.shares(List.of(1.0, 1.2, 1.7), 30, 0.1))
        .satisfiesExactly(
            one -> assertThat(one).isCloseTo(10 - 3 * 0.3 / 0.26, within(1e-9)),
            one -> assertThat(one).isCloseTo(10 - 3 * 0.1 / 0.26, within(1e-9)),
            one -> assertThat(one).isCloseTo(10 + 3 * 0.4 / 0.26, within(1e-9)));
  }
}
