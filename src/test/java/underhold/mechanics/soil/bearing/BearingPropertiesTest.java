package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.bearing.VesicBearing.CohesionDepthFactor;
import underhold.quantity.Seeds;

class BearingPropertiesTest {

  /** Rounding of sums of large products. */
  private static final double SLACK = 1 - 1e-9;

  private static final List<Function<BearingCase, Outcome<BearingCapacity>>> METHODS =
      List.of(
          question -> VesicBearing.ultimate(question, CohesionDepthFactor.LINEAR),
          question -> VesicBearing.ultimate(question, CohesionDepthFactor.FROM_SURCHARGE_FACTOR),
          HansenBearing::ultimate,
          MeyerhofBearing::ultimate,
          EurocodeBearing::ultimate,
          question -> TerzaghiBearing.ultimate(question, 10));

  private static Arbitrary<Double> real(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(6);
  }

  @Provide
  Arbitrary<Footing> footings() {
    Arbitrary<Double> sides = real(1e-3, 1e4);
    Arbitrary<Double> depths = real(0, 1e3);
    return Combinators.combine(Arbitraries.of(Footing.Shape.values()), sides, sides, depths)
        .as(
            (shape, first, second, depth) ->
                switch (shape) {
                  case STRIP -> Footing.strip(first, depth);
                  case CIRCLE -> Footing.circle(first, depth);
                  case RECTANGLE ->
                      Footing.rectangle(Math.min(first, second), Math.max(first, second), depth);
                });
  }

  @Provide
  Arbitrary<BearingGround> grounds() {
    Arbitrary<Double> angles = Arbitraries.oneOf(Arbitraries.just(0.0), real(0, 60));
    return Combinators.combine(angles, real(0, 1e5), real(0, 1e5), real(0, 100))
        .as(BearingGround::new);
  }

  @Provide
  Arbitrary<FootingLoad> loads() {
    return Combinators.combine(real(0, 1e8), real(-1e8, 1e8), real(-10, 10), real(-10, 10))
        .as(FootingLoad::new);
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void everyAnswerIsFiniteAndNotNegative(
      @ForAll("footings") Footing footing,
      @ForAll("grounds") BearingGround ground,
      @ForAll("loads") FootingLoad load,
      @ForAll DepthEffect depth) {
    for (var question :
        List.of(
            new BearingCase(footing, ground, load, depth),
            BearingCase.centred(footing, ground, depth))) {
      for (var method : METHODS) {
        method
            .apply(question)
            .value()
            .ifPresent(
                answer -> {
                  assertThat(answer.ultimateKilopascals()).isFinite().isNotNegative();
                  assertThat(answer.ultimateLoadKilonewtons()).isFinite().isNotNegative();
                });
      }
    }
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void strongerGroundNeverCarriesLess(
      @ForAll("footings") Footing footing,
      @ForAll @DoubleRange(min = 1, max = 49) double angle,
      @ForAll @DoubleRange(min = 0, max = 100) double cohesion,
      @ForAll @DoubleRange(min = 0, max = 200) double overburden,
      @ForAll @DoubleRange(min = 0, max = 22) double weight) {
    for (var method : METHODS) {
      var base = value(method, footing, new BearingGround(angle, cohesion, overburden, weight));
      for (BearingGround better :
          List.of(
              new BearingGround(angle + 1, cohesion, overburden, weight),
              new BearingGround(angle, cohesion + 5, overburden, weight),
              new BearingGround(angle, cohesion, overburden + 5, weight),
              new BearingGround(angle, cohesion, overburden, weight + 1))) {
        assertThat(value(method, footing, better)).isGreaterThanOrEqualTo(base * SLACK);
      }
    }
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void moreHorizontalLoadNeverHelps(
      @ForAll("footings") Footing footing,
      @ForAll("grounds") BearingGround ground,
      @ForAll @DoubleRange(min = 1, max = 1e5) double vertical,
      @ForAll @DoubleRange(min = 0, max = 0.9) double share) {
    for (var method : METHODS) {
      double less = loadOf(method, footing, ground, vertical, share / 2);
      double more = loadOf(method, footing, ground, vertical, share);
      assertThat(more).isLessThanOrEqualTo(less / SLACK);
    }
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void groundWithoutStrengthOrWeightCarriesNothing(
      @ForAll("footings") Footing footing,
      @ForAll @DoubleRange(min = 0, max = 60) double angle,
      @ForAll DepthEffect depth) {
    BearingCase question = BearingCase.centred(footing, new BearingGround(angle, 0, 0, 0), depth);
    for (var method : METHODS) {
      method
          .apply(question)
          .value()
          .ifPresent(answer -> assertThat(answer.ultimateKilopascals()).isZero());
    }
  }

  private static double value(
      Function<BearingCase, Outcome<BearingCapacity>> method,
      Footing footing,
      BearingGround ground) {
    return method
        .apply(BearingCase.centred(footing, ground, DepthEffect.CREDITED))
        .fold(BearingCapacity::ultimateKilopascals, reason -> 0.0);
  }

  /** A load that the method refuses carries nothing. */
  private static double loadOf(
      Function<BearingCase, Outcome<BearingCapacity>> method,
      Footing footing,
      BearingGround ground,
      double vertical,
      double share) {
    return method
        .apply(
            new BearingCase(
                footing,
                ground,
                FootingLoad.inclined(vertical, share * vertical),
                DepthEffect.CREDITED))
        .fold(BearingCapacity::ultimateKilopascals, reason -> 0.0);
  }
}
