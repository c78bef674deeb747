package underhold.advice;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/** SHA-256 over named texts; how lines end does not matter. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(Map<String, String> texts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      new TreeMap<>(texts)
          .forEach(
              (name, text) -> {
                digest.update(name.getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
                digest.update(text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
              });
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
