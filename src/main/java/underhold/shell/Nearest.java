package underhold.shell;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Guesses, for messages only, which word was meant. */
final class Nearest {
  private static final int LONGEST = 80;

  private Nearest() {}

  /** The nearest of the words, if about a third of the letters differ at most. */
  static Optional<String> of(String typed, Collection<String> words) {
    String wanted = key(typed);
    if (wanted.isEmpty() || wanted.length() > LONGEST) {
      return Optional.empty();
    }
    int most = Math.max(1, wanted.length() / 3);
    return words.stream()
        .filter(word -> distance(wanted, key(word)) <= most)
        .min(Comparator.comparingInt((String word) -> distance(wanted, key(word))));
  }

  /** {@code Did you mean x?}, or nothing. */
  static String question(String typed, Collection<String> words) {
    return of(typed, words).map(word -> " Did you mean " + word + "?").orElse("");
  }

  private static String key(String word) {
    return word.strip().toLowerCase(Locale.ROOT);
  }

  /** Letters put in, left out or changed (Levenshtein). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
