package underhold.site;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Guesses, for messages only, which name was meant. */
final class NearestName {
  private static final int LONGEST_TYPED = 60;

  private NearestName() {}

  /** {@code did you mean "x"?} for the nearest of the names; empty if none is near. */
  static String question(String typed, Collection<String> names) {
    return of(typed, names).map(name -> "did you mean \"" + name + "\"?").orElse("");
  }

  /** The nearest of the names, if fewer than about a third of the letters differ. */
  static Optional<String> of(String typed, Collection<String> names) {
    if (typed.length() > LONGEST_TYPED) {
      return Optional.empty();
    }
    String word = key(typed);
    String nearest = null;
    int least = 1 + Math.max(1, word.length() / 3);
    for (String name : names) {
      int distance = distance(word, key(name));
      if (distance < least) {
        least = distance;
        nearest = name;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }

  /** Levenshtein's distance: letters put in, left out or changed. */
  static int distance(String a, String b) {
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
