package underhold.sizing.zone;

import underhold.sizing.Amount;

/**
 * A number that a sizing reads.
 *
 * @param name short name on the sheet, such as "column-load"
 * @param label in words
 * @param kind an amount of the same measure and units, whatever its value
 * @param least smallest value for which the sheet holds, inside unit
 * @param most largest such value, inside unit
 * @param fact name of the fact that answers it; empty where none does
 * @param question how it is asked for
 * @param trial what is tried where the value is only assumed
 */
public record NumberInput(
    String name,
    String label,
    Amount kind,
    double least,
    double most,
    String fact,
    String question,
    Trial trial) {

  /** Other values by which {@link AssumedInputs} finds the checks that rest on an assumed one. */
  public enum Trial {
    /** Half and twice the value. */
    SCALE,
    /** One metre less and more: for levels. */
    SHIFT,
    /** None: the assumed value stands at its unfavourable end. */
    NONE
  }

  public NumberInput {
    if (!(least <= most)) {
      throw new IllegalArgumentException(name + ": least is above most");
    }
  }

  /** A number that scales, answered by a fact of the dictionary. */
  public static NumberInput of(
      String name, String label, Amount kind, double least, double most, String fact) {
    return new NumberInput(name, label, kind, least, most, fact, "", Trial.SCALE);
  }

  /** The same, with another trial. */
  public NumberInput tried(Trial other) {
    return new NumberInput(name, label, kind, least, most, fact, question, other);
  }

  /** Whether the sheet holds for a value. */
  public boolean accepts(double si) {
    return si >= least && si <= most;
  }

  /** By its name alone, which tells the numbers of a sheet apart; it is asked for often. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** The value as an amount. */
  public Amount amount(double si) {
    return kind.with(si);
  }
}
