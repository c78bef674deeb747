package underhold.review.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (NIST FIPS 180-4) over texts in UTF-8, in lower-case hexadecimal. */
public final class Fingerprint {
  /** Characters of a whole fingerprint. */
  public static final int LENGTH = 64;

  private static final int SHORT = 12;

  private Fingerprint() {}

  /** The fingerprint of a text. */
  public static String of(String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** The fingerprint of a tree, whatever its layout and the order of its names. */
  public static String ofTree(Object tree) {
    return of(CanonicalJson.of(tree));
  }

  /** The beginning of the fingerprint of a text: enough to tell texts apart, not to prove one. */
  public static String brief(String text) {
    return of(text).substring(0, SHORT);
  }

  /** The beginning of a fingerprint, for reading. */
  public static String start(String fingerprint) {
    return fingerprint.substring(0, Math.min(SHORT, fingerprint.length()));
  }

  /** Whether the text looks like a whole fingerprint. */
  public static boolean isOne(String text) {
    return text.matches("[0-9a-f]{" + LENGTH + "}");
  }
}
