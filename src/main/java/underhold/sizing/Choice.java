package underhold.sizing;

import java.util.List;

/**
 * A choice of method or practice that the user may change: one of some words.
 *
 * @param name as typed in NAME=VALUE
 * @param label in words
 * @param words what may be chosen, the default first
 * @param source the default's source and basis
 */
public record Choice(String name, String label, List<String> words, Source source) {
  public Choice {
    words = List.copyOf(words);
    if (words.isEmpty()) {
      throw new IllegalArgumentException(name + ": there is nothing to choose");
    }
  }

  /** The default. */
  public String fallback() {
    return words.get(0);
  }

  /** Whether a word may be chosen. */
  public boolean accepts(String word) {
    return words.contains(word);
  }

  /** What is wrong with a word. */
  public String refusal(String word) {
    return name + " is \"" + word + "\"; it must be one of: " + String.join(", ", words);
  }
}
