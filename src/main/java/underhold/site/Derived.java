package underhold.site;

/**
 * A value that follows from other facts.
 *
 * @param value the value
 * @param how the arithmetic or the reasoning, with the numbers
 */
record Derived(FactValue value, String how) {}
