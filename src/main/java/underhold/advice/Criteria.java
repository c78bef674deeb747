package underhold.advice;

import java.util.Map;
import java.util.Optional;

/**
 * Which criterion each cause of a rule belongs to: judgement of the rule pack, and only for
 * comparing; nothing counts by it.
 *
 * @param meanings what each criterion is about, in one line
 * @param byCause the criterion of each cause
 */
public record Criteria(Map<Criterion, String> meanings, Map<String, Criterion> byCause) {
  public Criteria {
    meanings = Map.copyOf(meanings);
    byCause = Map.copyOf(byCause);
  }

  /** What a criterion is about. */
  public String meaning(Criterion criterion) {
    String meaning = meanings.get(criterion);
    return meaning == null ? "" : meaning;
  }

  /** The criterion of a cause, if the table lists the cause. */
  public Optional<Criterion> find(String cause) {
    return Optional.ofNullable(byCause.get(cause));
  }

  /**
   * The criterion of a rule.
   *
   * @throws IllegalArgumentException if none lists its cause: only rules that derive facts have
   *     none
   */
  public Criterion of(Rule rule) {
    return find(rule.cause())
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no criterion lists the cause " + rule.cause() + " of " + rule.id()));
  }
}
