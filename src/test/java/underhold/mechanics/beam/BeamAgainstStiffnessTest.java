package underhold.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import underhold.quantity.Seeds;

/** Closed formulas against a matrix solution by Hipparchus for random beams. */
class BeamAgainstStiffnessTest {
  private static final double STIFFNESS = 50_000;

  @Property(seed = Seeds.BUILD)
  void one_load_anywhere(
      @ForAll @DoubleRange(min = 1, max = 3000) double load,
      @ForAll @DoubleRange(min = 1, max = 12) double span,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double position) {
    double a = position * span;
    PointLoadBeam beam = new PointLoadBeam(load, a, span - a);
    double longer = Math.max(a, span - a);
    double fromLonger = Math.sqrt(longer * (2 * span - longer) / 3);
    double crest = a >= span - a ? fromLonger : span - fromLonger;
    BeamByStiffness.Solution exact =
        new BeamByStiffness(
                STIFFNESS, 0, span, a, a / 2, (a + span) / 2, crest, crest * 0.97, span / 4)
            .support(0)
            .support(span)
            .load(a, load)
            .solve();
    assertThat(beam.deflectionAtLoad(STIFFNESS))
        .isCloseTo(exact.deflection(a), withPercentage(1e-3));
    assertThat(beam.largestDeflection(STIFFNESS))
        .isCloseTo(exact.deflection(crest), withPercentage(1e-3));
    assertThat(beam.largestDeflection(STIFFNESS))
        .isCloseTo(exact.largestDeflection(), withPercentage(1e-3));
    assertThat(beam.moment()).isCloseTo(exact.moment(a), withPercentage(1e-3));
    assertThat(beam.momentAt(a / 2)).isCloseTo(exact.moment(a / 2), withPercentage(1e-3));
    assertThat(beam.momentAt((a + span) / 2))
        .isCloseTo(exact.moment((a + span) / 2), withPercentage(1e-3));
    assertThat(beam.firstReaction()).isCloseTo(exact.reaction(0), withPercentage(1e-3));
    assertThat(beam.secondReaction()).isCloseTo(exact.reaction(span), withPercentage(1e-3));
  }

  @Property(seed = Seeds.BUILD)
  void two_loads(
      @ForAll @DoubleRange(min = 1, max = 3000) double load,
      @ForAll @DoubleRange(min = 1, max = 12) double span,
      @ForAll @DoubleRange(min = 0.05, max = 0.49) double position) {
    double c = position * span;
    TwoLoadBeam beam = new TwoLoadBeam(load, c, span);
    BeamByStiffness.Solution exact =
        new BeamByStiffness(STIFFNESS, 0, c, span / 2, span - c, span)
            .support(0)
            .support(span)
            .load(c, load)
            .load(span - c, load)
            .solve();
    assertThat(beam.midspanDeflection(STIFFNESS))
        .isCloseTo(exact.deflection(span / 2), withPercentage(1e-3));
    assertThat(beam.moment()).isCloseTo(exact.moment(span / 2), withPercentage(1e-3));
    assertThat(beam.reaction()).isCloseTo(exact.reaction(0), withPercentage(1e-3));
  }

  @Property(seed = Seeds.BUILD)
  void uniform_load(
      @ForAll @DoubleRange(min = 0.1, max = 300) double load,
      @ForAll @DoubleRange(min = 1, max = 12) double span) {
    UniformLoadBeam beam = new UniformLoadBeam(load, span);
    BeamByStiffness.Solution exact =
        new BeamByStiffness(STIFFNESS, 0, span / 4, span / 2, 3 * span / 4, span)
            .support(0)
            .support(span)
            .uniform(load)
            .solve();
    assertThat(beam.midspanDeflection(STIFFNESS))
        .isCloseTo(exact.deflection(span / 2), withPercentage(1e-3));
    assertThat(beam.reaction()).isCloseTo(exact.reaction(0), withPercentage(1e-3));
    double fixedEnd = load * (span / 4) * (span / 4) / 12;
    assertThat(beam.moment()).isCloseTo(exact.moment(span / 2) - fixedEnd, withPercentage(1e-3));
    assertThat(beam.momentAt(span / 4))
        .isCloseTo(exact.moment(span / 4) - fixedEnd, withPercentage(1e-3));
  }

  @Property(seed = Seeds.BUILD)
  void cantilever_with_tail(
      @ForAll @DoubleRange(min = 1, max = 2000) double load,
      @ForAll @DoubleRange(min = 0.3, max = 3) double overhang,
      @ForAll @DoubleRange(min = 0.5, max = 8) double back) {
    TailedCantilever needle = new TailedCantilever(load, overhang, back);
    BeamByStiffness.Solution exact =
        new BeamByStiffness(STIFFNESS, 0, back, back + overhang / 2, back + overhang)
            .support(0)
            .support(back)
            .load(back + overhang, load)
            .solve();
    assertThat(needle.tipDeflection(STIFFNESS))
        .isCloseTo(exact.deflection(back + overhang), withPercentage(1e-3));
    assertThat(needle.moment()).isCloseTo(-exact.moment(back), withPercentage(1e-3));
    assertThat(needle.fulcrum()).isCloseTo(exact.reaction(back), withPercentage(1e-3));
    assertThat(needle.uplift()).isCloseTo(-exact.reaction(0), withPercentage(1e-3));
  }
}
