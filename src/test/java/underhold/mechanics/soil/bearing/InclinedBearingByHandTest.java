package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.bearing.VesicBearing.CohesionDepthFactor;

/** Bearing under inclined loads and on tilted bases by hand; own cases. */
class InclinedBearingByHandTest {
  /** tan 30, sin 30 and the Prandtl-Reissner factors of 30 degrees, written out. */
  private static final double TAN = 0.5773502691896258;

  private static final double NQ = Math.exp(Math.PI * TAN) * 3; // tan^2 60 = 3: 18.401
  private static final double NC = (NQ - 1) / TAN; // 30.140

  /** 30 degrees, c 10 kPa, 20 kPa beside the base, 18 kN/m3 below it. */
  private static final BearingGround GROUND = new BearingGround(30, 10, 20, 18);

  private static BearingCase loaded(Footing footing, BearingGround ground, FootingLoad load) {
    return new BearingCase(footing, ground, load, DepthEffect.IGNORED);
  }

  @Test
  @DisplayName(
      "Own case, Hansen's formulas by hand: 2 x 4 m, V 400, H 100 kN, c' 10 kPa, 30 degrees")
  void hansen_inclined() {
    BearingCapacity capacity =
        HansenBearing.ultimate(
                loaded(Footing.rectangle(2, 4, 1), GROUND, FootingLoad.inclined(400, 100)))
            .orThrow();
    double share = 100 / (400 + 8 * 10 / TAN); // A' c cot f = 138.6
    double iq = Math.pow(1 - 0.5 * share, 5);
    assertThat(capacity.inclination().surcharge()).isCloseTo(iq, within(1e-12));
    assertThat(capacity.inclination().weight())
        .isCloseTo(Math.pow(1 - 0.7 * share, 5), within(1e-12));
    assertThat(capacity.inclination().cohesion())
        .isCloseTo(iq - (1 - iq) / (NQ - 1), within(1e-12));
    assertThat(capacity.shape().cohesion()).isCloseTo(1 + 0.5 * NQ / NC, within(1e-12));
    assertThat(capacity.shape().surcharge()).isCloseTo(1.25, within(1e-12)); // 1 + 0.5 sin 30
    assertThat(capacity.shape().weight()).isCloseTo(0.8, within(1e-12));
    double ng = 1.5 * (NQ - 1) * TAN;
    assertThat(capacity.weightTermKilopascals())
        .isCloseTo(0.5 * 18 * 2 * ng * 0.8 * Math.pow(1 - 0.7 * share, 5), withPercentage(1e-9));
    assertThat(capacity.cohesionTermKilopascals())
        .isCloseTo(
            10 * NC * (1 + 0.5 * NQ / NC) * (iq - (1 - iq) / (NQ - 1)), withPercentage(1e-9));
    assertThat(capacity.overburdenTermKilopascals())
        .isCloseTo(20 * NQ * 1.25 * iq, withPercentage(1e-9));
    assertThat(capacity.ultimateLoadKilonewtons())
        .isCloseTo(8 * capacity.ultimateKilopascals(), withPercentage(1e-9));
  }

  @Test
  @DisplayName(
      "Own case, Hansen: clay 40 kPa, square 2 m: sc 1.2, ic 0.5 (1 + sqrt(1 - 80/160)); it slides"
          + " just above")
  void hansen_undrained() {
    BearingGround clay = BearingGround.undrained(40, 20);
    BearingCapacity capacity =
        HansenBearing.ultimate(loaded(Footing.square(2, 1), clay, FootingLoad.inclined(300, 80)))
            .orThrow();
    assertThat(capacity.shape().cohesion()).isCloseTo(1.2, within(1e-12));
    double ic = 0.5 * (1 + Math.sqrt(0.5));
    assertThat(capacity.inclination().cohesion()).isCloseTo(ic, within(1e-12));
    assertThat(capacity.ultimateKilopascals())
        .isCloseTo(40 * (Math.PI + 2) * 1.2 * ic + 20, within(1e-9));
    assertThat(capacity.remarks()).singleElement().asString().contains("multiplied");
    // no horizontal load, or a strip: nothing to combine
    assertThat(
            HansenBearing.ultimate(loaded(Footing.square(2, 1), clay, FootingLoad.centred()))
                .orThrow()
                .remarks())
        .isEmpty();
    assertThat(
            HansenBearing.ultimate(loaded(Footing.strip(2, 1), clay, FootingLoad.inclined(90, 9)))
                .orThrow()
                .remarks())
        .isEmpty();
  }

  @Test
  void hansen_slides_where_the_load_reaches_what_holds_it() {
    BearingGround sand = new BearingGround(30, 0, 20, 18);
    Footing strip = Footing.strip(2, 1);
    assertThat(
            HansenBearing.ultimate(loaded(strip, sand, FootingLoad.inclined(100, 99.999))).value())
        .isPresent();
    assertThat(reason(HansenBearing.ultimate(loaded(strip, sand, FootingLoad.inclined(100, 100)))))
        .isEqualTo("the horizontal load is above what the base can hold: it slides");
    // just below the limit iq is 0.5^5 and Hansen's ic is 0.031 - 0.969 / 17.4 < 0: with cohesion
    // out of range
    assertThat(
            reason(
                HansenBearing.ultimate(
                    loaded(
                        strip, new BearingGround(30, 1, 20, 18), FootingLoad.inclined(100, 103)))))
        .contains("the factor on the cohesion term falls below 0");
    assertThat(
            HansenBearing.ultimate(loaded(strip, sand, FootingLoad.inclined(100, 99)))
                .orThrow()
                .inclination()
                .cohesion())
        .isZero();
  }

  private static String reason(Outcome<?> outcome) {
    return outcome.reason().orElseThrow();
  }

  @Test
  @DisplayName(
      "Own case, power form by hand: 2 x 4 m, V 400, H 100 kN: m = 2.5 / 1.5, b = 1 - 100 / 538.6")
  void vesic_inclined() {
    BearingCapacity capacity =
        VesicBearing.ultimate(
                loaded(Footing.rectangle(2, 4, 1), GROUND, FootingLoad.inclined(400, 100)),
                CohesionDepthFactor.LINEAR)
            .orThrow();
    double b = 1 - 100 / (400 + 80 / TAN);
    double m = 2.5 / 1.5;
    double iq = Math.pow(b, m);
    assertThat(capacity.inclination().surcharge()).isCloseTo(iq, within(1e-12));
    assertThat(capacity.inclination().weight()).isCloseTo(Math.pow(b, m + 1), within(1e-12));
    assertThat(capacity.inclination().cohesion())
        .isCloseTo(iq - (1 - iq) / (NC * TAN), within(1e-12));
    assertThat(capacity.shape().cohesion()).isCloseTo(1 + 0.5 * NQ / NC, within(1e-12));
    assertThat(capacity.shape().surcharge()).isCloseTo(1 + 0.5 * TAN, within(1e-12));
    assertThat(capacity.shape().weight()).isCloseTo(0.8, within(1e-12));
    // the load along the longer side: the longer effective side is then parallel to it
    EffectiveBase turned =
        EffectiveBase.of(Footing.rectangle(2, 4, 1), new FootingLoad(400, 100, 0, 1.6)).orThrow();
    assertThat(turned.acrossMetres()).isCloseTo(0.8, within(1e-12)); // 4 - 3.2
    assertThat(turned.widthMetres()).isCloseTo(0.8, within(1e-12));
    assertThat(turned.widthToLength()).isCloseTo(0.4, within(1e-12));
    assertThat(turned.areaSquareMetres()).isCloseTo(1.6, within(1e-12));
    assertThat(turned.inclinationExponent()).isCloseTo(4.5 / 3.5, within(1e-12)); // r = 2.5
  }

  @Test
  @DisplayName(
      "Own case, Vesic on clay of 40 kPa: square 2 m, H 80 kN: ic = 1 - 1.5 x 80 / (160 x 5.14)")
  void vesic_undrained_inclined() {
    BearingGround clay = BearingGround.undrained(40, 20);
    Footing square = Footing.square(2, 1);
    BearingCapacity capacity = vesic(square, clay, FootingLoad.inclined(300, 80)).orThrow();
    double ic = 1 - 1.5 * 80 / (160 * (Math.PI + 2));
    assertThat(capacity.inclination().cohesion()).isCloseTo(ic, within(1e-12));
    assertThat(capacity.inclination().surcharge()).isEqualTo(1);
    assertThat(capacity.inclination().weight()).isEqualTo(1);
    assertThat(vesic(square, clay, FootingLoad.inclined(300, 160)).value()).isPresent();
    assertThat(reason(vesic(square, clay, FootingLoad.inclined(300, 160.01))))
        .isEqualTo("the horizontal load is above A' su: the base slides");
    assertThat(vesic(square, clay, FootingLoad.centred()).orThrow().inclination())
        .isEqualTo(CorrectionFactors.NONE);
    // no strength at all: nothing holds
    assertThat(vesic(square, BearingGround.undrained(0, 20), FootingLoad.inclined(300, 1)).value())
        .isEmpty();
    // a sand whose load just slides
    BearingGround sand = new BearingGround(30, 0, 20, 18);
    assertThat(vesic(square, sand, FootingLoad.inclined(100, 99.99)).value()).isPresent();
    assertThat(reason(vesic(square, sand, FootingLoad.inclined(100, 100))))
        .isEqualTo("the horizontal load is above what the base can hold: it slides");
    // b = 1 - 90 / 103.5: iq = 0.05 for a strip, ic = 0.017 - 0.983 / 17.4 < 0
    assertThat(
            reason(
                vesic(
                    Footing.strip(2, 1),
                    new BearingGround(30, 1, 20, 18),
                    FootingLoad.inclined(100, 90))))
        .contains("the factor on the cohesion term falls below 0");
    assertThat(
            vesic(Footing.strip(2, 1), sand, FootingLoad.inclined(100, 90))
                .orThrow()
                .inclination()
                .cohesion())
        .isZero();
  }

  private static Outcome<BearingCapacity> vesic(
      Footing footing, BearingGround ground, FootingLoad load) {
    return VesicBearing.ultimate(loaded(footing, ground, load), CohesionDepthFactor.LINEAR);
  }

  @Test
  @DisplayName(
      "EN 1997-1:2004, Annex D.3 and D.4 (secondary digest), own cases: base tilted 10 degrees on"
          + " clay and in sand")
  void eurocode_tilted_base() {
    BearingGround clay = BearingGround.undrained(40, 20);
    BearingCapacity undrained =
        EurocodeBearing.ultimate(loaded(Footing.strip(2, 1), clay, FootingLoad.centred()), 10)
            .orThrow();
    double bc = 1 - 2 * Math.toRadians(10) / (Math.PI + 2);
    assertThat(undrained.inclination().cohesion()).isCloseTo(bc, within(1e-12));
    assertThat(undrained.inclination().surcharge()).isEqualTo(1);
    assertThat(undrained.ultimateKilopascals())
        .isCloseTo(40 * (Math.PI + 2) * bc + 20, within(1e-9));
    BearingCapacity drained =
        EurocodeBearing.ultimate(
                loaded(Footing.rectangle(2, 4, 1), GROUND, FootingLoad.centred()), 10)
            .orThrow();
    double lean = 1 - Math.toRadians(10) * TAN;
    double bq = lean * lean;
    assertThat(drained.inclination().surcharge()).isCloseTo(bq, within(1e-12));
    assertThat(drained.inclination().cohesion())
        .isCloseTo(bq - (1 - bq) / (NC * TAN), within(1e-12));
    // sq = 1 + 0.5 sin 30 = 1.25; sc = (1.25 Nq - 1) / (Nq - 1); sg = 0.85
    assertThat(drained.shape().surcharge()).isCloseTo(1.25, within(1e-12));
    assertThat(drained.shape().cohesion()).isCloseTo((1.25 * NQ - 1) / (NQ - 1), within(1e-12));
    assertThat(drained.shape().weight()).isCloseTo(0.85, within(1e-12));
    assertThat(drained.remarks()).isEmpty();
    assertThat(
            EurocodeBearing.ultimate(
                    BearingCase.centred(Footing.strip(2, 1), GROUND, DepthEffect.CREDITED))
                .orThrow()
                .remarks())
        .containsExactly("EN 1997-1 Annex D has no depth factors: none were credited");
    assertThat(
            EurocodeBearing.ultimate(loaded(Footing.strip(2, 1), GROUND, FootingLoad.centred()), 30)
                .value())
        .isPresent();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                EurocodeBearing.ultimate(
                    loaded(Footing.strip(2, 1), GROUND, FootingLoad.centred()), 30.1))
        .withMessageContaining("base inclination is 30.1 degrees");
    // 5 degrees of friction, base tilted 30: bq = 0.910, Nq = 1.568: bc = 0.910 - 0.090/0.568 > 0
    BearingGround weak = new BearingGround(5, 5, 20, 18);
    double small = Math.tan(Math.toRadians(5));
    double weakBq = Math.pow(1 - Math.toRadians(30) * small, 2);
    double weakNq =
        Math.exp(Math.PI * small) * Math.pow(Math.tan(Math.PI / 4 + Math.toRadians(2.5)), 2);
    assertThat(
            EurocodeBearing.ultimate(loaded(Footing.strip(2, 1), weak, FootingLoad.centred()), 30)
                .orThrow()
                .inclination()
                .cohesion())
        .isCloseTo(weakBq - (1 - weakBq) / (weakNq - 1), within(1e-12));
    // undrained, horizontal load at A' su: ic = 0.5; strip of 2 m holds 80 kN per metre
    assertThat(
            EurocodeBearing.ultimate(
                    loaded(Footing.strip(2, 1), clay, FootingLoad.inclined(200, 80)))
                .orThrow()
                .inclination()
                .cohesion())
        .isEqualTo(0.5);
  }

  @Test
  @DisplayName("Own case, Meyerhof's formulas by hand: 2 x 4 m, 30 degrees, D/B 0.5, H/V = tan 15")
  void meyerhof_inclined() {
    BearingCapacity capacity =
        MeyerhofBearing.ultimate(
                new BearingCase(
                    Footing.rectangle(2, 4, 1),
                    GROUND,
                    FootingLoad.inclined(100, 100 * Math.tan(Math.toRadians(15))),
                    DepthEffect.CREDITED))
            .orThrow();
    // Kp = 3, B/L = 0.5: sc = 1 + 0.2 x 1.5, sq = sg = 1.15
    assertThat(capacity.shape().cohesion()).isCloseTo(1.3, within(1e-12));
    assertThat(capacity.shape().surcharge()).isCloseTo(1.15, within(1e-12));
    assertThat(capacity.shape().weight()).isCloseTo(1.15, within(1e-12));
    double root = Math.sqrt(3);
    assertThat(capacity.depth().cohesion()).isCloseTo(1 + 0.1 * root, within(1e-12));
    assertThat(capacity.depth().weight()).isCloseTo(1 + 0.05 * root, within(1e-12));
    // (1 - 15/90)^2 = 0.6944; (1 - 15/30)^2 = 0.25
    assertThat(capacity.inclination().cohesion()).isCloseTo(25.0 / 36, within(1e-12));
    assertThat(capacity.inclination().surcharge()).isCloseTo(25.0 / 36, within(1e-12));
    assertThat(capacity.inclination().weight()).isCloseTo(0.25, within(1e-12));
  }
}
