package underhold.site;

/**
 * What a file was like when it was read or written, to notice that somebody else has changed it.
 *
 * @param existed whether there was a file
 * @param modifiedMillis when it was last modified, in milliseconds since 1970; 0 without a file
 * @param size its size in bytes; 0 without a file
 * @param sha256 the SHA-256 of its bytes, in hexadecimal; empty without a file
 */
public record SavedState(boolean existed, long modifiedMillis, long size, String sha256) {
  /** There was no file. */
  public static final SavedState NO_FILE = new SavedState(false, 0, 0, "");

  /** Whether the contents are the same; the time alone proves nothing. */
  boolean sameContents(SavedState other) {
    return existed == other.existed && size == other.size && sha256.equals(other.sha256);
  }
}
