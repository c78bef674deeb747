package underhold.consult.contrast;

/** What one finding does to the standing of one option. */
public enum Bearing {
  /** It rules the option out. */
  RULES_OUT("rules out"),
  /** It counts in the option's score. */
  COUNTS("counts"),
  /** A stronger finding speaks of the same cause, so it does not count. */
  NOT_COUNTED("not counted"),
  /** It rests on an assumed fact: it warns, and never counts. */
  PERHAPS("perhaps"),
  /** It is not about the option. */
  NONE("none");

  private final String word;

  Bearing(String word) {
    this.word = word;
  }

  /** The word in files. */
  public String word() {
    return word;
  }
}
