package underhold.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The score of one option: within each cause the strongest finding for and the strongest against
 * count, the others are shown and do not.
 *
 * @param points points for less points against
 * @param counted the findings that count
 * @param uncounted the findings that do not
 */
record Score(int points, List<Finding> counted, List<Finding> uncounted) {

  static Score of(SupportOption option, List<Finding> findings, RulePack.Weights weights) {
    Map<String, Finding> strongest = new LinkedHashMap<>();
    List<Finding> uncounted = new ArrayList<>();
    for (Finding finding : findings) {
      if (!finding.scoresFor(option)) {
        continue;
      }
      boolean against = finding.effect() == Effect.AGAINST;
      String key = (against ? "-" : "+") + finding.rule().cause();
      Finding best = strongest.get(key);
      if (best == null || points(finding, weights) > points(best, weights)) {
        strongest.put(key, finding);
        if (best != null) {
          uncounted.add(best);
        }
      } else {
        uncounted.add(finding);
      }
    }
    int points = 0;
    for (Finding finding : strongest.values()) {
      int value = points(finding, weights);
      points += finding.effect() == Effect.AGAINST ? -value : value;
    }
    return new Score(points, List.copyOf(strongest.values()), uncounted);
  }

  private static int points(Finding finding, RulePack.Weights weights) {
    return finding.strength().map(weights::of).orElse(0);
  }
}
