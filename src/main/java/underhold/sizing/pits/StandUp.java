package underhold.sizing.pits;

/** How long a face of about a metre stands unsupported. */
public enum StandUp {
  /** It runs or flows at once. */
  NONE("none"),
  /** Minutes. */
  MINUTES("minutes"),
  /** Hours. */
  HOURS("hours"),
  /** Days. */
  DAYS("days");

  private final String label;

  StandUp(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
