package underhold.review.record;

/**
 * A sign that a record is not as it was written.
 *
 * @param kind what kind
 * @param entry the number of the entry where it shows; 0 where it is the whole
 * @param message in words
 */
public record Fault(Kind kind, int entry, String message) {
  /** Kinds of faults. */
  public enum Kind {
    CHANGED,
    REMOVED,
    INSERTED,
    REORDERED,
    /** What is reviewed was changed. */
    SUBJECT,
    /** The head does not fit the last entry. */
    HEAD,
    /** An entry stands where the record allows none. */
    OUT_OF_TURN,
    /** The same content in another layout. */
    LAYOUT
  }
}
