package underhold.consult.turning;

import underhold.consult.trial.Outcome;
import underhold.site.Fact;
import underhold.site.FactValue;

/**
 * One fact given one other value.
 *
 * @param was the fact as it is
 * @param value the value tried
 * @param possible whether it can be with all other facts as they are
 * @param outcome how the options stand then
 * @param cost how large a change it is; see {@link Costs}
 */
record Single(Fact was, FactValue value, boolean possible, Outcome outcome, double cost) {
  String name() {
    return was.name();
  }
}
