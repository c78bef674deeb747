package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.bearing.VesicBearing.CohesionDepthFactor;

/** Bearing capacity against worked examples of the literature. */
class PublishedBearingExamplesTest {

  private static double vesic(
      Footing footing, BearingGround ground, CohesionDepthFactor depthRule) {
    return VesicBearing.ultimate(
            BearingCase.centred(footing, ground, DepthEffect.CREDITED), depthRule)
        .orThrow()
        .ultimateKilopascals();
  }

  private static double terzaghi(Footing footing, BearingGround ground, BearingFactors factors) {
    return TerzaghiBearing.ultimate(
            BearingCase.centred(footing, ground, DepthEffect.IGNORED), factors)
        .orThrow()
        .ultimateKilopascals();
  }

  @Test
  @DisplayName(
      "Vesic, square 2 m, 25 degrees: 1373.2 kPa in an open test suite (secondary; Das and a factor of"
          + " 3 giving 458 kPa, 1832 kN are attributed from memory)")
  void vesicSquareOfTwoMetres() {
    // Tolerance 0.1 %: the source rounds its factors to two decimals. This example takes the depth
    // factor of the cohesion
    // term from dq; the next one takes 1 + 0.4 k. Each misses the other's result by about 2 %,
    // hence the setting.
    double ultimate =
        vesic(
            Footing.square(2, 1.5),
            new BearingGround(25, 20, 1.5 * 16.5, 16.5),
            CohesionDepthFactor.FROM_SURCHARGE_FACTOR);
    assertThat(ultimate).isCloseTo(1373.2, withPercentage(0.1));
    AllowableBearing allowable = AllowableBearing.of(ultimate, 1.5 * 16.5, 3);
    assertThat(allowable.grossKilopascals()).isCloseTo(458, withPercentage(0.1));
    assertThat(allowable.grossKilopascals() * 4).isCloseTo(1832, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Vesic, 20 degrees, width 2 m: strip 697.13 and square 901.37 kPa in an open test suite"
          + " (secondary)")
  void vesicStripAndSquare() {
    BearingGround ground = new BearingGround(20, 20, 1.5 * 18, 18);
    // Tolerance 0.2 %: factors rounded in the source.
    assertThat(vesic(Footing.strip(2, 1.5), ground, CohesionDepthFactor.LINEAR))
        .isCloseTo(697.13, withPercentage(0.2));
    assertThat(vesic(Footing.square(2, 1.5), ground, CohesionDepthFactor.LINEAR))
        .isCloseTo(901.37, withPercentage(0.2));
  }

  @Test
  @DisplayName(
      "B. M. Das, Principles of Foundation Engineering, Example 3.1 (from memory): Terzaghi square 2 m,"
          + " 1078.3 kPa, 359.4 kPa, 1438 kN")
  void terzaghiSquareOfDas() {
    // N-gamma 8.34 is the example's own table value; 0.1 % for its two-decimal factors.
    double ultimate =
        terzaghi(
            Footing.square(2, 1.5),
            new BearingGround(25, 20, 1.5 * 16.5, 16.5),
            TerzaghiBearing.factors(25, 8.34));
    assertThat(ultimate).isCloseTo(1078.3, withPercentage(0.1));
    double allowable = AllowableBearing.of(ultimate, 1.5 * 16.5, 3).grossKilopascals();
    assertThat(allowable).isCloseTo(359.4, withPercentage(0.1));
    assertThat(allowable * 4).isCloseTo(1438, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "J. E. Bowles, Foundation Analysis and Design, Example 4-1 (from memory): Terzaghi square,"
          + " 614 + 34.6 B, allowable 205 + 11.5 B")
  void terzaghiSquareOfBowles() {
    BearingGround ground = new BearingGround(20, 20, 1.2 * 17.3, 17.3);
    BearingFactors printed = new BearingFactors(17.7, 7.4, 5.0);
    for (double width : new double[] {1.5, 2, 3}) {
      double ultimate = terzaghi(Footing.square(width, 1.2), ground, printed);
      // Tolerance 0.5 %: the example prints three figures.
      assertThat(ultimate).isCloseTo(614 + 34.6 * width, withPercentage(0.5));
      assertThat(ultimate / 3).isCloseTo(205 + 11.5 * width, withPercentage(0.5));
    }
  }

  @Test
  @DisplayName(
      "R. F. Craig, Soil Mechanics, Example 8.1 (from memory): square 2.25 m, 38 degrees, 2408 kPa dry,"
          + " 1365 kPa with water at the surface")
  void terzaghiSquareOfCraig() {
    BearingFactors printed = new BearingFactors(61, 49, 67);
    Footing footing = Footing.square(2.25, 1.5);
    // Tolerance 0.5 %: printed factors are rounded to whole numbers and used as printed.
    assertThat(terzaghi(footing, new BearingGround(38, 0, 1.5 * 18, 18), printed))
        .isCloseTo(2408, withPercentage(0.5));
    // The example uses a buoyant unit weight of 10.2, that is 20.01 saturated with 9.81 for water.
    GroundwaterCorrection.Corrected wet =
        GroundwaterCorrection.apply(footing, new GroundwaterCorrection.Ground(18, 20.01, 0));
    assertThat(
            terzaghi(
                footing,
                new BearingGround(
                    38,
                    0,
                    wet.overburdenKilopascals(),
                    wet.unitWeightBelowKilonewtonsPerCubicMetre()),
                printed))
        .isCloseTo(1365, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "J. Brinch Hansen, A General Formula for Bearing Capacity, 1961, short-term example (secondary):"
          + " 64 t/m2 with Nc 5.1, sc 1.12, dc 1.13, ic 0.89")
  void hansenUndrainedOf1961() {
    // Any consistent unit of force serves: t is put where kN stands, t/m2 where kPa stands. 2 %:
    // the paper prints two
    // figures and its dc and ic (1.13, 0.89) differ from those of the formulas (1.145, 0.874); the
    // differences cancel.
    BearingCapacity capacity =
        HansenBearing.ultimate(
                new BearingCase(
                    Footing.rectangle(5.5, 9, 2),
                    BearingGround.undrained(10.3, 4.4),
                    FootingLoad.inclined(3000, 225),
                    DepthEffect.CREDITED))
            .orThrow();
    assertThat(capacity.ultimateKilopascals()).isCloseTo(64, withPercentage(2));
    assertThat(capacity.remarks()).singleElement().asString().contains("multiplied");
    assertThat(capacity.factors().cohesion()).isCloseTo(5.1, within(0.05));
    assertThat(capacity.shape().cohesion()).isCloseTo(1.12, within(0.005));
    assertThat(capacity.depth().cohesion()).isCloseTo(1.13, withPercentage(2));
    assertThat(capacity.inclination().cohesion()).isCloseTo(0.89, withPercentage(2));
  }

  @Test
  @DisplayName(
      "L. Prandtl 1920: a strip on weightless clay fails at (2 + pi) times its strength, for every author"
          + " but Terzaghi (5.7)")
  void undrainedStripAtTheSurface() {
    BearingCase question =
        BearingCase.centred(
            Footing.strip(1, 0), BearingGround.undrained(10, 0), DepthEffect.CREDITED);
    double exact = 10 * (2 + Math.PI);
    assertThat(
            VesicBearing.ultimate(question, CohesionDepthFactor.LINEAR)
                .orThrow()
                .ultimateKilopascals())
        .isCloseTo(exact, within(1e-9));
    assertThat(HansenBearing.ultimate(question).orThrow().ultimateKilopascals())
        .isCloseTo(exact, within(1e-9));
    assertThat(MeyerhofBearing.ultimate(question).orThrow().ultimateKilopascals())
        .isCloseTo(exact, within(1e-9));
    assertThat(EurocodeBearing.ultimate(question).orThrow().ultimateKilopascals())
        .isCloseTo(exact, within(1e-9));
    assertThat(TerzaghiBearing.ultimate(question, 0).orThrow().ultimateKilopascals())
        .isCloseTo(57, within(1e-9));
  }
}
