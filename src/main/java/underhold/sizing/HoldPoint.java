package underhold.sizing;

/**
 * A point that work must not pass without release.
 *
 * @param condition what must be so
 * @param releasedBy who releases it
 */
public record HoldPoint(Phrase condition, String releasedBy) {}
