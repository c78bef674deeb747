package underhold.mechanics.bracket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class WeldGroupTest {
  private static final double INCH = 0.0254;
  private static final double KIP = 4.448221615;
  private static final double KIP_PER_INCH = KIP / INCH;
  private static final double SIXTEENTH = INCH / 16;
  private static final Percentage PRINTED = withPercentage(0.2);

  @Test
  @DisplayName(
      "Textbook weld example (Shigley, from memory, verify): channel 56 and 190 mm, 6 mm fillet, 25 kN at 100 mm beyond the back: 43.9 MPa at the back; at the leg ends the book prints 37.0, redone 37.1")
  void channel_weld_of_a_textbook() {
    WeldGroup weld = WeldGroup.channel(0.056, 0.190);
    double throat = 0.707 * 0.006;
    assertThat(weld.length() * throat * 1e6).isCloseTo(1281, withPercentage(0.5));
    assertThat(weld.centroidX() * 1000).isCloseTo(10.4, withPercentage(0.5));
    assertThat(weld.centroidY() * 1000).isCloseTo(95, within(1e-9));
    assertThat(weld.polar() * 1e9).isCloseTo(1.667e6, withPercentage(0.1));
    assertThat(weld.polar() * throat * 1e12).isCloseTo(7.07e6, withPercentage(0.5));
    double corner = weld.inPlaneAt(25, -0.1, 0, 0) / throat / 1000;
    double legEnd = weld.inPlaneAt(25, -0.1, 0.056, 0.190) / throat / 1000;
    assertThat(corner).isCloseTo(43.9, withPercentage(0.5));
    assertThat(legEnd).isCloseTo(37.1, withPercentage(0.5));
    assertThat(weld.inPlane(25, -0.1) / throat / 1000).isCloseTo(43.9, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "Own case: 40 kip at 9 in out of plane: two 12 in verticals 48 in2, 7.683 kip/in, 8.28 sixteenths, order 9/16; box 7 x 12 132 in2, 2.923, 3.15, order 1/4")
  void out_of_plane() {
    WeldGroup pair = WeldGroup.twoVerticals(12 * INCH, 7 * INCH);
    WeldGroup box = WeldGroup.box(7 * INCH, 12 * INCH);
    double moment = 360 * KIP * INCH;
    assertThat(pair.modulusOutOfPlane() / INCH / INCH).isCloseTo(48, withPercentage(1e-6));
    assertThat(box.modulusOutOfPlane() / INCH / INCH).isCloseTo(132, withPercentage(1e-6));
    double two = pair.outOfPlane(40 * KIP, moment);
    double round = box.outOfPlane(40 * KIP, moment);
    assertThat(two / KIP_PER_INCH).isCloseTo(7.683, PRINTED);
    assertThat(round / KIP_PER_INCH).isCloseTo(2.923, PRINTED);
    assertThat(FilletWeld.E70.legFor(two) / SIXTEENTH).isCloseTo(8.28, PRINTED);
    assertThat(FilletWeld.E70.legFor(round) / SIXTEENTH).isCloseTo(3.15, PRINTED);
    assertThat(FilletWeld.E70.orderedLegFor(two) / SIXTEENTH).isCloseTo(9, within(1e-9));
    assertThat(FilletWeld.E70.orderedLegFor(round) / SIXTEENTH).isCloseTo(4, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: in plane, two 10 in verticals 6 in apart, 20 kip at 8 in: 346.7 in3, 3.318 kip/in, 3.58 sixteenths")
  void in_plane() {
    WeldGroup weld = WeldGroup.twoVerticals(10 * INCH, 6 * INCH);
    assertThat(weld.polar() / Math.pow(INCH, 3)).isCloseTo(346.7, PRINTED);
    double worst = weld.inPlane(20 * KIP, 11 * INCH);
    assertThat(worst / KIP_PER_INCH).isCloseTo(3.318, PRINTED);
    assertThat(FilletWeld.E70.legFor(worst) / SIXTEENTH).isCloseTo(3.58, PRINTED);
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  @Label(
      "Blodgett's line formulas (from memory, verify): d^2/3, bd + d^2/3, d(3b^2 + d^2)/6, and both forms for the channel")
  void line_formulas(
      @ForAll @DoubleRange(min = 0.02, max = 0.5) double b,
      @ForAll @DoubleRange(min = 0.02, max = 0.5) double d) {
    WeldGroup pair = WeldGroup.twoVerticals(d, b);
    assertThat(pair.modulusOutOfPlane()).isCloseTo(d * d / 3, withPercentage(1e-6));
    assertThat(pair.polar()).isCloseTo(d * (3 * b * b + d * d) / 6, withPercentage(1e-6));
    assertThat(WeldGroup.box(b, d).modulusOutOfPlane())
        .isCloseTo(b * d + d * d / 3, withPercentage(1e-6));
    double channel = WeldGroup.channel(b, d).polar();
    assertThat(channel)
        .isCloseTo(
            (8 * b * b * b + 6 * b * d * d + d * d * d) / 12 - Math.pow(b, 4) / (2 * b + d),
            withPercentage(1e-5));
    assertThat(channel)
        .isCloseTo(
            Math.pow(2 * b + d, 3) / 12 - b * b * (b + d) * (b + d) / (2 * b + d),
            withPercentage(1e-5));
    WeldGroup single = new WeldGroup(List.of(new WeldGroup.Segment(0, 0, 0, d)));
    assertThat(single.modulusOutOfPlane()).isCloseTo(d * d / 6, withPercentage(1e-6));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void the_force_grows_with_load_and_lever(
      @ForAll @DoubleRange(min = 0, max = 500) double load,
      @ForAll @DoubleRange(min = 0, max = 1) double lever) {
    WeldGroup weld = WeldGroup.box(0.18, 0.3);
    double force = weld.outOfPlane(load, load * lever);
    assertThat(force).isFinite().isGreaterThanOrEqualTo(load / weld.length() * (1 - 1e-12));
    assertThat(weld.outOfPlane(load * 2, load * 2 * lever)).isCloseTo(2 * force, within(1e-6));
    assertThat(weld.outOfPlane(load, load * (lever + 0.1))).isGreaterThanOrEqualTo(force);
    assertThat(weld.inPlane(load, 0.09 + lever))
        .isGreaterThanOrEqualTo(load / weld.length() - 1e-9);
  }

  @Test
  @DisplayName(
      "AISC 360 J2.4 (from memory, verify): 0.928 and 1.392 kip/in per 1/16 in of E70; smallest legs by thickness")
  void fillet_strength() {
    assertThat(FilletWeld.E70.allowable(SIXTEENTH) / KIP_PER_INCH).isCloseTo(0.928, PRINTED);
    assertThat(FilletWeld.E70.factored(SIXTEENTH) / KIP_PER_INCH).isCloseTo(1.392, PRINTED);
    assertThat(FilletWeld.E70.allowable(SIXTEENTH) / 1000).isCloseTo(0.163, withPercentage(0.4));
    assertThat(FilletWeld.E70.factored(SIXTEENTH) / 1000).isCloseTo(0.244, withPercentage(0.4));
    double[][] rows = {{0.25, 2}, {0.3, 3}, {0.5, 3}, {0.6, 4}, {0.75, 4}, {0.8, 5}};
    for (double[] row : rows) {
      assertThat(FilletWeld.smallestLeg(row[0] * INCH) / SIXTEENTH).isCloseTo(row[1], within(1e-9));
    }
  }

  @Test
  void nonsense_is_refused() {
    assertThatThrownBy(() -> new WeldGroup(List.of())).hasMessageContaining("at least one");
    assertThatThrownBy(() -> new WeldGroup.Segment(1, 1, 1, 1)).hasMessageContaining("length");
    assertThatThrownBy(() -> WeldGroup.box(0.1, -1)).hasMessageContaining("height");
    assertThatThrownBy(() -> WeldGroup.box(0, 1)).hasMessageContaining("width");
    assertThatThrownBy(() -> WeldGroup.channel(0, 1)).hasMessageContaining("leg");
    assertThatThrownBy(() -> WeldGroup.channel(1, 0)).hasMessageContaining("back");
    assertThatThrownBy(() -> WeldGroup.twoVerticals(1, -1)).hasMessageContaining("distance");
    assertThatThrownBy(() -> WeldGroup.twoVerticals(0, 1)).hasMessageContaining("height");
    WeldGroup box = WeldGroup.box(1, 1);
    assertThatThrownBy(() -> box.outOfPlane(-1, 0)).hasMessageContaining("load");
    assertThatThrownBy(() -> box.outOfPlane(1, -1)).hasMessageContaining("moment");
    assertThatThrownBy(() -> box.inPlane(-1, 0)).hasMessageContaining("load");
    assertThatThrownBy(() -> box.inPlane(1, Double.NaN)).hasMessageContaining("finite");
    assertThatThrownBy(() -> new FilletWeld(0)).hasMessageContaining("electrode");
    assertThatThrownBy(() -> FilletWeld.E70.allowable(-1)).hasMessageContaining("leg");
    assertThatThrownBy(() -> FilletWeld.E70.factored(-1)).hasMessageContaining("leg");
    assertThatThrownBy(() -> FilletWeld.E70.legFor(-1)).hasMessageContaining("force");
    assertThatThrownBy(() -> FilletWeld.smallestLeg(0)).hasMessageContaining("thickness");
  }
}
