package underhold.advice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the rules that fired mean for one option, by their places in the pack. */
public final class OptionRules {
  private final BitSet ruleOuts = new BitSet();
  private final BitSet holders = new BitSet();
  private final BitSet speakers = new BitSet();
  private final List<Cause> causes;

  /** Rules of one cause that speak one way: the strongest that fired counts. */
  private record Cause(boolean against, int[] places, Strength[] strengths) {}

  OptionRules(SupportOption option, List<Rule> rules) {
    Map<String, List<Integer>> byCause = new LinkedHashMap<>();
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.get(i);
      if (!rule.concerns(option)) {
        continue;
      }
      if (rule.hold() != Rule.Hold.NEVER && rule.action().options().contains(option)) {
        holders.set(i);
      }
      switch (rule.effect()) {
        case RULE_OUT -> ruleOuts.set(i);
        case FOR, REFER -> {
          speakers.set(i);
          byCause.computeIfAbsent('+' + rule.cause(), key -> new ArrayList<>()).add(i);
        }
        case AGAINST -> byCause.computeIfAbsent('-' + rule.cause(), k -> new ArrayList<>()).add(i);
        case DERIVE, REQUIRE, CAUTION -> {}
      }
    }
    this.causes =
        byCause.entrySet().stream()
            .map(
                entry ->
                    new Cause(
                        entry.getKey().charAt(0) == '-',
                        entry.getValue().stream().mapToInt(Integer::intValue).toArray(),
                        entry.getValue().stream()
                            .map(place -> rules.get(place).action().strength())
                            .toArray(Strength[]::new)))
            .toList();
  }

  /** Whether a rule that fired rules it out. */
  public boolean ruledOut(BitSet fired) {
    return ruleOuts.intersects(fired);
  }

  /** Those of the rules that fired that rule it out. */
  public BitSet ruleOuts(BitSet fired) {
    BitSet both = (BitSet) ruleOuts.clone();
    both.and(fired);
    return both;
  }

  /** Those of the open rules for which it waits. */
  public BitSet holders(BitSet holding) {
    BitSet both = (BitSet) holders.clone();
    both.and(holding);
    return both;
  }

  /** Whether it waits for a rule that is open. */
  public boolean held(BitSet holding) {
    return holders.intersects(holding);
  }

  /** Whether a rule that fired speaks for it. */
  public boolean spokenFor(BitSet fired) {
    return speakers.intersects(fired);
  }

  /** The least that its points can be once all that other rules about it may add has fired. */
  double least(BitSet fired, BitSet others, Points points) {
    BitSet all = (BitSet) fired.clone();
    all.or(others);
    return score(all, points);
  }

  /** Its points: of each cause the strongest for, less the strongest against. */
  public double score(BitSet fired, Points points) {
    double score = 0;
    for (Cause cause : causes) {
      double most = 0;
      for (int i = 0; i < cause.places.length; i++) {
        if (fired.get(cause.places[i])) {
          most = Math.max(most, points.of(cause.strengths[i]));
        }
      }
      score += cause.against ? -most : most;
    }
    return score;
  }
}
