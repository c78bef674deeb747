package underhold.mechanics.movement;

/** How a value of this package is known. */
public enum Provenance {
  /** A code or standard; its text, or a copy of it, was read. */
  STANDARD,
  /** A publication; it, or a copy of the passage, was read. */
  PUBLISHED,
  /** The publication is known, the page was not at hand: verify. */
  FROM_MEMORY,
  /** What the trade does; no source claimed. */
  COMMON_PRACTICE,
  /** Worked out here from statics or from a stated formula. */
  DERIVED
}
