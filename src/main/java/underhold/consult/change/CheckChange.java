package underhold.consult.change;

import java.util.Optional;
import underhold.sizing.Check;

/**
 * A check of a sheet whose verdict is another than before.
 *
 * @param before the check before; empty where the sheet had none such
 * @param after the check now; empty where the sheet has none such
 */
public record CheckChange(Optional<Check> before, Optional<Check> after) {
  /** What is checked. */
  public Check check() {
    return after.or(() -> before).orElseThrow();
  }
}
