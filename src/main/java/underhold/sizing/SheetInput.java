package underhold.sizing;

import java.util.Optional;
import underhold.quantity.UnitSystem;

/**
 * An input of a sheet: an amount or words.
 *
 * @param name short name, as the user types it
 * @param label in words
 * @param amount the value, empty where it is words
 * @param words the value in words, empty where it is an amount
 * @param origin where it comes from
 * @param source who says so, and on what basis
 */
public record SheetInput(
    String name,
    String label,
    Optional<Amount> amount,
    String words,
    Origin origin,
    Source source) {

  public SheetInput {
    if (amount.isPresent() == !words.isEmpty()) {
      throw new IllegalArgumentException(name + " must be an amount or words");
    }
  }

  /** The value in that unit system. */
  public String value(UnitSystem system) {
    return amount.map(value -> value.in(system)).orElse(words);
  }
}
