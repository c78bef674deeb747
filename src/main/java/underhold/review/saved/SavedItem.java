package underhold.review.saved;

/**
 * A line of the bill or of the calendar of a sheet.
 *
 * @param name what
 * @param amount how much
 */
public record SavedItem(String name, SavedAmount amount) {}
