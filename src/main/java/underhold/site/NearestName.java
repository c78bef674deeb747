package underhold.site;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import underhold.quantity.EditDistance;

/** Guesses, for messages only, which name was meant. */
public final class NearestName {
  private static final int LONGEST_TYPED = 60;

  private NearestName() {}

  /** {@code did you mean "x"?} for the nearest of the names; empty if none is near. */
  public static String question(String typed, Collection<String> names) {
    return of(typed, names).map(name -> "did you mean " + PlainText.quoted(name) + "?").orElse("");
  }

  /** The nearest of the names, if fewer than about a third of the letters differ. */
  public static Optional<String> of(String typed, Collection<String> names) {
    if (typed.length() > LONGEST_TYPED) {
      return Optional.empty();
    }
    String word = key(typed);
    String nearest = null;
    int least = 1 + Math.max(1, word.length() / 3);
    for (String name : names) {
      int distance = EditDistance.between(word, key(name));
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
}
