package underhold.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import underhold.quantity.Quantity;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;

/** Amounts as a reader wants them. */
final class Amounts {
  /** Figures of a limit converted to the reader's units: more would claim what no source says. */
  private static final int CONVERTED_FIGURES = 3;

  private Amounts() {}

  /** As written, if written in that system; else converted to it and rounded. */
  static String inSystem(Quantity quantity, boolean fine, UnitSystem system) {
    boolean same = UnitSystem.statedBy(quantity).map(system::equals).orElse(true);
    if (same) {
      return quantity.text();
    }
    String unit =
        fine ? quantity.measure().finePrintUnit(system) : quantity.measure().printUnit(system);
    double rounded =
        new BigDecimal(quantity.in(unit)).round(new MathContext(CONVERTED_FIGURES)).doubleValue();
    double si = quantity.measure().requireUnit(unit).toInside(rounded);
    return QuantityPrinter.print(si, quantity.measure(), unit);
  }
}
