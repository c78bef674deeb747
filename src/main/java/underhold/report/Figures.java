package underhold.report;

import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;

/** Small limits in figures as one would type them. */
public final class Figures {
  /** A number of so many figures or fewer was chosen; one of more came out of a conversion. */
  private static final int CHOSEN = 2;

  private Figures() {}

  /**
   * An amount in the reader's units; where only the other system's number is a round one, that
   * number first, as it was chosen, with the reader's behind it: "1 mm (0.03937 in)".
   */
  public static String asTyped(Amount amount, UnitSystem units) {
    UnitSystem other = units == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    return figures(amount, units) > CHOSEN && figures(amount, other) <= CHOSEN
        ? amount.in(other) + " (" + amount.in(units) + ")"
        : amount.in(units);
  }

  /** Significant figures of the number. */
  private static int figures(Amount amount, UnitSystem units) {
    return amount
        .in(units)
        .replaceAll(" .*", "")
        .replaceAll("[^0-9]", "")
        .replaceAll("^0+|0+$", "")
        .length();
  }
}
