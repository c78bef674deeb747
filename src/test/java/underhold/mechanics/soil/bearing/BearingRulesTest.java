package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Us;

class BearingRulesTest {

  private static final BearingGround SAND = new BearingGround(32, 0, 30, 18);

  private static BearingCase loaded(Footing footing, BearingGround ground, FootingLoad load) {
    return new BearingCase(footing, ground, load, DepthEffect.IGNORED);
  }

  @Test
  @DisplayName(
      "Own case: strip 3 ft wide, 32 degrees, 120 pcf, EN 1997-1 factors, 4 ft deep 16,116 psf and 12 ft"
          + " deep 38,369 psf")
  void depthPaysThroughTheOverburden() {
    // Tolerance 0.1 %: factors rounded to two decimals in the hand calculation.
    assertThat(eurocodeStrip(4)).isCloseTo(16_116, withPercentage(0.1));
    assertThat(eurocodeStrip(12)).isCloseTo(38_369, withPercentage(0.1));
    assertThat(AllowableBearing.of(eurocodeStrip(12), 0, 3).grossKilopascals())
        .isCloseTo(12_790, withPercentage(0.1));
  }

  private static double eurocodeStrip(double depthFeet) {
    BearingGround ground = new BearingGround(32, 0, 120 * depthFeet * Us.PSF, 120 * Us.PCF);
    return EurocodeBearing.ultimate(
                loaded(
                    Footing.strip(3 * Us.FOOT, depthFeet * Us.FOOT), ground, FootingLoad.centred()))
            .orThrow()
            .ultimateKilopascals()
        / Us.PSF;
  }

  @Test
  @DisplayName("EN 1997-1:2004, Annex D.4 (secondary digest): square has sq = 1 + sin f, sg = 0.7")
  void eurocodeSquareShape() {
    CorrectionFactors shape =
        EurocodeBearing.ultimate(loaded(Footing.square(2, 1), SAND, FootingLoad.centred()))
            .orThrow()
            .shape();
    assertThat(shape.surcharge()).isCloseTo(1 + Math.sin(Math.toRadians(32)), within(1e-12));
    assertThat(shape.weight()).isCloseTo(0.7, within(1e-12));
  }

  @Test
  @DisplayName(
      "EN 1997-1:2004, Annex D.3 (secondary digest): undrained square sc = 1.2; at H = A' cu ic = 0.5")
  void eurocodeUndrainedShapeAndSliding() {
    BearingGround clay = BearingGround.undrained(50, 20);
    BearingCapacity edge =
        EurocodeBearing.ultimate(loaded(Footing.square(2, 1), clay, FootingLoad.inclined(400, 200)))
            .orThrow();
    assertThat(edge.shape().cohesion()).isCloseTo(1.2, within(1e-12));
    assertThat(edge.inclination().cohesion()).isCloseTo(0.5, within(1e-12));
    assertThat(
            EurocodeBearing.ultimate(
                    loaded(Footing.square(2, 1), clay, FootingLoad.inclined(400, 201)))
                .reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("slides"));
  }

  @Test
  @DisplayName(
      "EN 1997-1:2004, Annex D.4 (secondary digest): an inclined base has bq = bg = (1 - a tan f)^2")
  void eurocodeInclinedBase() {
    BearingCapacity capacity =
        EurocodeBearing.ultimate(
                loaded(
                    Footing.strip(2, 1), new BearingGround(30, 10, 20, 18), FootingLoad.centred()),
                10)
            .orThrow();
    double lean = 1 - Math.toRadians(10) * Math.tan(Math.toRadians(30));
    assertThat(capacity.inclination().weight()).isCloseTo(lean * lean, within(1e-12));
    assertThat(capacity.inclination().cohesion()).isLessThan(capacity.inclination().weight());
  }

  @Test
  @DisplayName(
      "EN 1997-1:2004, Annex D.4 (secondary digest): m = 2 for a strip and 1.5 for a square, load along"
          + " the width")
  void inclinationExponents() {
    FootingLoad load = FootingLoad.inclined(100, 20);
    assertThat(
            EurocodeBearing.ultimate(loaded(Footing.strip(2, 1), SAND, load))
                .orThrow()
                .inclination()
                .surcharge())
        .isCloseTo(Math.pow(0.8, 2), within(1e-12));
    assertThat(
            EurocodeBearing.ultimate(loaded(Footing.square(2, 1), SAND, load))
                .orThrow()
                .inclination()
                .weight())
        .isCloseTo(Math.pow(0.8, 2.5), within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case: Meyerhof's weight term vanishes when the load is steeper than the friction angle")
  void meyerhofInclination() {
    BearingCapacity steep =
        MeyerhofBearing.ultimate(loaded(Footing.strip(2, 1), SAND, FootingLoad.inclined(100, 70)))
            .orThrow();
    assertThat(steep.weightTermKilopascals()).isZero();
    assertThat(steep.overburdenTermKilopascals()).isPositive();
  }

  @Test
  @DisplayName("Own case: Meyerhof's depth is credited to D/B = 1 and the reader is told")
  void meyerhofDepthIsCapped() {
    BearingCapacity deep =
        MeyerhofBearing.ultimate(
                BearingCase.centred(Footing.strip(1, 3), SAND, DepthEffect.CREDITED))
            .orThrow();
    assertThat(deep.remarks()).singleElement().asString().contains("D/B = 1");
    double root = Math.tan(Math.toRadians(61));
    assertThat(deep.depth().cohesion()).isCloseTo(1 + 0.2 * root, within(1e-12));
    assertThat(deep.depth().surcharge()).isCloseTo(1 + 0.1 * root, within(1e-12));
  }

  @Test
  @DisplayName(
      "UFC 3-220-20, 5-3.3 (secondary digest): the effective width enters the weight term, the actual"
          + " width the depth factor")
  void eccentricityReducesTheWeightTermOnly() {
    BearingCapacity eccentric =
        HansenBearing.ultimate(
                new BearingCase(
                    Footing.strip(2, 1),
                    SAND,
                    new FootingLoad(100, 0, 0.25, 0),
                    DepthEffect.CREDITED))
            .orThrow();
    BearingCapacity centred =
        HansenBearing.ultimate(BearingCase.centred(Footing.strip(2, 1), SAND, DepthEffect.CREDITED))
            .orThrow();
    assertThat(eccentric.effectiveBase().widthMetres()).isCloseTo(1.5, within(1e-12));
    assertThat(eccentric.weightTermKilopascals() / centred.weightTermKilopascals())
        .isCloseTo(0.75, within(1e-12));
    assertThat(eccentric.depth()).isEqualTo(centred.depth());
    assertThat(eccentric.ultimateLoadKilonewtons()).isLessThan(centred.ultimateLoadKilonewtons());
  }

  @Test
  void casesOutsideTheMethodSayWhy() {
    Footing footing = Footing.rectangle(1, 2, 1);
    assertThat(TerzaghiBearing.ultimate(loaded(footing, SAND, FootingLoad.centred()), 20).reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("not for a rectangle"));
    assertThat(
            TerzaghiBearing.ultimate(
                    loaded(Footing.strip(1, 1), SAND, FootingLoad.inclined(10, 1)), 20)
                .reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("no inclination factors"));
    assertThat(
            HansenBearing.ultimate(loaded(footing, SAND, new FootingLoad(10, 0, 0.5, 0))).reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("overturns"));
    assertThat(HansenBearing.ultimate(loaded(footing, SAND, FootingLoad.inclined(10, 11))).reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("slides"));
    assertThat(
            HansenBearing.ultimate(
                    loaded(footing, new BearingGround(0.5, 5, 0, 18), FootingLoad.centred()))
                .reason())
        .isPresent();
    assertThat(
            HansenBearing.ultimate(
                    loaded(footing, new BearingGround(51, 5, 0, 18), FootingLoad.centred()))
                .reason())
        .isPresent();
    assertThat(HansenBearing.ultimate(loaded(footing, SAND, FootingLoad.inclined(0, 1))).reason())
        .isPresent();
    assertThat(
            MeyerhofBearing.ultimate(
                    loaded(Footing.circle(1, 1), SAND, new FootingLoad(10, 0, 0.1, 0)))
                .reason())
        .isPresent();
    assertThat(
            MeyerhofBearing.ultimate(
                    loaded(Footing.strip(1, 1), SAND, new FootingLoad(10, 0, 0, 0.1)))
                .reason())
        .isPresent();
    assertThatIllegalArgumentException().isThrownBy(() -> Footing.rectangle(3, 2, 1));
  }

  @Test
  @DisplayName("Own case: local shear takes 0.67 of cohesion and of tan f (UFC 3-220-20, 5-3.1.3)")
  void localShear() {
    LocalShear reduced = LocalShear.reduce(10, 30);
    assertThat(reduced.cohesionKilopascals()).isCloseTo(6.7, within(1e-12));
    assertThat(reduced.frictionAngleDegrees()).isCloseTo(21.147, within(0.001));
  }

  @Test
  @DisplayName("Own case: water at the base, half-way through B and below B")
  void groundwater() {
    Footing footing = Footing.strip(2, 1);
    assertThat(water(footing, 1).unitWeightBelowKilonewtonsPerCubicMetre())
        .isCloseTo(20 - 9.81, within(1e-12));
    assertThat(water(footing, 2).unitWeightBelowKilonewtonsPerCubicMetre())
        .isCloseTo((18 + 20 - 9.81) / 2, within(1e-12));
    assertThat(water(footing, 3).unitWeightBelowKilonewtonsPerCubicMetre()).isEqualTo(18);
    assertThat(water(footing, 0.5).overburdenKilopascals())
        .isCloseTo(9 + 0.5 * 10.19, within(1e-12));
  }

  private static GroundwaterCorrection.Corrected water(Footing footing, double depth) {
    return GroundwaterCorrection.apply(footing, new GroundwaterCorrection.Ground(18, 20, depth));
  }

  @Test
  @DisplayName(
      "UFC 3-220-20, equations 5-13 and 5-14 (secondary digest): net = gross less overburden")
  void allowable() {
    AllowableBearing allowable = AllowableBearing.of(900, 40, 3);
    assertThat(allowable.grossKilopascals()).isEqualTo(300);
    assertThat(allowable.netKilopascals()).isEqualTo(260);
    assertThatIllegalArgumentException().isThrownBy(() -> AllowableBearing.of(900, 40, 0.9));
    assertThatIllegalArgumentException().isThrownBy(() -> AllowableBearing.of(Double.NaN, 40, 3));
  }

  @Test
  @DisplayName(
      "International Building Code (2021 family), Table 1806.2: 575, 192, 144, 96, 72 kPa (vertical values"
          + " seen in the twin table of the International Residential Code)")
  void presumptiveValues() {
    assertThat(PresumptiveBearing.rows())
        .extracting(row -> Math.round(row.verticalKilopascals()))
        .containsExactly(575L, 192L, 144L, 96L, 72L);
    PresumptiveBearing clay = PresumptiveBearing.find("clay").orElseThrow();
    assertThat(clay.frictionCoefficient()).isEmpty();
    assertThat(clay.cohesionKilopascals().orElseThrow()).isCloseTo(130 * Us.PSF, within(1e-6));
    assertThat(clay.lateralKilopascalsPerMetre()).isCloseTo(100 * Us.PCF, within(1e-6));
    assertThat(clay.lateralBasis()).isEqualTo("from memory, verify");
    assertThat(PresumptiveBearing.exclusions())
        .extracting(PresumptiveBearing.Exclusion::id)
        .contains("peat", "unprepared-fill", "normally-consolidated-clay");
  }

  @Test
  @DisplayName("Own case: pressure under an eccentric base, whole and partial contact")
  void contactPressure() {
    ContactPressure whole = ContactPressure.of(120, 3, 0.25).orThrow();
    assertThat(whole.largestKilopascals()).isCloseTo(60, within(1e-9));
    assertThat(whole.smallestKilopascals()).isCloseTo(20, within(1e-9));
    assertThat(whole.withinMiddleThird()).isTrue();
    ContactPressure partial = ContactPressure.of(120, 3, -1).orThrow();
    assertThat(partial.largestKilopascals()).isCloseTo(160, within(1e-9));
    assertThat(partial.contactWidthMetres()).isCloseTo(1.5, within(1e-9));
    // The pressure block must carry the force, whatever the contact.
    assertThat(partial.largestKilopascals() * partial.contactWidthMetres() / 2)
        .isCloseTo(120, within(1e-9));
    assertThat(ContactPressure.of(120, 3, 1.5).reason()).isPresent();
    assertThat(ContactPressure.of(-1, 3, 0).reason()).isPresent();
  }
}
