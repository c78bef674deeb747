package underhold.consult.trial;

import java.math.BigDecimal;
import java.math.MathContext;
import underhold.quantity.Measure;
import underhold.quantity.MeasureUnit;
import underhold.quantity.Quantity;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.FactValue;

/** Amounts in the units of a site's user, such that the text typed back is the same amount. */
public final class TypedAmounts {
  private static final int LONGEST_EXACT = 8;
  private static final MathContext ROUND = new MathContext(2);

  private final UnitSystem units;

  /** Amounts for users of a system of units. */
  public TypedAmounts(UnitSystem units) {
    this.units = units;
  }

  /** The amount in four figures, or in a few more where these say it exactly; counts are whole. */
  public FactValue of(FactDefinition definition, double si) {
    FactDefinition.Range range = definition.requireRange();
    String unit = unit(definition);
    double whole = range.measure() == Measure.COUNT ? Math.rint(si) : si;
    String full = QuantityPrinter.printFull(whole, range.measure(), unit);
    String text =
        full.length() <= LONGEST_EXACT + unit.length()
            ? full
            : QuantityPrinter.print(whole, range.measure(), unit);
    return new FactValue.Amount(
        Quantity.parse(text, range.measure())
            .toOptional()
            .orElseGet(() -> Quantity.of(whole, range.measure(), unit)));
  }

  /** The amount in two figures of the user's unit, in the inside unit of its measure. */
  public double round(FactDefinition definition, double si) {
    FactDefinition.Range range = definition.requireRange();
    MeasureUnit unit = range.measure().requireUnit(unit(definition));
    String text =
        new BigDecimal(unit.fromInside(si)).round(ROUND).toPlainString() + " " + unit.symbol();
    return Quantity.parse(text.strip(), range.measure()).toOptional().map(Quantity::si).orElse(si);
  }

  /** The unit in which the user reads an amount. */
  public String unit(FactDefinition definition) {
    FactDefinition.Range range = definition.requireRange();
    if (range.fine()) {
      return range.measure().finePrintUnit(units);
    }
    return units == UnitSystem.SI ? range.siUnit() : range.usUnit();
  }
}
