package underhold.consult.firmness;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import underhold.advice.Limit;
import underhold.advice.Points;
import underhold.advice.RulePack;

/** Draws weights and limits of a rule pack. */
final class PackDraws {
  private static final int STRENGTHS = 4;

  private final List<Limit> uncertain;
  private final double sum;

  PackDraws(RulePack pack) {
    this.uncertain =
        pack.limits().all().stream().filter(limit -> !limit.plausible().isEmpty()).toList();
    this.sum = Points.of(pack.weights()).sum();
  }

  /** The limits that have a plausible range. */
  List<Limit> uncertain() {
    return uncertain;
  }

  /** Each limit somewhere in its plausible range, every place with the same chance. */
  Map<String, Double> limits(Random random) {
    Map<String, Double> drawn = new LinkedHashMap<>();
    for (Limit limit : uncertain) {
      double least = limit.plausible().get(0).si();
      double most = limit.plausible().get(1).si();
      drawn.put(limit.name(), least + random.nextDouble() * (most - least));
    }
    return drawn;
  }

  /**
   * Weights of which nothing is known but that decisive counts at least as much as major, major as
   * moderate and moderate as minor: uniform over all such weights of the pack's sum.
   */
  Points weights(Random random) {
    double[] parts = new double[STRENGTHS];
    for (int i = 0; i < STRENGTHS; i++) {
      parts[i] = -Math.log(1 - random.nextDouble()); // spacings of a uniform simplex
    }
    Arrays.sort(parts);
    double scale = sum / Arrays.stream(parts).sum();
    return new Points(parts[3] * scale, parts[2] * scale, parts[1] * scale, parts[0] * scale);
  }
}
