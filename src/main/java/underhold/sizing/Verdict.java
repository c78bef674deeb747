package underhold.sizing;

/** Outcome of a check. */
public enum Verdict {
  /** The capacity covers the demand. */
  PASSES("passes"),
  /** It does not. */
  FAILS("fails"),
  /** Numbers alone cannot decide: an engineer must. */
  REFER("refer");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
