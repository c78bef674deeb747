package underhold.mechanics.soil.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.soil.Us;

class EarthPressureTest {

  @ParameterizedTest(
      name =
          "B. M. Das, table 6.4 of Coulomb Ka, vertical wall (secondary, edition not recorded):"
              + " f {0}, d {1} has {2}")
  @CsvSource({"28, 0, 0.3610", "30, 5, 0.3189", "32, 10, 0.2853"})
  void coulombActiveAgreesWithATable(double friction, double wall, double printed) {
    // Printed to four decimals.
    assertThat(CoulombPressure.active(CoulombPressure.Wall.vertical(friction, wall, 0)).orThrow())
        .isCloseTo(printed, within(1e-4));
  }

  @ParameterizedTest(
      name =
          "Published Coulomb Kp (secondary, from an open test suite drawing on the textbooks): f {0}, d"
              + " {1}, ground slope {2} has {3}")
  @CsvSource({"26, 0, 0, 2.561", "30, 22, 0, 6.675", "32, 17, 10, 10.492", "40, 16, -10, 5.335"})
  void coulombPassiveAgreesWithPublishedValues(
      double friction, double wall, double slope, double printed) {
    // Printed to three decimals.
    assertThat(
            CoulombPressure.passive(CoulombPressure.Wall.vertical(friction, wall, slope)).orThrow())
        .isCloseTo(printed, within(1e-3));
  }

  @Test
  @DisplayName(
      "Rankine with a tension crack: inputs of a textbook example (secondary, number 13.18); results"
          + " recomputed here from Rankine's formulas, not printed values")
  void rankineWithTensionCrack() {
    RankinePressure.Active active =
        RankinePressure.active(new RankinePressure.Backfill(4, 15, 26, 8, 10));
    // Tolerance 0.5 %: hand arithmetic to three or four figures.
    assertThat(active.coefficient()).isCloseTo(0.3905, withPercentage(0.5));
    assertThat(active.topKilopascals()).isCloseTo(-6.09, withPercentage(0.5));
    assertThat(active.baseKilopascals()).isCloseTo(17.33, withPercentage(0.5));
    assertThat(active.tensionCrackMetres()).isCloseTo(1.040, withPercentage(0.5));
    assertThat(active.thrust().forceKilonewtonsPerMetre()).isCloseTo(25.65, withPercentage(0.5));
    assertThat(active.thrust().heightAboveBaseMetres())
        .isCloseTo((4 - 1.040) / 3, withPercentage(0.5));
  }

  @Test
  @DisplayName(
      "B. M. Das, Principles of Foundation Engineering, 7th edition, Example 10.2 (secondary): Peck's sand"
          + " envelope 26.95 kPa")
  void peckSandEnvelope() {
    // Tolerance 0.1 %: four printed figures.
    assertThat(PeckSandEnvelope.kilopascals(17, 9, 35)).isCloseTo(26.95, withPercentage(0.1));
  }

  @Test
  @DisplayName(
      "Caltrans, Trenching and Shoring Manual, 5-1.01 (secondary digest): 2 ft of 109 pcf at Ka 0.33 press"
          + " with 72 psf")
  void minimumConstructionSurcharge() {
    double pressure =
        TriangularThrust.uniformSurchargeKilopascals(0.33, 109 * Us.PCF * 2 * Us.FOOT) / Us.PSF;
    // Tolerance 1 psf: the manual rounds 71.9 to 72.
    assertThat(pressure).isCloseTo(72, within(1.0));
  }

  @Test
  @DisplayName(
      "Rankine is Coulomb for a smooth vertical wall and level ground (identity of the two theories)")
  void rankineIsCoulombWithoutWallFriction() {
    for (double friction = 1; friction <= 45; friction += 4) {
      CoulombPressure.Wall wall = CoulombPressure.Wall.vertical(friction, 0, 0);
      assertThat(CoulombPressure.active(wall).orThrow())
          .isCloseTo(RankinePressure.activeCoefficient(friction), withPercentage(1e-9));
      assertThat(CoulombPressure.passive(wall).orThrow())
          .isCloseTo(RankinePressure.passiveCoefficient(friction), withPercentage(1e-6));
    }
  }

  @Test
  @DisplayName(
      "Coulomb wedge searched by trial over plane slip surfaces, leaning rough wall and sloping ground"
          + " (own case, force polygon)")
  void coulombActiveIsTheWorstPlaneWedge() {
    // Greatest thrust over trial planes at angle r: P = W sin(r - f)/cos(r - f - d - t), unit
    // weight and height 1.
    double f = Math.toRadians(34);
    double d = Math.toRadians(15);
    double b = Math.toRadians(10);
    double t = Math.toRadians(8);
    double worst = 0;
    for (double degrees = 35; degrees < 89; degrees += 0.01) {
      double r = Math.toRadians(degrees);
      double weight =
          0.5 * Math.cos(t - b) * Math.cos(r - t) / (Math.cos(t) * Math.cos(t) * Math.sin(r - b));
      worst = Math.max(worst, weight * Math.sin(r - f) / Math.cos(r - f - d - t));
    }
    double coefficient = CoulombPressure.active(new CoulombPressure.Wall(34, 15, 10, 8)).orThrow();
    // Tolerance 0.01 %: step of the search.
    assertThat(coefficient).isCloseTo(2 * worst, withPercentage(0.01));
  }

  @Test
  void coulombOutsideItsRangeSaysWhy() {
    assertThat(CoulombPressure.active(CoulombPressure.Wall.vertical(30, 10, 31)).reason())
        .isPresent();
    assertThat(CoulombPressure.passive(CoulombPressure.Wall.vertical(45, 45, 30)).reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("no plane passive wedge"));
    assertThat(CoulombPressure.passive(CoulombPressure.Wall.vertical(30, 10, -31)).reason())
        .isPresent();
    assertThatIllegalArgumentException().isThrownBy(() -> CoulombPressure.Wall.vertical(30, 31, 0));
  }

  @Test
  @DisplayName(
      "UFC 3-220-20, 4-2.1 (secondary digest): K0 = (1 - sin f) OCR^(sin f), 0.5 at 30 degrees")
  void atRest() {
    assertThat(AtRestPressure.normallyConsolidated(30)).isCloseTo(0.5, within(1e-12));
    assertThat(AtRestPressure.coefficient(30, 4).orThrow()).isCloseTo(1.0, within(1e-12));
    assertThat(AtRestPressure.coefficient(30, 1000).reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("passive"));
  }

  @Test
  @DisplayName("Own case: soil, water and surcharge on a 3 m wall")
  void triangularThrusts() {
    assertThat(TriangularThrust.soil(0.5, 20, 3)).isEqualTo(new Resultant(45, 1));
    assertThat(TriangularThrust.water(2).forceKilonewtonsPerMetre()).isCloseTo(19.62, within(1e-9));
    assertThat(TriangularThrust.waterKilopascals(-1)).isZero();
    assertThat(TriangularThrust.waterKilopascals(2)).isCloseTo(19.62, within(1e-9));
    assertThat(
            TriangularThrust.uniformSurcharge(0.5, 10, 3).momentAboutBaseKilonewtonMetresPerMetre())
        .isCloseTo(22.5, within(1e-9));
  }

  @Test
  @DisplayName(
      "AASHTO LRFD, Table C3.11.5.3-1, in the Caltrans manual, Table 4-2 (secondary digest): gravel 29-31,"
          + " stiff clay 17-19 degrees; rock 35 from memory")
  void baseFriction() {
    BaseFriction gravel = BaseFriction.find("gravel").orElseThrow();
    assertThat(gravel.lowDegrees()).isEqualTo(29);
    assertThat(gravel.highDegrees()).isEqualTo(31);
    assertThat(gravel.lowCoefficient()).isCloseTo(0.554, within(0.001));
    assertThat(BaseFriction.find("stiff-clay").orElseThrow().lowDegrees()).isEqualTo(17);
    assertThat(BaseFriction.find("sound-rock").orElseThrow().basis()).contains("from memory");
    assertThat(BaseFriction.rows())
        .hasSize(7)
        .allMatch(row -> row.lowDegrees() <= row.highDegrees());
  }

  @Test
  @DisplayName(
      "International Building Code (2021 family), Table 1610.1 (secondary excerpt): GM 40 active, 60 at"
          + " rest; CL 60 and 100 from memory")
  void equivalentFluid() {
    EquivalentFluid gravel = EquivalentFluid.find("GM").orElseThrow();
    assertThat(gravel.activeKilopascalsPerMetre()).isCloseTo(40 * Us.PCF, within(1e-9));
    assertThat(gravel.atRestKilopascalsPerMetre()).isCloseTo(60 * Us.PCF, within(1e-9));
    assertThat(EquivalentFluid.find("CL").orElseThrow().basis()).contains("from memory");
    assertThat(EquivalentFluid.rows())
        .allMatch(row -> row.activeKilopascalsPerMetre() < row.atRestKilopascalsPerMetre());
  }

  @ParameterizedTest(
      name =
          "AASHTO LRFD, Table C3.11.5.3-1, in the Caltrans manual (secondary; rock from memory): {0}: {1} to {2} degrees")
  @CsvSource({
    "sound-rock, 35, 35",
    "gravel, 29, 31",
    "medium-sand, 24, 29",
    "fine-sand, 19, 24",
    "sandy-silt, 17, 19",
    "hard-clay, 22, 26",
    "stiff-clay, 17, 19"
  })
  void everyRowOfBaseFriction(String id, double low, double high) {
    BaseFriction row = BaseFriction.find(id).orElseThrow();
    assertThat(row.lowDegrees()).isEqualTo(low);
    assertThat(row.highDegrees()).isEqualTo(high);
  }

  @ParameterizedTest(
      name =
          "International Building Code (2021 family), Table 1610.1: {0}: {1} and {2} psf per ft, {3}")
  @CsvSource({
    "GW, 30, 60, cited",
    "GP, 30, 60, cited",
    "SW, 30, 60, cited",
    "GM, 40, 60, cited",
    "GC, 45, 60, cited",
    "SP, 30, 60, from memory",
    "SM, 45, 60, from memory",
    "SM-SC, 45, 100, from memory",
    "SC, 60, 100, from memory",
    "ML, 45, 100, from memory",
    "ML-CL, 60, 100, from memory",
    "CL, 60, 100, from memory"
  })
  void everyRowOfEquivalentFluid(String id, double active, double atRest, String basis) {
    EquivalentFluid row = EquivalentFluid.find(id).orElseThrow();
    assertThat(row.activeKilopascalsPerMetre() / Us.PCF).isCloseTo(active, within(1e-6));
    assertThat(row.atRestKilopascalsPerMetre() / Us.PCF).isCloseTo(atRest, within(1e-6));
    assertThat(row.basis()).startsWith(basis);
  }
}
