package underhold.sizing;

/**
 * What a sizing cannot do without.
 *
 * @param name short name of the fact
 * @param question the question that would supply it
 * @param why why it is needed
 */
public record MissingInput(String name, String question, String why) {}
