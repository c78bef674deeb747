package underhold.advice;

/** How an option stands after the rules have spoken. */
public enum Standing {
  LEADS("leads"),
  WORKS("works"),
  WORKS_IF("works if"),
  HELD("held"),
  RULED_OUT("ruled out");

  private final String word;

  Standing(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }
}
