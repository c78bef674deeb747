package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.Strength;

/**
 * What the rules say of two zones with a method tried for each, both ways round.
 *
 * @param findings what is known to hold
 * @param open what waits for an answer
 * @param points points for less points against; one cause counts once each way
 * @param ruledOut whether the two methods cannot stand beside each other
 */
record PairVerdict(
    List<PairFinding> findings, List<OpenPairRule> open, int points, boolean ruledOut) {
  static final PairVerdict NOTHING = new PairVerdict(List.of(), List.of(), 0, false);

  PairVerdict {
    findings = List.copyOf(findings);
    open = List.copyOf(open);
  }

  static PairVerdict of(List<PairFinding> found, List<OpenPairRule> open, RulePack pack) {
    List<PairFinding> findings = once(found);
    Map<String, Integer> most = new HashMap<>();
    boolean out = false;
    for (PairFinding finding : findings) {
      Rule rule = finding.finding().rule();
      Strength strength = rule.action().strength();
      out |= rule.effect() == Effect.RULE_OUT;
      if (rule.effect().scores() && strength != null) {
        most.merge(rule.effect() + rule.cause(), pack.weights().of(strength), Math::max);
      }
    }
    int points = 0;
    for (Map.Entry<String, Integer> cause : most.entrySet()) {
      boolean against = cause.getKey().startsWith(Effect.AGAINST.name());
      points += against ? -cause.getValue() : cause.getValue();
    }
    return new PairVerdict(findings, open, points, out);
  }

  /** A rule that reads the same both ways round speaks once; an order has a direction. */
  private static List<PairFinding> once(List<PairFinding> found) {
    List<PairFinding> kept = new ArrayList<>();
    for (PairFinding finding : found) {
      boolean directed =
          finding
              .order()
              .filter(o -> o != underhold.advice.PairOrder.NOT_OPEN_TOGETHER)
              .isPresent();
      boolean said = kept.stream().anyMatch(other -> other.id().equals(finding.id()));
      if (directed || !said) {
        kept.add(finding);
      }
    }
    return kept;
  }
}
