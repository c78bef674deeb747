package underhold.mechanics.soil.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import underhold.quantity.Seeds;

class PressurePropertiesTest {

  /** Rounding of differences of nearly equal angles, relative to the load. */
  private static final double ROUNDING = 1e-9;

  @Property(tries = 500, seed = Seeds.BUILD)
  void surchargesAreFiniteNotNegativeAndActOnTheWall(
      @ForAll @DoubleRange(min = 0, max = 1e6) double load,
      @ForAll @DoubleRange(min = 0, max = 1e3) double distance,
      @ForAll @DoubleRange(min = 0.01, max = 1e3) double width,
      @ForAll @DoubleRange(min = 0.01, max = 1e3) double height,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    StripSurcharge strip = new StripSurcharge(load, distance, distance + width);
    LineSurcharge line = new LineSurcharge(load, distance);
    PointSurcharge point = new PointSurcharge(load, distance);
    double depth = share * height;
    assertThat(strip.atDepthKilopascals(depth)).isFinite().isBetween(0.0, load * (1 + ROUNDING));
    assertThat(line.atDepthKilopascals(depth, height)).isFinite().isNotNegative();
    assertThat(point.atDepthKilopascals(depth, height)).isFinite().isNotNegative();
    for (Resultant thrust :
        new Resultant[] {strip.thrust(height), line.thrust(height), point.peakThrust(height)}) {
      assertThat(thrust.forceKilonewtonsPerMetre()).isFinite().isNotNegative();
      assertThat(thrust.heightAboveBaseMetres()).isBetween(0.0, height);
    }
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void noLoadGivesNoPressure(
      @ForAll @DoubleRange(min = 0, max = 100) double distance,
      @ForAll @DoubleRange(min = 0.1, max = 30) double height) {
    assertThat(
            new StripSurcharge(0, distance, distance + 1).thrust(height).forceKilonewtonsPerMetre())
        .isZero();
    assertThat(new LineSurcharge(0, distance).thrust(height).forceKilonewtonsPerMetre()).isZero();
    assertThat(new PointSurcharge(0, distance).peakThrust(height).forceKilonewtonsPerMetre())
        .isZero();
    assertThat(
            RankinePressure.active(new RankinePressure.Backfill(height, 18, 30, 1e6, 0))
                .thrust()
                .forceKilonewtonsPerMetre())
        .isZero();
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void coefficientsAreInOrder(@ForAll @DoubleRange(min = 1, max = 60) double friction) {
    double active = RankinePressure.activeCoefficient(friction);
    double atRest = AtRestPressure.normallyConsolidated(friction);
    double passive = RankinePressure.passiveCoefficient(friction);
    assertThat(active).isPositive().isLessThan(atRest);
    assertThat(atRest).isLessThan(passive);
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void strongerSoilPressesLessAndHeavierSoilMore(
      @ForAll @DoubleRange(min = 0.1, max = 20) double height,
      @ForAll @DoubleRange(min = 10, max = 22) double weight,
      @ForAll @DoubleRange(min = 0, max = 50) double friction,
      @ForAll @DoubleRange(min = 0, max = 50) double cohesion,
      @ForAll @DoubleRange(min = 0, max = 100) double surcharge) {
    double base = thrust(height, weight, friction, cohesion, surcharge);
    assertThat(base).isFinite().isNotNegative();
    assertThat(thrust(height, weight, friction + 1, cohesion, surcharge))
        .isLessThanOrEqualTo(base + thrust(height, weight, friction, 0, surcharge) * ROUNDING);
    assertThat(thrust(height, weight, friction, cohesion + 1, surcharge)).isLessThanOrEqualTo(base);
    assertThat(thrust(height, weight + 1, friction, cohesion, surcharge))
        .isGreaterThanOrEqualTo(base);
    assertThat(thrust(height, weight, friction, cohesion, surcharge + 1))
        .isGreaterThanOrEqualTo(base);
    assertThat(thrust(height + 0.1, weight, friction, cohesion, surcharge))
        .isGreaterThanOrEqualTo(base);
  }

  private static double thrust(
      double height, double weight, double friction, double cohesion, double surcharge) {
    return RankinePressure.active(
            new RankinePressure.Backfill(height, weight, friction, cohesion, surcharge))
        .thrust()
        .forceKilonewtonsPerMetre();
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void coulombIsFiniteAndPositiveWhereItAnswers(
      @ForAll @DoubleRange(min = 1, max = 60) double friction,
      @ForAll @DoubleRange(min = 0, max = 1) double wallShare,
      @ForAll @DoubleRange(min = -45, max = 45) double slope,
      @ForAll @DoubleRange(min = -30, max = 30) double lean) {
    CoulombPressure.Wall wall =
        new CoulombPressure.Wall(friction, wallShare * friction, slope, lean);
    CoulombPressure.active(wall)
        .value()
        .ifPresent(coefficient -> assertThat(coefficient).isFinite().isNotNegative());
    CoulombPressure.passive(wall)
        .value()
        .ifPresent(coefficient -> assertThat(coefficient).isFinite().isNotNegative());
  }
}
