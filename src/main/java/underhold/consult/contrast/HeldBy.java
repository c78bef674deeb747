package underhold.consult.contrast;

import underhold.advice.Hold;

/**
 * A safety rule still open that holds one of two options or both.
 *
 * @param hold the rule and what it waits for
 * @param first whether it holds the first option
 * @param second whether it holds the second
 */
public record HeldBy(Hold hold, boolean first, boolean second) {}
