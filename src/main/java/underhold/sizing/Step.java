package underhold.sizing;

import underhold.quantity.UnitSystem;

/**
 * One step of a calculation, which can be redone by hand.
 *
 * @param id unique on its sheet
 * @param title what is found
 * @param formula formula with its symbols
 * @param result what it gives
 * @param source formula's source and basis
 * @param note what a reader must know; may be empty
 */
public record Step(
    String id, String title, Formula formula, Amount result, Source source, Phrase note) {

  /** "M = p × L^2 / 8". */
  public String formulaText(UnitSystem system) {
    return formula.text(system);
  }

  /** "M = (20.7 kPa) × (1.2 m)^2 / 8 = 3.73 kN·m/m". */
  public String calculation(UnitSystem system) {
    return formula.leftHandSide() + " = " + formula.substituted(system) + " = " + result.in(system);
  }
}
