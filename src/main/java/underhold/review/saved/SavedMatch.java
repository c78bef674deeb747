package underhold.review.saved;

/**
 * A fact or a limit that a finding rests on.
 *
 * @param name its name
 * @param label its name in sentences
 * @param value its value as it was shown
 * @param from the origin of a fact, the basis of a limit
 */
public record SavedMatch(String name, String label, String value, String from) {}
