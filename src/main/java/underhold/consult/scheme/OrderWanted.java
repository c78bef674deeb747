package underhold.consult.scheme;

import underhold.advice.PairOrder;

/**
 * An order of work between two zones.
 *
 * @param first the zone that comes first
 * @param second the zone that waits
 * @param order what waits for what
 * @param ruleId the rule that asks for it
 * @param assumed whether it is kept only because nobody stated what would free it
 */
public record OrderWanted(
    String first, String second, PairOrder order, String ruleId, boolean assumed) {

  /** In words. */
  public String sentence() {
    return order.sentence(first, second);
  }
}
