package underhold.consult.firmness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.Limit;
import underhold.advice.Points;

class PackDrawsTest {
  private static final int DRAWS = 20_000;

  private final PackDraws draws = new PackDraws(BuiltInPack.pack());

  @Test
  @DisplayName(
      "Weights keep their order and their sum, and their means are the rank-order centroid weights 0.521, 0.271, 0.146, 0.0625 of four (Barron and Barrett 1996, from memory; sums of 1/k over four); tolerance: four standard errors of 20,000 draws")
  void weights_are_uniform_over_all_ordered_ones() {
    double[] sums = new double[4];
    Random random = new Random(1);
    double whole = Points.of(BuiltInPack.pack().weights()).sum();
    for (int i = 0; i < DRAWS; i++) {
      Points points = draws.weights(random);
      assertThat(points.decisive()).isGreaterThanOrEqualTo(points.major());
      assertThat(points.major()).isGreaterThanOrEqualTo(points.moderate());
      assertThat(points.moderate()).isGreaterThanOrEqualTo(points.minor());
      assertThat(points.minor()).isNotNegative();
      assertThat(points.sum()).isCloseTo(whole, within(1e-9));
      sums[0] += points.decisive() / whole;
      sums[1] += points.major() / whole;
      sums[2] += points.moderate() / whole;
      sums[3] += points.minor() / whole;
    }
    double[] centroid = {
      (1 + 1 / 2.0 + 1 / 3.0 + 1 / 4.0) / 4,
      (1 / 2.0 + 1 / 3.0 + 1 / 4.0) / 4,
      (1 / 3.0 + 1 / 4.0) / 4,
      1 / 16.0
    };
    for (int i = 0; i < centroid.length; i++) {
      assertThat(sums[i] / DRAWS).isCloseTo(centroid[i], within(0.005));
    }
  }

  @Test
  @DisplayName(
      "Every uncertain limit is drawn within its plausible range, and both halves of it are met")
  void limits_stay_within_their_ranges() {
    assertThat(draws.uncertain()).hasSizeGreaterThan(20);
    for (Limit limit : draws.uncertain()) {
      double least = limit.plausible().get(0).si();
      double most = limit.plausible().get(1).si();
      int upper = 0;
      Random random = new Random(2);
      for (int i = 0; i < 200; i++) {
        Map<String, Double> drawn = draws.limits(random);
        Double value = drawn.get(limit.name());
        assertThat(value).as(limit.name()).isBetween(least, most);
        upper += value != null && value > (least + most) / 2 ? 1 : 0;
      }
      assertThat(upper).as(limit.name()).isBetween(50, 150);
    }
  }
}
