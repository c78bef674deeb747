package underhold.classroom;

/**
 * A word that an answer can name.
 *
 * @param word the word, as typed
 * @param means what it means
 */
public record Named(String word, String means) {}
