package underhold.sizing;

import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/**
 * A number of design or practice that the user may change.
 *
 * @param name as typed in NAME=VALUE
 * @param label in words
 * @param fallback default
 * @param least smallest value accepted, inside unit
 * @param most largest value accepted, inside unit
 * @param source the default's source and basis
 */
public record Setting(
    String name, String label, Amount fallback, double least, double most, Source source) {
  public Setting {
    if (!(least <= fallback.si() && fallback.si() <= most)) {
      throw new IllegalArgumentException(name + ": the default is outside its range");
    }
  }

  /** Whether a value may be set. */
  public boolean accepts(double value) {
    return value >= least && value <= most;
  }

  /** What is wrong with a value, in words. */
  public String refusal(double value) {
    return name
        + " is "
        + (Double.isFinite(value) ? both(fallback.with(value)) : String.valueOf(value))
        + "; "
        + range();
  }

  /** What may be set, in words. */
  public String range() {
    return "it must be from " + both(fallback.with(least)) + " to " + both(fallback.with(most));
  }

  /** Reads a value as a quantity of this setting's measure. */
  public ParsedQuantity parse(String text) {
    return Quantity.parse(text, fallback.measure());
  }

  private static String both(Amount amount) {
    String si = amount.in(UnitSystem.SI);
    String us = amount.in(UnitSystem.US);
    return si.equals(us) ? si : si + " (" + us + ")";
  }
}
