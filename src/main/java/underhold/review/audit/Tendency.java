package underhold.review.audit;

import java.util.List;
import java.util.Map;
import underhold.advice.SupportOption;

/**
 * What engineers expect of the whole pack when one fact gets worse and all that is stated besides
 * stays as it is.
 *
 * @param id its id
 * @param sentence the expectation, in words
 * @param fact the fact that changes
 * @param order its values from the better to the worse; amounts as typed
 * @param given other facts and the values to which the expectation keeps; may be empty
 * @param options the options that must not gain
 * @param watched what must not rise
 * @param because why
 * @param basis what it rests on
 */
public record Tendency(
    String id,
    String sentence,
    String fact,
    List<String> order,
    Map<String, List<String>> given,
    List<SupportOption> options,
    Watched watched,
    String because,
    String basis) {
  public Tendency {
    order = List.copyOf(order);
    given = Map.copyOf(given);
    options = List.copyOf(options);
  }

  /** What of an option must not rise. */
  public enum Watched {
    /** Its points: for less against. */
    SCORE("score"),
    /** Whether it is ruled out: an option that is out stays out. */
    STANDING("standing"),
    /** Both. */
    BOTH("both");

    private final String word;

    Watched(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    boolean score() {
      return this != STANDING;
    }

    boolean standing() {
      return this != SCORE;
    }
  }
}
