package underhold.sizing.pits;

/** What has to span the open pit: the footing, or the wall where the footing cannot. */
public enum WallMaterial {
  /** Reinforced concrete strip or wall; without known bars it is reckoned as plain. */
  REINFORCED_CONCRETE("reinforced concrete"),
  /** Plain concrete strip or wall. */
  PLAIN_CONCRETE("plain concrete"),
  /** Solid brick or coursed stone masonry. */
  SOLID_MASONRY("solid masonry"),
  /** Rubble stone: no bending, arching only. */
  RUBBLE("rubble masonry");

  private final String label;

  WallMaterial(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Whether it carries by bending. */
  boolean concrete() {
    return this == REINFORCED_CONCRETE || this == PLAIN_CONCRETE;
  }
}
