package underhold.review.recheck;

/**
 * One thing that is otherwise than it was.
 *
 * @param topic what it is about
 * @param subject what it is, such as an option or the id of a rule
 * @param was how it was; empty where it was not there
 * @param now how it is; empty where it is no more
 * @param worse whether the advice rests on less than it did: what led must be looked at again
 */
public record Difference(Topic topic, String subject, String was, String now, boolean worse) {
  static Difference of(Topic topic, String subject, String was, String now) {
    return new Difference(topic, subject, was, now, false);
  }

  static Difference worse(Topic topic, String subject, String was, String now) {
    return new Difference(topic, subject, was, now, true);
  }
}
