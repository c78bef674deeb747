package underhold.review.saved;

import java.util.Optional;
import underhold.site.PlainText;

/**
 * An input or setting of a sheet.
 *
 * @param name its name
 * @param label in words
 * @param words its value in words; left out where it is an amount
 * @param amount its value; left out where it is words
 * @param origin stated, derived, assumed, default or set by user
 * @param source who says so and what that is worth
 */
public record SavedInput(
    String name,
    String label,
    Optional<String> words,
    Optional<SavedAmount> amount,
    String origin,
    String source) {
  public SavedInput {
    if (words.isPresent() == amount.isPresent()) {
      throw new IllegalArgumentException(PlainText.quoted(name) + " must be an amount or words");
    }
  }

  /** Value and origin in a few words. */
  public String line() {
    return words.orElseGet(() -> amount.map(SavedAmount::text).orElse("")) + " (" + origin + ")";
  }

  /** Whether another run had the same input. */
  public boolean same(SavedInput other) {
    boolean sameAmount =
        amount.isPresent() && other.amount.isPresent()
            ? amount.get().same(other.amount.get())
            : amount.isEmpty() && other.amount.isEmpty();
    return words.equals(other.words) && sameAmount && origin.equals(other.origin);
  }
}
