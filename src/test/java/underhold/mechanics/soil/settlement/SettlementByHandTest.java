package underhold.mechanics.soil.settlement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Settlement by hand, and every limit at its edge; own cases. */
class SettlementByHandTest {
  @Test
  @DisplayName(
      "Own case: 2 m, e0 0.8, Cr 0.05, Cc 0.4, 100 kPa to 400 past 200: 2/1.8 (0.05 + 0.4) log 2")
  void consolidation_past_the_preconsolidation() {
    assertThat(metres(100, 300, 200)).isCloseTo(2 / 1.8 * 0.45 * Math.log10(2), within(1e-12));
    // just up to it only the recompression counts
    assertThat(metres(100, 100, 200)).isCloseTo(2 / 1.8 * 0.05 * Math.log10(2), within(1e-12));
    assertThat(metres(100, 0, 100)).isZero();
    assertThat(
            ConsolidationSettlement.metres(
                    new ConsolidationSettlement.Layer(2, 0.8, 0.4, 0.05, 100, 0, 99.9))
                .reason())
        .isPresent();
  }

  private static double metres(double effective, double increase, double past) {
    return ConsolidationSettlement.metres(
            new ConsolidationSettlement.Layer(2, 0.8, 0.4, 0.05, effective, increase, past))
        .orThrow();
  }

  @Test
  @DisplayName(
      "Textbook approximation (from memory), own cases: Tv at 60 % is 0.2827, held to where the"
          + " second branch passes it")
  void degree_about_sixty_per_cent() {
    double branch = Math.PI / 4 * 0.36;
    assertThat(ConsolidationTime.degree(branch)).isCloseTo(0.6, within(1e-12));
    assertThat(ConsolidationTime.degree(branch + 0.001)).isEqualTo(0.6);
    assertThat(ConsolidationTime.degree(0)).isZero();
    // Tv 0.848: 100 - U = 10^((1.781 - 0.848) / 0.933) = 10
    assertThat(ConsolidationTime.degree(0.848)).isCloseTo(0.9, within(1e-9));
    assertThat(ConsolidationTime.timeFactorAt(0.6)).isCloseTo(branch, within(1e-12));
    // 1.781 - 0.933 log10(20) = 0.5672
    assertThat(ConsolidationTime.timeFactorAt(0.8)).isCloseTo(0.56715, within(1e-4));
    assertThat(ConsolidationTime.timeFactorAt(0)).isZero();
    assertThat(ConsolidationTime.timeFactorAt(0.3)).isCloseTo(Math.PI / 4 * 0.09, within(1e-12));
    assertThat(ConsolidationTime.timeFactor(2, 3, 4)).isCloseTo(0.375, within(1e-12));
  }

  @Test
  @DisplayName(
      "Own case, Schmertmann 1978: the influence diagram of L/B 5.5, half-way between square and"
          + " strip")
  void schmertmann_influence() {
    Schmertmann1978.Influence half =
        Schmertmann1978.influence(
            new Schmertmann1978.Case(
                2, 11, 100, 20, 25, 1, List.of(new Schmertmann1978.Layer(9, 1000))));
    assertThat(half.atBase()).isCloseTo(0.15, within(1e-12));
    assertThat(half.peak()).isCloseTo(0.7, within(1e-12));
    assertThat(half.peakDepthMetres()).isCloseTo(1.5, within(1e-12));
    assertThat(half.endDepthMetres()).isCloseTo(6, within(1e-12));
    assertThat(half.at(0)).isCloseTo(0.15, within(1e-12));
    assertThat(half.at(0.75)).isCloseTo(0.425, within(1e-12));
    assertThat(half.at(1.5)).isCloseTo(0.7, within(1e-12));
    assertThat(half.at(3.75)).isCloseTo(0.35, within(1e-12));
    assertThat(half.at(5)).isCloseTo(0.7 / 4.5, within(1e-12));
    assertThat(half.at(7)).isZero();
    assertThat(Schmertmann1978.modulusKilopascals(1000, 5.5)).isCloseTo(3000, within(1e-9));
    assertThat(Schmertmann1978.modulusKilopascals(1000, 10)).isCloseTo(3500, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case, Schmertmann 1978: square 2 m on two layers, at 0.1 year and at the end of the"
          + " influence")
  void schmertmann_two_layers() {
    // peak 0.7 at 1 m, end 4 m. Upper 2 m of 5,000 kPa: 0.4 + (0.7 + 0.4667)/2 = 0.98333 m;
    // lower 2 m of 20,000: 0.46667 m. C1 = 0.9, C2 = 1.
    double sum = 0.983333333333 / 5000 + 0.466666666667 / 20_000;
    assertThat(two(0.1, 2).orThrow()).isCloseTo(0.9 * 100 * sum, within(1e-9));
    assertThat(two(1, 2).orThrow()).isCloseTo(1.2 * 0.9 * 100 * sum, within(1e-9));
    assertThat(two(0.0999, 2).reason()).contains("the creep factor starts at 0.1 year");
    assertThat(two(1, 1.999).reason().orElseThrow())
        .isEqualTo("the layers end at 3.999 m, the influence reaches 4.0 m below the base");
  }

  private static underhold.mechanics.soil.Outcome<Double> two(double years, double lower) {
    return Schmertmann1978.settlementMetres(
        new Schmertmann1978.Case(
            2,
            2,
            100,
            20,
            25,
            years,
            List.of(new Schmertmann1978.Layer(2, 5000), new Schmertmann1978.Layer(lower, 20_000))));
  }

  @Test
  @DisplayName(
      "Own case, Steinbrenner: Is = F1 + (1 - 2v)/(1 - v) F2; S = q B' (1 - v2)/E Is If, four"
          + " corners at the centre")
  void steinbrenner_by_hand() {
    SteinbrennerSettlement.Influence influence = new SteinbrennerSettlement.Influence(0.5, 0.2);
    assertThat(influence.combined(0)).isCloseTo(0.7, within(1e-12));
    assertThat(influence.combined(0.2)).isCloseTo(0.5 + 0.75 * 0.2, within(1e-12));
    assertThat(influence.combined(0.5)).isCloseTo(0.5, within(1e-12));
    // L/B 2, layer 10 half-widths: F1 0.6406, F2 0.0311 (checked elsewhere); v 0.2: 0.66393
    SteinbrennerSettlement.Case footing =
        new SteinbrennerSettlement.Case(100, 3, 6, 15, 20_000, 0.2, 0.8);
    double is = 0.6406 + 0.75 * 0.0311;
    assertThat(SteinbrennerSettlement.centreMetres(footing))
        .isCloseTo(4 * 100 * 1.5 * 0.96 / 20_000 * is * 0.8, within(2e-6));
    // corner: layer 5 widths deep
    SteinbrennerSettlement.Influence corner = SteinbrennerSettlement.influence(2, 5);
    assertThat(SteinbrennerSettlement.cornerMetres(footing))
        .isCloseTo(
            100 * 3 * 0.96 / 20_000 * (corner.first() + 0.75 * corner.second()) * 0.8,
            within(1e-12));
  }
}
