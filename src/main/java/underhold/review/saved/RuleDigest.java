package underhold.review.saved;

import underhold.advice.Condition;
import underhold.advice.Rule;
import underhold.review.file.Fingerprint;

/**
 * A rule in short: enough to see later which part of it is another.
 *
 * @param id its id
 * @param sentence the rule in one sentence
 * @param basis what it rests on
 * @param conditions the beginning of the fingerprint of its conditions, its phase and its hold
 * @param action the same of what it states: effect, options, strength, cause
 * @param reason the same of its reason in words
 * @param sources the same of the places it cites
 */
public record RuleDigest(
    String id,
    String sentence,
    String basis,
    String conditions,
    String action,
    String reason,
    String sources) {

  static RuleDigest of(Rule rule) {
    StringBuilder conditions = new StringBuilder(rule.phase() + "\n" + rule.hold());
    for (Condition condition : rule.conditions()) {
      conditions
          .append('\n')
          .append(condition.fact())
          .append(' ')
          .append(condition.operator())
          .append(' ')
          .append(condition.words())
          .append(' ')
          .append(String.valueOf(condition.limit()));
    }
    return new RuleDigest(
        rule.id(),
        rule.sentence(),
        rule.basis().word(),
        Fingerprint.brief(conditions.toString()),
        Fingerprint.brief(rule.action() + "\n" + rule.cause()),
        Fingerprint.brief(rule.because()),
        Fingerprint.brief(rule.citations().toString()));
  }
}
