package underhold.mechanics.soil.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bearing factors against printed tables. */
class BearingFactorsTest {

  /** Printed to two decimals: half a unit of the last place. */
  private static final double ROUNDING = 0.0051;

  @ParameterizedTest(
      name =
          "Guia de Cimentaciones, 2002, p. 101 (secondary): angle {0} has Nc {1}, Nq {2}, N-gamma {3}")
  @CsvSource({
    "20, 14.83, 6.40, 3.93",
    "25, 20.72, 10.66, 9.01",
    "28, 25.80, 14.72, 14.59",
    "30, 30.14, 18.40, 20.09",
    "32, 35.49, 23.18, 27.72",
    "34, 42.16, 29.44, 38.37",
    "35, 46.12, 33.30, 45.23",
    "36, 50.59, 37.75, 53.40",
    "38, 61.35, 48.93, 74.90",
    "40, 75.31, 64.20, 106.05",
    "42, 93.71, 85.37, 151.94",
    "45, 133.87, 134.87, 267.75"
  })
  void eurocodeFactorsAgreeWithAPublishedTable(double angle, double nc, double nq, double weight) {
    BearingFactors factors = EurocodeBearing.factors(angle);
    assertThat(factors.cohesion()).isCloseTo(nc, within(ROUNDING));
    assertThat(factors.surcharge()).isCloseTo(nq, within(ROUNDING));
    assertThat(factors.weight()).isCloseTo(weight, within(ROUNDING));
  }

  @ParameterizedTest(
      name =
          "Own case, formulas of EN 1997-1 Annex D.4 below the published table: angle {0} has Nc {1}, Nq {2}, N-gamma {3}")
  @CsvSource({
    "0, 5.14, 1.00, 0",
    "5, 6.49, 1.57, 0.10",
    "10, 8.34, 2.47, 0.52",
    "15, 10.98, 3.94, 1.58"
  })
  void eurocodeFactorsAtSmallAngles(double angle, double nc, double nq, double weight) {
    eurocodeFactorsAgreeWithAPublishedTable(angle, nc, nq, weight);
  }

  @ParameterizedTest(
      name =
          "Textbook tables, from memory: angle {0} has N-gamma Hansen {1}, Meyerhof {2}, Vesic {3}")
  @CsvSource({
    "0, 0, 0, 0",
    "5, 0.07, 0.07, 0.45",
    "10, 0.39, 0.37, 1.22",
    "15, 1.18, 1.13, 2.65",
    "20, 2.95, 2.87, 5.39",
    "25, 6.76, 6.77, 10.88",
    "28, 10.94, 11.19, 16.72",
    "30, 15.07, 15.67, 22.40",
    "32, 20.79, 22.02, 30.21",
    "34, 28.77, 31.15, 41.06",
    "35, 33.92, 37.15, 48.03",
    "36, 40.05, 44.43, 56.31",
    "38, 56.17, 64.07, 78.02",
    "40, 79.54, 93.69, 109.41",
    "42, 113.96, 139.32, 155.54",
    "45, 200.81, 262.74, 271.75"
  })
  void weightFactorsOfTheAuthorsDiffer(double angle, double hansen, double meyerhof, double vesic) {
    assertThat(HansenBearing.factors(angle).weight()).isCloseTo(hansen, within(ROUNDING));
    assertThat(MeyerhofBearing.factors(angle).weight()).isCloseTo(meyerhof, within(ROUNDING));
    assertThat(VesicBearing.factors(angle).weight()).isCloseTo(vesic, within(ROUNDING));
  }

  @ParameterizedTest(name = "Terzaghi's table, from memory: angle {0} has Nc {1}, Nq {2}")
  @CsvSource({
    "0, 5.70, 1.00",
    "5, 7.34, 1.64",
    "10, 9.60, 2.69",
    "15, 12.86, 4.45",
    "20, 17.69, 7.44",
    "25, 25.13, 12.72",
    "28, 31.61, 17.81",
    "30, 37.16, 22.46",
    "32, 44.04, 28.52",
    "34, 52.64, 36.50",
    "35, 57.75, 41.44",
    "36, 63.53, 47.16",
    "38, 77.50, 61.55",
    "40, 95.66, 81.27",
    "42, 119.67, 108.75",
    "45, 172.29, 173.29"
  })
  void terzaghiFactorsAgreeWithHisTable(double angle, double nc, double nq) {
    BearingFactors factors = TerzaghiBearing.factors(angle, 0);
    assertThat(factors.cohesion()).isCloseTo(nc, within(ROUNDING));
    assertThat(factors.surcharge()).isCloseTo(nq, within(ROUNDING));
  }

  @Test
  @DisplayName(
      "Terzaghi's N-gamma as printed by Das and by Bowles (from memory): 3.64 and 5.0 at 20 degrees")
  void terzaghiWeightFactorDependsOnTheAuthor() {
    assertThat(TerzaghiWeightFactor.at(20, TerzaghiWeightFactor.Author.DAS).orThrow())
        .isEqualTo(3.64);
    assertThat(TerzaghiWeightFactor.at(20, TerzaghiWeightFactor.Author.BOWLES).orThrow())
        .isEqualTo(5.0);
    assertThat(TerzaghiWeightFactor.at(25, TerzaghiWeightFactor.Author.DAS).orThrow())
        .isEqualTo(8.34);
  }

  @Test
  @DisplayName("Own case: between printed angles the lower entry is used; beyond the table none is")
  void terzaghiWeightFactorIsNeverReadOnTheUnsafeSide() {
    assertThat(TerzaghiWeightFactor.at(29.9, TerzaghiWeightFactor.Author.DAS).orThrow())
        .isEqualTo(8.34);
    assertThat(TerzaghiWeightFactor.at(41, TerzaghiWeightFactor.Author.BOWLES).reason())
        .isPresent();
  }
}
