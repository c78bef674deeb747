package underhold.shell;

import java.util.Collection;
import java.util.Optional;
import underhold.site.NearestName;

/** Guesses, for messages only, which word was meant. */
final class Nearest {
  private Nearest() {}

  /** The nearest of the words, if about a third of the letters differ at most. */
  static Optional<String> of(String typed, Collection<String> words) {
    return NearestName.of(typed.strip(), words);
  }

  /** {@code Did you mean x?}, or nothing. */
  static String question(String typed, Collection<String> words) {
    return of(typed, words).map(word -> " Did you mean " + word + "?").orElse("");
  }
}
