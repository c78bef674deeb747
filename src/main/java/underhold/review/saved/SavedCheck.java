package underhold.review.saved;

/**
 * A check of a sheet.
 *
 * @param id unique on its sheet
 * @param title what is checked
 * @param demand what is asked
 * @param capacity what there is
 * @param verdict passes, fails or refer
 */
public record SavedCheck(
    String id, String title, SavedAmount demand, SavedAmount capacity, String verdict) {
  /** Verdict and amounts in one line. */
  public String line() {
    return verdict + ": " + demand.text() + " of " + capacity.text();
  }
}
