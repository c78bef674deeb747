package underhold.review;

import java.util.Arrays;
import java.util.Optional;

/** How our answer to one zone of a published job stands to what the job calls for. */
public enum Outcome {
  /**
   * The leader is what the job calls for, or an option tied with the leader is; and nothing that
   * must not lead leads or ties.
   */
  FIRST_CHOICE("first choice"),
  /** The leader is one of the options that are also fair; nothing that must not lead ties. */
  FAIR("fair"),
  /** Nothing leads. That is no agreement, however well the job's own option stands. */
  NO_CHOICE("no choice"),
  /** Another option leads, or one that must not lead leads or ties. */
  MISS("miss"),
  /** The source judges no way of support, so there is nothing to compare. */
  NOT_SCORED("not scored");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }

  /** Whether we agree with the job. */
  public boolean agrees() {
    return this == FIRST_CHOICE || this == FAIR;
  }

  /** The outcome of that word. */
  static Optional<Outcome> find(String word) {
    return Arrays.stream(values()).filter(outcome -> outcome.word.equals(word)).findFirst();
  }
}
