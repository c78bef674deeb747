package underhold.quantity;

import java.util.regex.Pattern;

/** Turns typographic signs into the plain ones on a keyboard. */
final class Typography {
  private static final Pattern SPACES = Pattern.compile("[\\u00A0\\u2007\\u2009\\u202F]");
  private static final Pattern PRIMES = Pattern.compile("[\u2032\u2018\u2019]");
  private static final Pattern DOUBLE_PRIMES = Pattern.compile("[\u2033\u201C\u201D]|''");

  /** Signs from here on stand on few keyboards. */
  private static final int FIRST_OTHER = 0x80;

  private Typography() {}

  /** Minus, primes, spaces and the degree sign as a keyboard would give them. */
  static String plain(String text) {
    if (text.chars().allMatch(sign -> sign < FIRST_OTHER) && !text.contains("''")) {
      return text; // as most are typed
    }
    String plain = SPACES.matcher(text).replaceAll(" ");
    plain = PRIMES.matcher(plain).replaceAll("'");
    plain = DOUBLE_PRIMES.matcher(plain).replaceAll("\"");
    return plain
        .replace('\u2212', '-') // minus sign
        .replace('\u00BA', '\u00B0'); // ordinal sign typed for a degree sign
  }

  /** Text from outside, safe to stand in a message: short, without control characters. */
  static String quoted(String text) {
    int longest = 60;
    String shown = text.length() <= longest ? text : text.substring(0, longest) + "…";
    return "\"" + shown.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\u2028\\u2029]", "?") + "\"";
  }
}
