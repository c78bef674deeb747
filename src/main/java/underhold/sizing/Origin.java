package underhold.sizing;

/** Where a value comes from. */
public enum Origin {
  /** The user said so. */
  STATED("stated"),
  /** It follows from stated facts. */
  DERIVED("derived"),
  /** Nobody knows yet; a careful value stands in and a question is open. */
  ASSUMED("assumed"),
  /** The program's default for a choice of design or practice. */
  DEFAULT("default"),
  /** The user set it in place of the default. */
  SET_BY_USER("set by user");

  private final String label;

  Origin(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
