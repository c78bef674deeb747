package underhold.classroom.making;

import java.util.Locale;
import java.util.Optional;
import underhold.advice.SupportOption;

/** The methods in running text. */
final class Methods {
  private Methods() {}

  /** The method, or none, as the subject of a sentence. */
  static String words(Optional<SupportOption> option) {
    return option.map(Methods::words).orElse("no method");
  }

  static String words(SupportOption option) {
    return switch (option) {
      case MONITOR -> "watching without underpinning";
      case REFER -> "referral to a specialist";
      case BRACKET_PILES -> "small piles with brackets";
      default -> option.label();
    };
  }

  /** {@code s} where the subject is one thing: a method that leads, methods that lead. */
  static String lead(Optional<SupportOption> option) {
    boolean one =
        option
            .map(found -> found == SupportOption.MONITOR || found == SupportOption.REFER)
            .orElse(true);
    return one ? "leads" : "lead";
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
