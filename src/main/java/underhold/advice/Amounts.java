package underhold.advice;

import underhold.quantity.Quantity;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;

/** Amounts as a reader wants them. */
final class Amounts {
  private Amounts() {}

  /** As written, if written in that system; else converted to it. */
  static String inSystem(Quantity quantity, boolean fine, UnitSystem system) {
    boolean same = UnitSystem.statedBy(quantity).map(system::equals).orElse(true);
    if (same) {
      return quantity.text();
    }
    return fine
        ? QuantityPrinter.printFine(quantity.si(), quantity.measure(), system)
        : QuantityPrinter.print(quantity.si(), quantity.measure(), system);
  }
}
