package underhold.sizing.zone;

import java.util.List;

/**
 * A choice of the site that a sizing reads.
 *
 * @param name short name on the sheet
 * @param label in words
 * @param words all that it may be
 * @param fact name of the fact that answers it; empty where none does
 * @param question how it is asked for; empty where the fact has its own question
 * @param careful whether an assumed word is the unfavourable one, so that nothing passes on it
 *     unduly
 */
public record WordInput(
    String name, String label, List<String> words, String fact, String question, boolean careful) {
  public WordInput {
    words = List.copyOf(words);
  }

  /** A choice answered by a fact of the dictionary, whose assumed word counts as a guess. */
  public static WordInput of(String name, String label, List<String> words, String fact) {
    return new WordInput(name, label, words, fact, "", false);
  }
}
