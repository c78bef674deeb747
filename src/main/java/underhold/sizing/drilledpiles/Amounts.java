package underhold.sizing.drilledpiles;

import underhold.quantity.Measure;
import underhold.sizing.Amount;

/** Amounts in the units that read best for piles. */
final class Amounts {
  private Amounts() {}

  /** Area of a section, mm2 or in2. */
  static Amount section(double squareMetres) {
    return new Amount(squareMetres, Measure.AREA, "mm2", "in2");
  }
}
