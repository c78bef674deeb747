package underhold.mechanics.soil.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Us;
import underhold.mechanics.soil.bearing.ContactPressure;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.mechanics.soil.pressure.Resultant;
import underhold.mechanics.soil.pressure.TriangularThrust;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Cases;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.mechanics.soil.stability.PierAsRetainingWall.LateralForce;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Pier;
import underhold.mechanics.soil.stability.PierAsRetainingWall.VerticalForce;
import underhold.quantity.Seeds;

class PierAsRetainingWallTest {

  /**
   * Pier 8 ft high, 3 ft thick, 150 pcf; soil 120 pcf, 32 degrees; 480 psf behind; wall 6,000 plf
   * central; mu 0.45.
   */
  private static Pier ownCase() {
    double height = 8 * Us.FOOT;
    double thickness = 3 * Us.FOOT;
    double active = RankinePressure.activeCoefficient(32);
    return new Pier(
        height,
        thickness,
        150 * Us.PCF,
        new VerticalForce(6000 * Us.PLF, thickness / 2),
        VerticalForce.NONE,
        List.of(
            force("soil", TriangularThrust.soil(active, 120 * Us.PCF, height)),
            force("surcharge", TriangularThrust.uniformSurcharge(active, 480 * Us.PSF, height))),
        Holding.friction(0.45));
  }

  private static LateralForce force(String name, Resultant thrust) {
    return new LateralForce(
        name, thrust.forceKilonewtonsPerMetre(), thrust.heightAboveBaseMetres());
  }

  @Test
  @DisplayName("Own case: with the building 1.831 in sliding and overturning, 9,403 psf at the toe")
  void withTheBuilding() {
    Case loaded = PierAsRetainingWall.check(ownCase()).withBuilding();
    // Tolerance 0.1 %: hand arithmetic to four figures.
    assertThat(loaded.sliding().demand() / Us.PLF).isCloseTo(2359.7, withPercentage(0.1));
    assertThat(loaded.overturning().demand() / Us.PLF / Us.FOOT)
        .isCloseTo(7865.8, withPercentage(0.1));
    assertThat(loaded.sliding().value().orElseThrow()).isCloseTo(1.831, within(0.001));
    assertThat(loaded.overturning().value().orElseThrow()).isCloseTo(1.831, within(0.001));
    assertThat(loaded.resultantFromToeMetres().orElseThrow() / Us.FOOT)
        .isCloseTo(0.681, within(0.001));
    ContactPressure contact = loaded.contact().orThrow();
    assertThat(contact.eccentricityMetres() / Us.FOOT).isCloseTo(0.819, within(0.001));
    assertThat(contact.withinMiddleThird()).isFalse();
    assertThat(contact.largestKilopascals() / Us.PSF).isCloseTo(9403, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Own case: without the building 0.687 and the resultant beyond the toe, so that New York City Building"
          + " Code 2022, 1817.5.4.1.1 (secondary full text) wants a brace")
  void withoutTheBuilding() {
    Cases cases = PierAsRetainingWall.check(ownCase());
    Case bare = cases.withoutBuilding();
    assertThat(bare.sliding().value().orElseThrow()).isCloseTo(0.687, within(0.001));
    assertThat(bare.overturning().value().orElseThrow()).isCloseTo(0.687, within(0.001));
    assertThat(bare.resultantFromToeMetres().orElseThrow()).isNegative();
    assertThat(bare.contact().reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("overturns"));
    double anyBearing = 1e6;
    assertThat(cases.withBuilding().isSatisfactory(1.5, anyBearing)).isTrue();
    assertThat(cases.standsUnbraced(anyBearing)).isFalse();
  }

  @Test
  @DisplayName(
      "Own case: a thick low pier stands in both cases; too little bearing takes that away")
  void aStoutPierStandsUnbraced() {
    Pier stout =
        new Pier(
            1,
            1,
            24,
            new VerticalForce(50, 0.5),
            VerticalForce.NONE,
            List.of(new LateralForce("soil", 3, 0.33)),
            Holding.friction(0.45));
    Cases cases = PierAsRetainingWall.check(stout);
    assertThat(cases.standsUnbraced(200)).isTrue();
    assertThat(cases.standsUnbraced(50)).isFalse();
  }

  @Test
  @DisplayName("Own case: adhesion, passive resistance and uplift enter with their signs")
  void everyTermEnters() {
    Pier pier =
        new Pier(
            2,
            1,
            25,
            VerticalForce.NONE,
            new VerticalForce(10, 0.5),
            List.of(new LateralForce("soil", 10, 0.5)),
            new Holding(0.5, 5, new LateralForce("passive", 4, 0.25)));
    Case bare = PierAsRetainingWall.check(pier).withoutBuilding();
    assertThat(bare.normalKilonewtonsPerMetre()).isCloseTo(40, within(1e-9));
    // x = (50 * 0.5 + 4 * 0.25 - 10 * 0.5 - 10 * 0.5)/40 = 0.4 m; e = 0.1 m, the whole base in
    // contact
    assertThat(bare.resultantFromToeMetres().orElseThrow()).isCloseTo(0.4, within(1e-9));
    assertThat(bare.sliding().resistance()).isCloseTo(0.5 * 40 + 5 + 4, within(1e-9));
    assertThat(bare.overturning().resistance()).isCloseTo(26, within(1e-9));
    assertThat(bare.overturning().demand()).isCloseTo(10, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: a floating pier has no contact and fails; a pier nobody pushes has no factor and holds")
  void limits() {
    Pier floating =
        new Pier(
            1,
            1,
            24,
            VerticalForce.NONE,
            new VerticalForce(30, 0.5),
            List.of(),
            Holding.friction(0.5));
    Case afloat = PierAsRetainingWall.check(floating).withoutBuilding();
    assertThat(afloat.resultantFromToeMetres()).isEmpty();
    assertThat(afloat.isSatisfactory(1.5, 1e6)).isFalse();
    Pier idle =
        new Pier(
            1, 1, 24, VerticalForce.NONE, VerticalForce.NONE, List.of(), Holding.friction(0.5));
    Case resting = PierAsRetainingWall.check(idle).withoutBuilding();
    assertThat(resting.sliding().value()).isEmpty();
    assertThat(resting.isSatisfactory(1.5, 24)).isTrue();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Pier(
                    1,
                    1,
                    24,
                    new VerticalForce(10, 1.1),
                    VerticalForce.NONE,
                    List.of(),
                    Holding.friction(0.5)));
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void moreThrustNeverHelpsAndNothingIsNaN(
      @ForAll @DoubleRange(min = 0.2, max = 10) double height,
      @ForAll @DoubleRange(min = 0.2, max = 5) double thickness,
      @ForAll @DoubleRange(min = 0, max = 1000) double building,
      @ForAll @DoubleRange(min = 0, max = 1) double place,
      @ForAll @DoubleRange(min = 0, max = 1000) double push,
      @ForAll @DoubleRange(min = 0, max = 300) double uplift) {
    Cases less = cases(height, thickness, building, place, push, uplift);
    Cases more = cases(height, thickness, building, place, push + 1, uplift);
    for (Case side : List.of(less.withBuilding(), less.withoutBuilding())) {
      assertThat(side.sliding().resistance()).isFinite().isNotNegative();
      assertThat(side.overturning().resistance()).isFinite();
      side.resultantFromToeMetres().ifPresent(x -> assertThat(x).isFinite());
      side.contact()
          .value()
          .ifPresent(
              pressure -> {
                assertThat(pressure.largestKilopascals()).isFinite().isPositive();
                double carried =
                    (pressure.largestKilopascals() + pressure.smallestKilopascals())
                        / 2
                        * pressure.contactWidthMetres();
                assertThat(carried)
                    .isCloseTo(side.normalKilonewtonsPerMetre(), withPercentage(1e-6));
              });
    }
    assertThat(more.withBuilding().sliding().value().orElseThrow())
        .isLessThanOrEqualTo(less.withBuilding().sliding().value().orElse(Double.MAX_VALUE));
    assertThat(more.withBuilding().overturning().value().orElseThrow())
        .isLessThanOrEqualTo(less.withBuilding().overturning().value().orElse(Double.MAX_VALUE));
  }

  private static Cases cases(
      double height, double thickness, double building, double place, double push, double uplift) {
    return PierAsRetainingWall.check(
        new Pier(
            height,
            thickness,
            24,
            new VerticalForce(building, place * thickness),
            new VerticalForce(uplift, thickness / 2),
            List.of(new LateralForce("soil", push, height / 3)),
            Holding.friction(0.45)));
  }
}
