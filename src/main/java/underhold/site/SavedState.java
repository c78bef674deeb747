package underhold.site;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** What a file held when it was read or written, to notice that somebody else has changed it. */
public final class SavedState {
  /** There was no file. */
  public static final SavedState NO_FILE = new SavedState(false, new byte[0]);

  private final boolean existed;
  private final byte[] contents;

  private SavedState(boolean existed, byte[] contents) {
    this.existed = existed;
    this.contents = contents;
  }

  /** A file with these contents. */
  public static SavedState of(byte[] contents) {
    return new SavedState(true, contents.clone());
  }

  /** Whether there was a file. */
  public boolean existed() {
    return existed;
  }

  /** The SHA-256 of the contents, in hexadecimal. */
  public String sha256() {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(contents));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Whether there was the same in the file. */
  boolean sameContents(SavedState other) {
    return existed == other.existed && Arrays.equals(contents, other.contents);
  }
}
