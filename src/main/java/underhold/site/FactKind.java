package underhold.site;

/** What sort of value a fact takes. */
public enum FactKind {
  /** One of the words listed in the dictionary. */
  CHOICE,
  /** {@code yes} or {@code no}. */
  YES_NO,
  /** An amount with a unit. */
  QUANTITY,
  /** A slope between points, written {@code 1 in 500}; held as the ratio. */
  SLOPE;

  /** Whether the value is a number inside. */
  public boolean isNumber() {
    return this == QUANTITY || this == SLOPE;
  }
}
