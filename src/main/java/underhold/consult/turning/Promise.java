package underhold.consult.turning;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import underhold.advice.Condition;
import underhold.advice.Effect;
import underhold.advice.OptionRules;
import underhold.advice.Points;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.advice.Truth;
import underhold.consult.trial.Outcome;
import underhold.site.FactView;
import underhold.site.ZoneViews;

/**
 * How far changes could bring an option towards a goal at the very best: every rule that a change
 * makes fire or cease counts in full, as does every rule that two changes together make fire.
 */
final class Promise {
  /**
   * As good as any gap: the leader is ruled out, or a fact becomes known that no rule foretells.
   */
  private static final double ALL = 1000;

  /** Facts that follow by calculation from two others. */
  private static final List<String> CALCULATED =
      List.of("excavationBelowFooting", "headAboveExcavation", "headAbovePitBase");

  private final Trying trying;
  private final Goal goal;
  private final Points points;
  private final double gap;
  private final BitSet blocks;
  private final List<Rule> joint = new ArrayList<>();

  Promise(Trying trying, Goal goal) {
    this.trying = trying;
    this.goal = goal;
    Outcome base = trying.base();
    this.points = Points.of(trying.rules().pack().weights());
    double own = base.of(goal.option()).score();
    double best = base.leader().map(leader -> base.of(leader).score()).orElse(0.0);
    this.gap = goal.first() ? best - own : 0;
    this.blocks = blocks(base);
    for (Rule rule : trying.rules().pack().rules()) {
      boolean counts = helps(rule, true) > 0 || rule.phase() == Rule.Phase.DERIVE;
      if (counts && rule.conditions().size() > 1 && rule.holds(base.view()) != Truth.TRUE) {
        joint.add(rule);
      }
    }
  }

  /**
   * What one change promises.
   *
   * @param single the change
   * @param gain the most points it could bring by itself
   * @param blocks the rules that still rule out or hold the option
   * @param met for each rule that needs several conditions, which of them hold, one after the other
   * @param moves whether it does anything that could matter
   */
  record Part(Single single, double gain, BitSet blocks, BitSet met, boolean moves) {
    String name() {
      return single.name();
    }

    /** Changes of one fact that do the same to the goal. */
    Object kind() {
      return List.of(gain, blocks, met, single.outcome().fired(), single.outcome().holding());
    }
  }

  Part part(Single single) {
    Outcome outcome = single.outcome();
    double gain = 0;
    BitSet flipped = (BitSet) outcome.fired().clone();
    flipped.xor(trying.base().fired());
    for (int i = flipped.nextSetBit(0); i >= 0; i = flipped.nextSetBit(i + 1)) {
      gain += Math.max(0, helps(trying.rules().rule(i), outcome.fired().get(i)));
    }
    BitSet met = met(outcome.view());
    BitSet still = blocks(outcome);
    still.and(blocks);
    BitSet more = (BitSet) met.clone();
    more.andNot(met(trying.base().view()));
    boolean moves = gain > 0 || still.cardinality() < blocks.cardinality() || !more.isEmpty();
    return new Part(single, gain, still, met, moves);
  }

  /** Whether the change lifts something that rules out or holds the option. */
  boolean unblocks(Part part) {
    return part.blocks.cardinality() < blocks.cardinality();
  }

  boolean mayReach(Part one, Part other) {
    return mayReach(List.of(one, other));
  }

  boolean mayReach(List<Part> parts) {
    BitSet left = (BitSet) blocks.clone();
    double gain = 0;
    BitSet met = new BitSet();
    for (Part part : parts) {
      left.and(part.blocks);
      gain += part.gain;
      met.or(part.met);
    }
    if (!left.isEmpty()) {
      return false;
    }
    return !goal.first() || gain + together(parts, met) >= gap || source(parts);
  }

  /** The points of the rules that the changes make fire only together. */
  private double together(List<Part> parts, BitSet met) {
    double gain = 0;
    int at = 0;
    for (Rule rule : joint) {
      int end = at + rule.conditions().size();
      if (met.nextClearBit(at) >= end) {
        int from = at;
        boolean alone = parts.stream().anyMatch(p -> p.met.nextClearBit(from) >= end);
        if (!alone) {
          gain += rule.phase() == Rule.Phase.DERIVE ? ALL : helps(rule, true);
        }
      }
      at = end;
    }
    return gain;
  }

  /** Whether a fact may follow by calculation from two of the facts together. */
  private static boolean source(List<Part> parts) {
    List<String> names = parts.stream().map(Part::name).toList();
    return CALCULATED.stream()
        .anyMatch(target -> names.stream().filter(ZoneViews.sources(target)::contains).count() > 1);
  }

  private BitSet met(FactView view) {
    BitSet met = new BitSet();
    int at = 0;
    for (Rule rule : joint) {
      for (Condition condition : rule.conditions()) {
        met.set(at++, condition.holds(view) == Truth.TRUE);
      }
    }
    return met;
  }

  private BitSet blocks(Outcome outcome) {
    OptionRules about = trying.rules().of(goal.option());
    BitSet blocking = about.ruleOuts(outcome.fired());
    if (goal.first()) {
      blocking.or(about.holders(outcome.holding()));
    }
    return blocking;
  }

  /** The points by which a rule helps if it fires, or ceases to: less than nothing if it harms. */
  private double helps(Rule rule, boolean fires) {
    double help = 0;
    if (rule.concerns(goal.option())) {
      help += worth(rule);
    }
    SupportOption leader = trying.base().leader().orElse(null);
    if (leader != null && leader != goal.option() && rule.concerns(leader)) {
      help -= rule.effect() == Effect.RULE_OUT ? -ALL : worth(rule);
    }
    return fires ? help : -help;
  }

  private double worth(Rule rule) {
    double value = rule.action().strength() == null ? 0 : points.of(rule.action().strength());
    return switch (rule.effect()) {
      case FOR, REFER -> value;
      case AGAINST -> -value;
      case DERIVE, RULE_OUT, REQUIRE, CAUTION -> 0;
    };
  }
}
