package underhold.review.audit;

/** How a result of the audit was found. */
public enum Method {
  /** By sets and intervals: it holds for every site. */
  PROVED("proved"),
  /** By a site that shows it. */
  SHOWN("shown"),
  /** Every combination of the values that the rules tell apart, of all facts they read. */
  EXHAUSTIVE("exhaustive"),
  /** Combinations in which each two values of any two facts stand together at least once. */
  COVERING("covering"),
  /** Sites drawn at random: what was not met may still be. */
  SAMPLED("sampled"),
  /** Counted on the cases named. */
  COUNTED("counted");

  private final String word;

  Method(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }
}
