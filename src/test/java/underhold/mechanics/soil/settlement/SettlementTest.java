package underhold.mechanics.soil.settlement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SettlementTest {

  @Test
  @DisplayName(
      "Published one-dimensional settlement (secondary, from an open test suite drawing on M. Budhu's"
          + " textbooks): normally consolidated 0.045 m, overconsolidated 0.031 m")
  void oneDimensionalSettlement() {
    // Tolerance 2 %: printed to two figures.
    assertThat(
            ConsolidationSettlement.metres(
                    new ConsolidationSettlement.Layer(1, 1, 0.3, 0.03, 100, 100, 100))
                .orThrow())
        .isCloseTo(0.045, withPercentage(2));
    assertThat(
            ConsolidationSettlement.metres(
                    new ConsolidationSettlement.Layer(1, 1, 0.3, 0.03, 100, 200, 200))
                .orThrow())
        .isCloseTo(0.031, withPercentage(2));
  }

  @Test
  void anUnderconsolidatedLayerIsOutOfRange() {
    assertThat(
            ConsolidationSettlement.metres(
                    new ConsolidationSettlement.Layer(1, 1, 0.3, 0.03, 100, 0, 90))
                .reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("still consolidating"));
  }

  @Test
  @DisplayName(
      "Published degree of consolidation (secondary, from an open test suite drawing on M. Budhu's"
          + " textbooks): 40.2 % after 10,000 s with cv 100 m2/year and a path of 0.5 m")
  void degreeOfConsolidation() {
    double years = 1e4 / (365.25 * 86_400);
    double degree = ConsolidationTime.degree(ConsolidationTime.timeFactor(100, years, 0.5));
    // Tolerance 0.1 %-point: printed to one decimal; 365 or 365.25 days make no difference there.
    assertThat(100 * degree).isCloseTo(40.2, within(0.1));
  }

  @Test
  @DisplayName("Textbook time factors (from memory): Tv 0.197 at 50 %, 0.848 at 90 %")
  void timeFactors() {
    // Tolerance 0.001: printed to three decimals; the parabola gives 0.1963.
    assertThat(ConsolidationTime.timeFactorAt(0.5)).isCloseTo(0.197, within(0.001));
    assertThat(ConsolidationTime.timeFactorAt(0.9)).isCloseTo(0.848, within(0.001));
  }

  @Test
  @DisplayName(
      "K. Terzaghi's exact series for uniform initial pressure, summed here: within 1 %-point")
  void degreeAgreesWithTheSeries() {
    for (double tv = 0.005; tv < 2; tv += 0.005) {
      double left = 0;
      for (int term = 0; term < 200; term++) {
        double m = Math.PI / 2 * (2 * term + 1);
        left += 2 / (m * m) * Math.exp(-m * m * tv);
      }
      assertThat(ConsolidationTime.degree(tv)).isCloseTo(1 - left, within(0.01));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> ConsolidationTime.degree(-1));
  }

  @Test
  @DisplayName(
      "W. Steinbrenner's factors for L/B 2, layer 10 half-widths: F1 0.6406, F2 0.0311 (own evaluation of"
          + " the formula, not printed)")
  void steinbrennerFactors() {
    SteinbrennerSettlement.Influence influence = SteinbrennerSettlement.influence(2, 10);
    assertThat(influence.first()).isCloseTo(0.6406, within(1e-4));
    assertThat(influence.second()).isCloseTo(0.0311, within(1e-4));
  }

  @Test
  @DisplayName(
      "Elastic half-space, flexible square (textbook value, from memory): centre 1.12, corner 0.56 times"
          + " q B (1 - v^2)/E")
  void steinbrennerOnADeepLayerIsTheHalfSpace() {
    SteinbrennerSettlement.Case square =
        new SteinbrennerSettlement.Case(100, 2, 2, 1e5, 20_000, 0.3, 1);
    double unit = 100 * 2 * (1 - 0.09) / 20_000;
    // Tolerance 0.5 %: the textbook prints two decimals.
    assertThat(SteinbrennerSettlement.centreMetres(square) / unit)
        .isCloseTo(1.12, withPercentage(0.5));
    assertThat(SteinbrennerSettlement.cornerMetres(square) / unit)
        .isCloseTo(0.56, withPercentage(0.5));
    assertThat(SteinbrennerSettlement.rigidMetres(square))
        .isCloseTo(0.93 * SteinbrennerSettlement.centreMetres(square), within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case: Schmertmann 1978, square and strip on uniform sand, area under the diagram by hand")
  void schmertmannOnUniformSand() {
    // Square 2 m: peak 0.5 + 0.1 sqrt(100/25) = 0.7 at 1 m; area (0.1 + 0.7)/2 + 0.7 * 3/2 = 1.45
    // m.
    // C1 = 1 - 0.5 * 20/100 = 0.9; C2 at 10 years = 1.4; S = 0.9 * 1.4 * 100 * 1.45/10,000 =
    // 0.01827 m.
    assertThat(settlement(2, 2, 100, 20, 25, 10, 10)).isCloseTo(0.01827, within(1e-9));
    // Strip 1 m: peak 0.7 at 1 m, end 4 m; area (0.2 + 0.7)/2 + 0.7 * 3/2 = 1.5 m; S = 0.0189 m.
    assertThat(settlement(1, 10, 100, 20, 25, 10, 10)).isCloseTo(0.0189, within(1e-9));
    assertThat(Schmertmann1978.modulusKilopascals(1000, 1)).isEqualTo(2500);
    assertThat(Schmertmann1978.modulusKilopascals(1000, 25)).isEqualTo(3500);
  }

  @Test
  @DisplayName("Own case: cutting a uniform layer into slices changes nothing; C1 ends at 0.5")
  void schmertmannSlicesAndEmbedment() {
    List<Schmertmann1978.Layer> slices =
        Collections.nCopies(40, new Schmertmann1978.Layer(0.1, 10_000));
    assertThat(
            Schmertmann1978.settlementMetres(
                    new Schmertmann1978.Case(2, 2, 100, 20, 25, 10, slices))
                .orThrow())
        .isCloseTo(0.01827, within(1e-9));
    assertThat(settlement(2, 2, 100, 500, 25, 10, 10)).isCloseTo(0.01827 * 0.5 / 0.9, within(1e-9));
    assertThat(settlement(2, 2, 0, 20, 25, 10, 10)).isZero();
  }

  private static double settlement(
      double width,
      double length,
      double pressure,
      double overburden,
      double atPeak,
      double years,
      double depth) {
    return Schmertmann1978.settlementMetres(
            new Schmertmann1978.Case(
                width,
                length,
                pressure,
                overburden,
                atPeak,
                years,
                List.of(new Schmertmann1978.Layer(depth, 10_000))))
        .orThrow();
  }

  @Test
  void schmertmannOutsideItsRangeSaysWhy() {
    List<Schmertmann1978.Layer> shallow = List.of(new Schmertmann1978.Layer(3.9, 10_000));
    assertThat(
            Schmertmann1978.settlementMetres(
                    new Schmertmann1978.Case(2, 2, 100, 20, 25, 10, shallow))
                .reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("the layers end"));
    assertThat(
            Schmertmann1978.settlementMetres(
                    new Schmertmann1978.Case(2, 2, 100, 20, 25, 0.05, shallow))
                .reason())
        .hasValueSatisfying(reason -> assertThat(reason).contains("0.1 year"));
  }
}
