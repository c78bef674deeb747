package underhold.site;

import java.util.List;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/** The unit system in which most amounts were typed. */
final class UnitMajority {
  private UnitMajority() {}

  /** The system of most; SI where they are even. Units common to both systems do not count. */
  static UnitSystem of(List<Quantity> quantities) {
    int lead = 0;
    for (Quantity quantity : quantities) {
      lead +=
          UnitSystem.statedBy(quantity).map(system -> system == UnitSystem.US ? 1 : -1).orElse(0);
    }
    return lead > 0 ? UnitSystem.US : UnitSystem.SI;
  }
}
