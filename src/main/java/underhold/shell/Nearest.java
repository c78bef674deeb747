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

  /** Letters put in, left out, changed or swapped (optimal string alignment distance). */
  private static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(int[][] cost, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
