package underhold.advice;

/**
 * A rule that nearly fired: all its conditions but one hold.
 *
 * @param rule the rule
 * @param failed the condition that does not hold, or is open
 * @param truth whether it fails or is open
 * @param found the value found, or {@code unknown}
 * @param explanation what was found, what was wanted and by how much it failed
 */
public record NearMiss(
    Rule rule, Condition failed, Truth truth, String found, String explanation) {}
