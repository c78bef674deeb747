package underhold.quantity;

/** Why a text is not a quantity. */
public enum RejectionCode {
  /** Nothing was typed. */
  EMPTY,
  /** More was typed than any quantity needs. */
  TOO_LONG,
  /** It does not begin with a number. */
  NO_NUMBER,
  /** A comma that may be a decimal comma or a thousands separator. */
  DECIMAL_COMMA,
  /** A number that cannot be read as one value: a range, a gap in the digits, a loose fraction. */
  BAD_NUMBER,
  /** Not a number, infinite, or too large or too small to hold. */
  NOT_FINITE,
  /** The number stands without a unit and the measure needs one. */
  NO_UNIT,
  /** No unit is known by that name. */
  UNKNOWN_UNIT,
  /** A unit with more than one meaning, or a mass where a force is meant. */
  AMBIGUOUS_UNIT,
  /** A known unit, of another measure. */
  WRONG_MEASURE,
  /** A good quantity with something more behind it. */
  TRAILING_TEXT
}
