package underhold.advice;

/**
 * A limit that a finding rests on.
 *
 * @param name the limit's name
 * @param label what it is
 * @param value its value in the reader's units
 * @param basis what it rests on
 */
public record MatchedLimit(String name, String label, String value, Basis basis) {}
