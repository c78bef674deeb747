package underhold.consult.contrast;

/** Which of two options a criterion favours. */
public enum Outcome {
  FAVOURS_FIRST("favours first"),
  FAVOURS_SECOND("favours second"),
  RULES_OUT_FIRST("rules out first"),
  RULES_OUT_SECOND("rules out second"),
  RULES_OUT_BOTH("rules out both"),
  /** Findings count, and come to the same for both. */
  EVEN("even"),
  /** Nothing that is known counts for or against either. */
  SILENT("silent");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  /** The word in files. */
  public String word() {
    return word;
  }

  /** Whether it speaks in favour of the first option. */
  public boolean forFirst() {
    return this == FAVOURS_FIRST || this == RULES_OUT_SECOND;
  }

  /** Whether it speaks in favour of the second option. */
  public boolean forSecond() {
    return this == FAVOURS_SECOND || this == RULES_OUT_FIRST;
  }
}
