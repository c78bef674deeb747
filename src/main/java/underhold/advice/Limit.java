package underhold.advice;

import java.util.List;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/**
 * A threshold of the rules.
 *
 * @param name the name in rules
 * @param label what it is, in words
 * @param value its value as written in the pack
 * @param fine whether it is shown in small units (mm, in)
 * @param basis what it rests on
 * @param source the sources, as in a rule's header; may be empty
 * @param note where sources disagree; may be empty
 * @param plausible the least and the greatest plausible value, or nothing
 */
public record Limit(
    String name,
    String label,
    Quantity value,
    boolean fine,
    Basis basis,
    String source,
    String note,
    List<Quantity> plausible) {
  public Limit {
    plausible = List.copyOf(plausible);
  }

  /** The value in the inside unit of its measure. */
  public double si() {
    return value.si();
  }

  /** The value in the reader's units. */
  public String text(UnitSystem system) {
    return Amounts.inSystem(value, fine, system);
  }
}
