package underhold.mechanics.soil.settlement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import underhold.quantity.Seeds;

class SettlementPropertiesTest {

  private static final double SLACK = 1 + 1e-9;

  @Property(tries = 300, seed = Seeds.BUILD)
  void elasticSettlementGrowsWithLoadAndLayerAndStartsAtZero(
      @ForAll @DoubleRange(min = 0, max = 1e5) double load,
      @ForAll @DoubleRange(min = 0.1, max = 100) double width,
      @ForAll @DoubleRange(min = 1, max = 100) double ratio,
      @ForAll @DoubleRange(min = 0.1, max = 1000) double layer,
      @ForAll @DoubleRange(min = 0, max = 0.5) double poisson) {
    double base = elastic(load, width, ratio, layer, poisson);
    assertThat(base).isFinite().isNotNegative();
    assertThat(elastic(0, width, ratio, layer, poisson)).isZero();
    assertThat(elastic(load * 2, width, ratio, layer, poisson)).isGreaterThanOrEqualTo(base);
    assertThat(elastic(load, width, ratio, layer * 2, poisson) * SLACK)
        .isGreaterThanOrEqualTo(base);
  }

  private static double elastic(
      double load, double width, double ratio, double layer, double poisson) {
    return SteinbrennerSettlement.centreMetres(
        new SteinbrennerSettlement.Case(load, width, width * ratio, layer, 1e4, poisson, 1));
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void sandSettlementGrowsWithLoadAndTime(
      @ForAll @DoubleRange(min = 0, max = 1e4) double load,
      @ForAll @DoubleRange(min = 0.1, max = 50) double width,
      @ForAll @DoubleRange(min = 1, max = 40) double ratio,
      @ForAll @DoubleRange(min = 0.1, max = 100) double years) {
    double base = sand(load, width, ratio, years);
    assertThat(base).isFinite().isNotNegative();
    assertThat(sand(load + 1, width, ratio, years)).isGreaterThanOrEqualTo(base);
    assertThat(sand(load, width, ratio, years + 1)).isGreaterThanOrEqualTo(base);
    assertThat(sand(0, width, ratio, years)).isZero();
  }

  private static double sand(double load, double width, double ratio, double years) {
    return Schmertmann1978.settlementMetres(
            new Schmertmann1978.Case(
                width,
                width * ratio,
                load,
                20,
                30,
                years,
                List.of(
                    new Schmertmann1978.Layer(width, 8000),
                    new Schmertmann1978.Layer(4 * width, 20_000))))
        .orThrow();
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void consolidationGrowsWithLoadAndTimeAndStaysBelowOne(
      @ForAll @DoubleRange(min = 0, max = 1e4) double increase,
      @ForAll @DoubleRange(min = 1, max = 1e3) double stress,
      @ForAll @DoubleRange(min = 1, max = 10) double ratio,
      @ForAll @DoubleRange(min = 0, max = 10) double timeFactor) {
    double base = clay(increase, stress, ratio);
    assertThat(base).isFinite().isNotNegative();
    assertThat(clay(0, stress, ratio)).isZero();
    assertThat(clay(increase + 1, stress, ratio)).isGreaterThanOrEqualTo(base);
    double degree = ConsolidationTime.degree(timeFactor);
    assertThat(degree).isBetween(0.0, 1.0);
    assertThat(ConsolidationTime.degree(timeFactor + 0.01)).isGreaterThanOrEqualTo(degree);
  }

  private static double clay(double increase, double stress, double ratio) {
    return ConsolidationSettlement.metres(
            new ConsolidationSettlement.Layer(3, 0.9, 0.35, 0.05, stress, increase, stress * ratio))
        .orThrow();
  }
}
