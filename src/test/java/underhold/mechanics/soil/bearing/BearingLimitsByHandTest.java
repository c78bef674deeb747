package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.bearing.VesicBearing.CohesionDepthFactor;

/** Depth factors by hand, and every limit of the bearing calculators at its edge; own cases. */
class BearingLimitsByHandTest {
  /** tan 30, sin 30 and the Prandtl-Reissner factors of 30 degrees, written out. */
  private static final double TAN = 0.5773502691896258;

  private static final double NQ = Math.exp(Math.PI * TAN) * 3; // tan^2 60 = 3: 18.401
  private static final double NC = (NQ - 1) / TAN; // 30.140

  /** 30 degrees, c 10 kPa, 20 kPa beside the base, 18 kN/m3 below it. */
  private static final BearingGround GROUND = new BearingGround(30, 10, 20, 18);

  private static BearingCase loaded(Footing footing, BearingGround ground, FootingLoad load) {
    return new BearingCase(footing, ground, load, DepthEffect.IGNORED);
  }

  private static String reason(Outcome<?> outcome) {
    return outcome.reason().orElseThrow();
  }

  @Test
  @DisplayName(
      "Own case, depth factors by hand: 30 degrees, D/B 0.5 and 2 (atan 2 = 1.107), for Hansen and"
          + " both of Vesic")
  void depth_factors() {
    double tail = 2 * TAN * 0.25; // 2 tan f (1 - sin f)^2
    CorrectionFactors half = depth(Footing.strip(2, 1), CohesionDepthFactor.LINEAR, GROUND);
    assertThat(half.cohesion()).isCloseTo(1.2, within(1e-12));
    assertThat(half.surcharge()).isCloseTo(1 + tail * 0.5, within(1e-12));
    assertThat(half.weight()).isEqualTo(1);
    CorrectionFactors one = depth(Footing.strip(1, 1), CohesionDepthFactor.LINEAR, GROUND);
    assertThat(one.cohesion()).isCloseTo(1.4, within(1e-12)); // k is 1, not pi / 4
    CorrectionFactors two = depth(Footing.strip(1, 2), CohesionDepthFactor.LINEAR, GROUND);
    assertThat(two.cohesion()).isCloseTo(1 + 0.4 * 1.1071487177940904, within(1e-12));
    CorrectionFactors das =
        depth(Footing.strip(2, 1), CohesionDepthFactor.FROM_SURCHARGE_FACTOR, GROUND);
    double dq = 1 + tail * 0.5;
    assertThat(das.surcharge()).isCloseTo(dq, within(1e-12));
    assertThat(das.cohesion()).isCloseTo(dq - (1 - dq) / (NC * TAN), within(1e-12));
    CorrectionFactors clay =
        depth(
            Footing.strip(2, 1),
            CohesionDepthFactor.FROM_SURCHARGE_FACTOR,
            BearingGround.undrained(10, 0));
    assertThat(clay.cohesion()).isCloseTo(1.2, within(1e-12));
    for (CohesionDepthFactor rule : CohesionDepthFactor.values()) {
      assertThat(
              VesicBearing.ultimate(
                      loaded(Footing.strip(2, 1), GROUND, FootingLoad.centred()), rule)
                  .orThrow()
                  .depth())
          .isEqualTo(CorrectionFactors.NONE);
    }
    assertThat(
            HansenBearing.ultimate(loaded(Footing.strip(2, 1), GROUND, FootingLoad.centred()))
                .orThrow()
                .depth())
        .isEqualTo(CorrectionFactors.NONE);
  }

  private static CorrectionFactors depth(
      Footing footing, CohesionDepthFactor rule, BearingGround ground) {
    return VesicBearing.ultimate(BearingCase.centred(footing, ground, DepthEffect.CREDITED), rule)
        .orThrow()
        .depth();
  }

  @Test
  void meyerhof_takes_surcharge_factors_from_ten_degrees_and_depth_to_one_width() {
    assertThat(
            meyerhof(Footing.strip(2, 1), new BearingGround(9.99, 5, 20, 18)).depth().surcharge())
        .isEqualTo(1);
    double root = Math.tan(Math.PI / 4 + Math.toRadians(5));
    assertThat(meyerhof(Footing.strip(2, 1), new BearingGround(10, 5, 20, 18)).depth().surcharge())
        .isCloseTo(1 + 0.05 * root, within(1e-12));
    assertThat(meyerhof(Footing.strip(1, 1), GROUND).remarks()).isEmpty();
    assertThat(meyerhof(Footing.strip(1, 1.01), GROUND).remarks()).hasSize(1);
    assertThat(meyerhof(Footing.strip(1, 0), GROUND).remarks()).isEmpty();
    BearingCapacity ignored =
        MeyerhofBearing.ultimate(loaded(Footing.strip(1, 3), GROUND, FootingLoad.centred()))
            .orThrow();
    assertThat(ignored.remarks()).isEmpty();
    assertThat(ignored.depth()).isEqualTo(CorrectionFactors.NONE);
  }

  private static BearingCapacity meyerhof(Footing footing, BearingGround ground) {
    return MeyerhofBearing.ultimate(BearingCase.centred(footing, ground, DepthEffect.CREDITED))
        .orThrow();
  }

  @Test
  @DisplayName(
      "Own cases: angles of 1 and 50 degrees are the ends of the range; a load needs its vertical"
          + " part")
  void range_of_the_equation() {
    Footing strip = Footing.strip(2, 1);
    assertThat(hansen(strip, new BearingGround(1, 5, 20, 18)).value()).isPresent();
    assertThat(reason(hansen(strip, new BearingGround(0.999, 5, 20, 18))))
        .isEqualTo(
            "an angle of shearing resistance of 0.999 degrees: use 0 (undrained) or at least 1.0");
    assertThat(hansen(strip, new BearingGround(50, 5, 20, 18)).value()).isPresent();
    assertThat(reason(hansen(strip, new BearingGround(50.1, 5, 20, 18))))
        .isEqualTo(
            "an angle of shearing resistance of 50.1 degrees is above the 50.0 degrees to which the"
                + " factors are used");
    assertThat(reason(HansenBearing.ultimate(loaded(strip, GROUND, FootingLoad.inclined(0, 1)))))
        .isEqualTo("a horizontal load needs the vertical load that goes with it");
    assertThat(hansen(strip, GROUND).value()).isPresent(); // neither has a size
  }

  private static Outcome<BearingCapacity> hansen(Footing footing, BearingGround ground) {
    return HansenBearing.ultimate(loaded(footing, ground, FootingLoad.centred()));
  }

  @Test
  @DisplayName(
      "Own cases: the resultant on a base of 2 x 3 m, at its edges and beyond, on strips and"
          + " circles")
  void effective_base() {
    Footing footing = Footing.rectangle(2, 3, 1);
    EffectiveBase base = EffectiveBase.of(footing, new FootingLoad(10, 0, -0.25, 0.5)).orThrow();
    assertThat(base.parallelMetres()).isCloseTo(1.5, within(1e-12));
    assertThat(base.acrossMetres()).isCloseTo(2, within(1e-12));
    assertThat(base.widthToLength()).isCloseTo(0.75, within(1e-12));
    assertThat(EffectiveBase.of(footing, new FootingLoad(10, 0, 0.9999, 0)).value()).isPresent();
    assertThat(reason(EffectiveBase.of(footing, new FootingLoad(10, 0, 1, 0))))
        .contains("the footing overturns");
    assertThat(EffectiveBase.of(footing, new FootingLoad(10, 0, 0, 1.4999)).value()).isPresent();
    assertThat(reason(EffectiveBase.of(footing, new FootingLoad(10, 0, 0, 1.5))))
        .contains("the footing overturns");
    // a millionth of the side is the least that is left
    Footing small = Footing.rectangle(0.5, 1, 1);
    assertThat(reason(EffectiveBase.of(small, new FootingLoad(10, 0, 0.25 - 2e-7, 0))))
        .contains("overturns");
    assertThat(EffectiveBase.of(small, new FootingLoad(10, 0, 0.25 - 3e-7, 0)).value()).isPresent();
    Footing big = Footing.rectangle(2, 4, 1);
    assertThat(reason(EffectiveBase.of(big, new FootingLoad(10, 0, 0, 2 - 1.9e-6))))
        .contains("overturns");
    assertThat(EffectiveBase.of(big, new FootingLoad(10, 0, 0, 2 - 2.1e-6)).value()).isPresent();
    Footing circle = Footing.circle(2, 1);
    EffectiveBase round = EffectiveBase.of(circle, FootingLoad.centred()).orThrow();
    assertThat(round.areaSquareMetres()).isCloseTo(Math.PI, within(1e-12));
    assertThat(round.widthToLength()).isEqualTo(1);
    assertThat(round.widthMetres()).isEqualTo(2);
    assertThat(reason(EffectiveBase.of(circle, new FootingLoad(10, 0, 0, 0.1))))
        .contains("use the inscribed square");
    assertThat(reason(EffectiveBase.of(circle, new FootingLoad(10, 0, 0.1, 0))))
        .contains("use the inscribed square");
    assertThat(reason(EffectiveBase.of(circle, new FootingLoad(10, 0, 0.1, 0.1))))
        .contains("use the inscribed square");
    assertThat(reason(EffectiveBase.of(Footing.strip(2, 1), new FootingLoad(10, 0, 0, 0.1))))
        .isEqualTo("a strip has no eccentricity along its run");
    EffectiveBase strip =
        EffectiveBase.of(Footing.strip(2, 1), new FootingLoad(10, 0, 0.25, 0)).orThrow();
    assertThat(strip.widthMetres()).isCloseTo(1.5, within(1e-12));
    assertThat(strip.inclinationExponent()).isEqualTo(2);
    assertThat(Footing.rectangle(2, 2, 1).widthMetres()).isEqualTo(2);
  }

  @Test
  @DisplayName(
      "UFC 3-220-20, 5-4 to 5-9 (secondary digest), own cases: middle third and edge at their"
          + " limits")
  void contact_pressure_at_its_limits() {
    // 120 kN on 3 m: mean 40; e = 0.5 is B/6: 80 and 0 over the whole base
    ContactPressure third = ContactPressure.of(120, 3, 0.5).orThrow();
    assertThat(third.largestKilopascals()).isCloseTo(80, within(1e-9));
    assertThat(third.smallestKilopascals()).isCloseTo(0, within(1e-9));
    assertThat(third.contactWidthMetres()).isEqualTo(3);
    assertThat(third.withinMiddleThird()).isTrue();
    ContactPressure beyond = ContactPressure.of(120, 3, 0.51).orThrow();
    assertThat(beyond.withinMiddleThird()).isFalse();
    assertThat(beyond.contactWidthMetres()).isCloseTo(2.97, within(1e-9));
    assertThat(beyond.largestKilopascals()).isCloseTo(240 / 2.97, within(1e-9));
    assertThat(beyond.eccentricityMetres()).isEqualTo(0.51);
    assertThat(reason(ContactPressure.of(0, 3, 0)))
        .isEqualTo("no downward force: the base is not in contact");
    assertThat(ContactPressure.of(1e-6, 3, 0).value()).isPresent();
    // a base of 2 m counts as left within 2e-6 m of its edge
    assertThat(reason(ContactPressure.of(120, 2, 1 - 1.9e-6)))
        .isEqualTo("the resultant lies at or beyond the edge of the base: it overturns");
    assertThat(ContactPressure.of(120, 2, 1 - 2.1e-6).value()).isPresent();
    assertThat(reason(ContactPressure.of(120, 0.5, 0.25 - 4e-7))).contains("overturns");
    assertThat(ContactPressure.of(120, 0.5, 0.25 - 6e-7).value()).isPresent();
  }

  @Test
  void allowable_pressure_of_a_factor_of_one_and_of_nothing() {
    AllowableBearing one = AllowableBearing.of(100, 30, 1);
    assertThat(one.grossKilopascals()).isEqualTo(100);
    assertThat(one.netKilopascals()).isEqualTo(70);
    assertThat(AllowableBearing.of(0, 30, 2).netKilopascals()).isEqualTo(-30);
    assertThat(AllowableBearing.CUSTOMARY_FACTOR).isEqualTo(3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AllowableBearing.of(-1, 30, 2))
        .withMessage("ultimate pressure is -1.0 kPa, it must be 0 or above");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AllowableBearing.of(1 / 0.0, 30, 2))
        .withMessageContaining("ultimate pressure");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> AllowableBearing.of(1, -1, 2))
        .withMessageContaining("overburden");
  }

  @Test
  @DisplayName(
      "Own cases: Terzaghi's shapes: strip 1 and 1, square 1.3 and 0.8, circle 1.3 and 0.6; nearly"
          + " square is not")
  void terzaghi_shapes() {
    BearingFactors factors = new BearingFactors(10, 5, 4);
    BearingGround ground = new BearingGround(20, 10, 20, 18);
    // strip: 100 + 100 + 0.5 x 18 x 2 x 4 = 272
    assertThat(terzaghi(Footing.strip(2, 1), ground, factors)).isCloseTo(272, within(1e-9));
    // square: 130 + 100 + 57.6; circle: 130 + 100 + 43.2
    assertThat(terzaghi(Footing.square(2, 1), ground, factors)).isCloseTo(287.6, within(1e-9));
    assertThat(terzaghi(Footing.circle(2, 1), ground, factors)).isCloseTo(273.2, within(1e-9));
    assertThat(
            reason(
                TerzaghiBearing.ultimate(
                    loaded(Footing.rectangle(2, 2.001, 1), ground, FootingLoad.centred()),
                    factors)))
        .contains("not for a rectangle");
    assertThat(
            TerzaghiBearing.ultimate(
                    loaded(Footing.rectangle(2, 2.000001, 1), ground, FootingLoad.centred()),
                    factors)
                .value())
        .isPresent();
    assertThat(
            TerzaghiBearing.ultimate(loaded(Footing.strip(2, 1), ground, FootingLoad.centred()), 4)
                .orThrow()
                .factors()
                .weight())
        .isEqualTo(4);
    assertThat(TerzaghiWeightFactor.at(40, TerzaghiWeightFactor.Author.BOWLES).orThrow())
        .isEqualTo(100.4);
    assertThat(reason(TerzaghiWeightFactor.at(40.1, TerzaghiWeightFactor.Author.BOWLES)))
        .isEqualTo("the printed table of this author ends at 40.0 degrees");
  }

  private static double terzaghi(Footing footing, BearingGround ground, BearingFactors factors) {
    return TerzaghiBearing.ultimate(loaded(footing, ground, FootingLoad.centred()), factors)
        .orThrow()
        .ultimateKilopascals();
  }
}
