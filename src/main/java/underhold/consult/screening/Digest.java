package underhold.consult.screening;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Short digests by which a row of a table is known again. */
final class Digest {
  private static final int BYTES = 8;

  private Digest() {}

  /** The beginning of the SHA-256 of the texts; the letter keeps it from being read as a number. */
  static String id(List<String> texts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String text : texts) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
      }
      return "r" + HexFormat.of().formatHex(digest.digest(), 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
