package underhold.advice;

import java.util.List;
import java.util.Optional;

/**
 * What a rule stated of a zone.
 *
 * @param rule the rule
 * @param reason why, with the site's own numbers
 * @param source its sources in words; empty where it rests on none
 * @param facts the facts it matched
 * @param limits the limits it matched
 * @param assumed whether it rests on an assumed fact; then it warns and asks, and never scores
 */
public record Finding(
    Rule rule,
    String reason,
    String source,
    List<Matched> facts,
    List<MatchedLimit> limits,
    boolean assumed) {
  public Finding {
    facts = List.copyOf(facts);
    limits = List.copyOf(limits);
  }

  public Effect effect() {
    return rule.effect();
  }

  /** The strength, where the effect has one. */
  public Optional<Strength> strength() {
    return Optional.ofNullable(rule.action().strength());
  }

  /** Whether it counts for or against that option. */
  public boolean scoresFor(SupportOption option) {
    return !assumed && effect().scores() && rule.concerns(option);
  }
}
