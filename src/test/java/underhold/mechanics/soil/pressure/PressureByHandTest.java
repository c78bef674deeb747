package underhold.mechanics.soil.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Earth and surcharge pressures by hand, and every limit at its edge; own cases. */
class PressureByHandTest {
  @Test
  @DisplayName(
      "Own case, Rankine by hand: 30 degrees, Kp 3: passive 3 x 50 + 2 x 10 x sqrt 3, active 50/3 -"
          + " 20/sqrt 3")
  void rankine_pressures() {
    assertThat(RankinePressure.activeCoefficient(30)).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(RankinePressure.passiveCoefficient(30)).isCloseTo(3, within(1e-9));
    assertThat(RankinePressure.passiveKilopascals(30, 10, 50))
        .isCloseTo(150 + 20 * Math.sqrt(3), within(1e-9));
    assertThat(RankinePressure.activeKilopascals(30, 10, 50))
        .isCloseTo(50.0 / 3 - 20 / Math.sqrt(3), within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case, Rankine by hand: 3 m of 20 kN/m3 at 30 degrees under 15 kPa: 5 to 25 kPa, 45 kN/m"
          + " at 1.167 m")
  void rankine_thrust() {
    RankinePressure.Active pressed =
        RankinePressure.active(new RankinePressure.Backfill(3, 20, 30, 0, 15));
    assertThat(pressed.topKilopascals()).isCloseTo(5, within(1e-9));
    assertThat(pressed.baseKilopascals()).isCloseTo(25, within(1e-9));
    assertThat(pressed.tensionCrackMetres()).isZero();
    assertThat(pressed.thrust().forceKilonewtonsPerMetre()).isCloseTo(45, within(1e-9));
    // 9 x (10 + 25) / 6 = 52.5 kN m
    assertThat(pressed.thrust().heightAboveBaseMetres()).isCloseTo(52.5 / 45, within(1e-9));
    // c so large that the whole height is in tension: no force, at mid-height
    RankinePressure.Active torn =
        RankinePressure.active(new RankinePressure.Backfill(3, 20, 30, 100, 0));
    assertThat(torn.thrust()).isEqualTo(new Resultant(0, 1.5));
    assertThat(torn.tensionCrackMetres()).isEqualTo(3);
  }

  @Test
  @DisplayName("Own case: at 30 degrees K0 = 0.5 OCR^0.5 reaches Kp of 3 at OCR 36")
  void at_rest_up_to_the_passive_coefficient() {
    assertThat(AtRestPressure.coefficient(30, 35.999).orThrow()).isCloseTo(3, within(1e-4));
    assertThat(AtRestPressure.coefficient(30, 36.001).reason()).isPresent();
    assertThat(AtRestPressure.coefficient(30, 1).orThrow()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case, Coulomb's formulas by hand: f 30, d 15, b 10, t 5 degrees, active and passive")
  void coulomb_with_every_angle() {
    CoulombPressure.Wall wall = new CoulombPressure.Wall(30, 15, 10, 5);
    double rise = Math.sqrt(sin(45) * sin(20) / (cos(20) * cos(5)));
    assertThat(CoulombPressure.active(wall).orThrow())
        .isCloseTo(
            cos(25) * cos(25) / (cos(5) * cos(5) * cos(20) * (1 + rise) * (1 + rise)),
            within(1e-12));
    double fall = Math.sqrt(sin(45) * sin(40) / (cos(10) * cos(5)));
    assertThat(CoulombPressure.passive(wall).orThrow())
        .isCloseTo(
            cos(35) * cos(35) / (cos(5) * cos(5) * cos(10) * (1 - fall) * (1 - fall)),
            within(1e-9));
  }

  private static double sin(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  @Test
  void coulomb_at_the_ends_of_its_range() {
    // ground as steep as it can stand: the wedge formula without its root
    double steep = CoulombPressure.active(CoulombPressure.Wall.vertical(30, 0, 30)).orThrow();
    assertThat(steep).isCloseTo(0.75, within(1e-6)); // cos^2 30
    assertThat(CoulombPressure.active(CoulombPressure.Wall.vertical(30, 0, 30.01)).reason())
        .contains("the ground slope is above the angle of shearing resistance");
    // d 60 and t 30 degrees add to a right angle: the limit cos 30 / (sin 120 sin 60)
    assertThat(CoulombPressure.active(new CoulombPressure.Wall(60, 60, 0, 30)).orThrow())
        .isCloseTo(cos(30) / (sin(120) * sin(60)), within(1e-6));
    assertThat(CoulombPressure.passive(new CoulombPressure.Wall(60, 60, 0, -30)).reason())
        .contains("wall friction and ground slope leave no plane passive wedge");
    // ground falling as steeply as f: sin(f + b) is 0, the bracket 1: cos^2 f
    assertThat(CoulombPressure.passive(CoulombPressure.Wall.vertical(30, 0, -30)).orThrow())
        .isCloseTo(0.75, within(1e-6));
    assertThat(CoulombPressure.passive(CoulombPressure.Wall.vertical(30, 0, -30.01)).reason())
        .contains("the ground falls away more steeply than it can stand");
  }

  @Test
  @DisplayName(
      "Caltrans 5-1-3 (secondary digest), own cases: line load at m = 0.4 takes the near form,"
          + " above it the far one")
  void line_load_on_both_sides_of_its_limit() {
    // H 5, x 2: m = 0.4; n = 0.4: (100/5) 0.2 x 0.4 / (0.32)^2 = 15.625
    assertThat(new LineSurcharge(100, 2).atDepthKilopascals(2, 5)).isCloseTo(15.625, within(1e-9));
    assertThat(new LineSurcharge(100, 1).atDepthKilopascals(2, 5)).isCloseTo(15.625, within(1e-9));
    // x 2.5: m = 0.5: (100/5) 1.28 x 0.25 x 0.4 / (0.41)^2 = 15.229
    assertThat(new LineSurcharge(100, 2.5).atDepthKilopascals(2, 5))
        .isCloseTo(20 * 1.28 * 0.25 * 0.4 / (0.41 * 0.41), within(1e-9));
    assertThat(new LineSurcharge(100, 2.5).atDepthKilopascals(0, 5)).isZero();
    assertThat(new LineSurcharge(100, 2.5).thrust(5).forceKilonewtonsPerMetre())
        .isCloseTo(64 / 1.25, within(1e-9)); // 0.64 Q / (m^2 + 1)
    assertThat(new LineSurcharge(100, 1).thrust(5).forceKilonewtonsPerMetre())
        .isCloseTo(0.2 * 100 / (2 * 0.16 * 1.16), within(1e-9));
  }

  @Test
  @DisplayName("Caltrans 5-1-5 (secondary digest), own cases: point load at m = 0.4 and above")
  void point_load_on_both_sides_of_its_limit() {
    // H 5, x 2, n 0.4: 0.28 (100/25) 0.16 / 0.32^3 = 5.46875
    assertThat(new PointSurcharge(100, 2).atDepthKilopascals(2, 5))
        .isCloseTo(5.46875, within(1e-9));
    assertThat(new PointSurcharge(100, 2.5).atDepthKilopascals(2, 5))
        .isCloseTo(1.77 * 4 * 0.25 * 0.16 / Math.pow(0.41, 3), within(1e-9));
    assertThat(new PointSurcharge(0, 2).peakThrust(4)).isEqualTo(new Resultant(0, 2));
    // 1.1 t passes a right angle at 81.8 degrees
    assertThat(new PointSurcharge(100, 2).atDepthKilopascals(2, 5, 81)).isPositive();
    assertThat(new PointSurcharge(100, 2).atDepthKilopascals(2, 5, 82)).isZero();
  }

  @Test
  void thrust_without_a_force_acts_at_mid_height() {
    assertThat(Resultant.fromTop(0, 0, 4)).isEqualTo(new Resultant(0, 2));
    assertThat(Resultant.fromTop(10, 10, 4)).isEqualTo(new Resultant(10, 3));
    assertThat(Resultant.fromTop(10, 90, 4)).isEqualTo(new Resultant(10, 0));
    assertThat(Resultant.fromTop(10, -1, 4)).isEqualTo(new Resultant(10, 4));
    assertThat(new Resultant(10, 3).momentAboutBaseKilonewtonMetresPerMetre()).isEqualTo(30);
    assertThat(new StripSurcharge(0, 1, 2).thrust(4)).isEqualTo(new Resultant(0, 2));
  }

  @Test
  void tables_have_rows_and_finders() {
    assertThat(EquivalentFluid.rows()).hasSizeGreaterThan(5);
    assertThat(EquivalentFluid.find("none")).isEmpty();
    assertThat(BaseFriction.find("none")).isEmpty();
    assertThat(TriangularThrust.uniformSurcharge(0.5, 10, 3)).isEqualTo(new Resultant(15, 1.5));
    assertThat(TriangularThrust.water(3).forceKilonewtonsPerMetre())
        .isCloseTo(44.145, within(1e-9)); // 9.81 x 9 / 2
    assertThat(TriangularThrust.water(3).heightAboveBaseMetres()).isEqualTo(1);
  }
}
