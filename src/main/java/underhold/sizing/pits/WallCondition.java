package underhold.sizing.pits;

/** State of the wall and footing. */
public enum WallCondition {
  /** Sound, inspected. */
  SOUND("sound"),
  /** Cracked, weak mortar, or not inspected. */
  POOR("poor or not inspected");

  private final String label;

  WallCondition(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }
}
