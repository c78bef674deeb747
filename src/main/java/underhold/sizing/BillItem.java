package underhold.sizing;

/**
 * A quantity of material or work.
 *
 * @param name what
 * @param amount how much
 * @param note how it was taken off; may be empty
 */
public record BillItem(String name, Amount amount, Phrase note) {}
