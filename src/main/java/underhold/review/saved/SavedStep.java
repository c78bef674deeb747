package underhold.review.saved;

/**
 * A step of a sheet.
 *
 * @param id unique on its sheet
 * @param title what is found
 * @param formula the formula in symbols
 * @param result what it gave
 */
public record SavedStep(String id, String title, String formula, SavedAmount result) {}
