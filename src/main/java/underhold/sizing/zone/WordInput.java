package underhold.sizing.zone;

import java.util.List;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

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

  /** A choice that may be all that its fact may be, whose assumed word counts as a guess. */
  public static WordInput of(String name, String label, String fact) {
    return new WordInput(name, label, wordsOf(fact), fact, "", false);
  }

  /** A choice that may be all that its fact may be, whose assumed word is the unfavourable one. */
  public static WordInput careful(String name, String label, String fact) {
    return new WordInput(name, label, wordsOf(fact), fact, "", true);
  }

  /** A choice among a sheet's own words, or among the words of a fact for which it holds. */
  public static WordInput among(String name, String label, List<String> words, String fact) {
    return new WordInput(name, label, words, fact, "", false);
  }

  /** By its name alone, which tells the words of a sheet apart; it is asked for often. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  private static List<String> wordsOf(String fact) {
    return FactDictionary.standard().require(fact).values().stream()
        .map(FactDefinition.Allowed::value)
        .toList();
  }
}
