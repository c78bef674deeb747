package underhold.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import underhold.quantity.UnitSystem;

/** Redoes every step of a sheet from what it shows. */
public final class StepProof {
  /** Coefficients are printed to four figures. */
  private static final double RELATIVE = 5e-4;

  private StepProof() {}

  /** Fails on the first step whose formula does not give its result. */
  public static void redo(Sheet sheet) {
    for (Step step : sheet.steps()) {
      double inside = byInsideUnits(step);
      boolean consistent = near(inside, step.result().si());
      boolean printed = near(byUnits(step, UnitSystem.SI), inUnit(step.result(), UnitSystem.SI));
      boolean printedUs = near(byUnits(step, UnitSystem.US), inUnit(step.result(), UnitSystem.US));
      assertThat(consistent || printed && printedUs)
          .as("%s: %s gives %s", step.id(), step.calculation(UnitSystem.SI), inside)
          .isTrue();
    }
  }

  private static double byInsideUnits(Step step) {
    Map<String, Double> values = new HashMap<>();
    step.formula().symbols().forEach(symbol -> values.put(symbol.sign(), symbol.amount().si()));
    return FormulaEvaluator.evaluate(step.formula().rightHandSide(UnitSystem.SI), values);
  }

  private static double byUnits(Step step, UnitSystem system) {
    Map<String, Double> values = new HashMap<>();
    step.formula()
        .symbols()
        .forEach(symbol -> values.put(symbol.sign(), inUnit(symbol.amount(), system)));
    return FormulaEvaluator.evaluate(step.formula().rightHandSide(system), values);
  }

  private static double inUnit(Amount amount, UnitSystem system) {
    return amount.measure().requireUnit(amount.unit(system)).fromInside(amount.si());
  }

  private static boolean near(double found, double printed) {
    return Math.abs(found - printed) <= RELATIVE * Math.abs(printed) + 1e-9;
  }
}
