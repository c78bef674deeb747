package underhold.review.saved;

import underhold.advice.Limit;
import underhold.review.file.Fingerprint;

/**
 * A limit of the rules.
 *
 * @param name its name
 * @param text its value as the pack writes it
 * @param value in the inside unit
 * @param basis what it rests on
 * @param rest the beginning of the fingerprint of its label, source, note and plausible range
 */
public record LimitDigest(String name, String text, double value, String basis, String rest) {
  static LimitDigest of(Limit limit) {
    return new LimitDigest(
        limit.name(),
        limit.value().text(),
        limit.si(),
        limit.basis().word(),
        Fingerprint.brief(
            limit.label() + "\n" + limit.source() + "\n" + limit.note() + "\n" + range(limit)));
  }

  private static String range(Limit limit) {
    return String.join(
        " to ", limit.plausible().stream().map(value -> String.valueOf(value.si())).toList());
  }
}
