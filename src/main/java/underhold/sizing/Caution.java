package underhold.sizing;

/**
 * A hazard that the numbers do not remove.
 *
 * @param hazard name of the hazard
 * @param advice what to do
 * @param decidedBy who decides
 * @param source who says so
 */
public record Caution(String hazard, Phrase advice, String decidedBy, Source source) {}
