package underhold.consult.scheme;

import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.PairOrder;

/**
 * What a rule between zones states of two zones in that order.
 *
 * @param first the zone that its facts call first
 * @param second the zone that its facts call second
 * @param finding the rule with the facts and limits it matched
 */
public record PairFinding(String first, String second, Finding finding) {

  /** The reason, with the names of the zones. */
  public String reason() {
    return named(finding.reason());
  }

  private String named(String text) {
    return text.replace("[first]", first).replace("[second]", second);
  }

  /** The id of its rule. */
  public String id() {
    return finding.rule().id();
  }

  public Effect effect() {
    return finding.effect();
  }

  /** The order it asks for, if it asks for one. */
  public Optional<PairOrder> order() {
    return order(finding.rule());
  }

  static Optional<PairOrder> order(underhold.advice.Rule rule) {
    return rule.effect() == Effect.REQUIRE
        ? Optional.ofNullable(rule.action().value()).flatMap(PairOrder::find)
        : Optional.empty();
  }
}
