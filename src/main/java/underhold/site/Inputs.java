package underhold.site;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/** The facts a derivation reads; it remembers which were read. */
final class Inputs {
  /** Differences of typed lengths are rounded to a nanometre, so that 4.8 m - 1.8 m is 3 m. */
  private static final double LENGTH_STEPS_PER_METRE = 1e9;

  /** Other results are rounded to 12 figures for the same reason. */
  private static final MathContext FIGURES = new MathContext(12);

  private final FactView view;
  private final GroundProfile ground;
  private final Set<String> read = new LinkedHashSet<>();

  Inputs(FactView view, GroundProfile ground) {
    this.view = view;
    this.ground = ground;
  }

  GroundProfile ground() {
    return ground;
  }

  /** The amount of a fact; null where it has none. */
  @Nullable Quantity amount(String name) {
    Fact fact = view.fact(name);
    if (fact.value() instanceof FactValue.Amount amount) {
      read.add(name);
      return amount.quantity();
    }
    return null;
  }

  /** The word of a fact; empty where it has none. */
  String word(String name) {
    Fact fact = view.fact(name);
    if (fact.value() instanceof FactValue.Choice choice) {
      read.add(name);
      return choice.text();
    }
    return "";
  }

  /** Whether there is a new excavation at this zone, as far as is known. */
  boolean digs() {
    return !word("excavationPosition").equals("no-excavation");
  }

  /** The facts that were read and have a value. */
  Set<String> read() {
    return read;
  }

  /** Whether anything that was read is only assumed. */
  boolean restOnAssumption() {
    return read.stream().anyMatch(name -> view.fact(name).origin() == Origin.ASSUMED);
  }

  /** The fact in running text: {@code founding depth 1.8 m}. */
  String show(String name) {
    Fact fact = view.fact(name);
    String shown = fact.definition().label() + " " + fact.text();
    return fact.origin() == Origin.ASSUMED ? shown + " (assumed)" : shown;
  }

  /**
   * A calculated amount, printed in the unit system of the first input whose unit belongs to one.
   *
   * @param target the fact calculated
   * @param si the result in the inside unit
   * @param working the right-hand side, with numbers
   * @param from the amounts it was calculated from
   */
  Derived result(String target, double si, String working, Quantity... from) {
    FactDefinition definition = view.dictionary().require(target);
    FactDefinition.Range range = definition.requireRange();
    double value = tidy(si, range.measure());
    Quantity quantity = Quantity.of(value, range.measure(), unit(range, system(from)));
    return same(quantity, working);
  }

  /** An amount taken over as it was typed. */
  static Derived same(Quantity quantity, String working) {
    return new Derived(new FactValue.Amount(quantity), quantity.text() + " = " + working);
  }

  /** A word that follows. */
  static Derived word(String word, String because) {
    return new Derived(new FactValue.Choice(word), word + ": " + because);
  }

  /** The system of the first amount whose unit belongs to one; SI where none does. */
  static UnitSystem system(Quantity... from) {
    for (Quantity quantity : from) {
      Optional<UnitSystem> system = UnitSystem.statedBy(quantity);
      if (system.isPresent()) {
        return system.get();
      }
    }
    return UnitSystem.SI;
  }

  /** The unit in which the dictionary shows an amount to users of a system. */
  static String unit(FactDefinition.Range range, UnitSystem system) {
    if (range.fine()) {
      return range.measure().finePrintUnit(system);
    }
    return system == UnitSystem.SI ? range.siUnit() : range.usUnit();
  }

  private static double tidy(double si, Measure measure) {
    return measure == Measure.LENGTH
        ? Math.rint(si * LENGTH_STEPS_PER_METRE) / LENGTH_STEPS_PER_METRE
        : new BigDecimal(si).round(FIGURES).doubleValue();
  }
}
