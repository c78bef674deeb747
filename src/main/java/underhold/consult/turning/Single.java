package underhold.consult.turning;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.consult.trial.Outcome;
import underhold.site.Fact;
import underhold.site.FactValue;

/** One fact given one other value. */
final class Single {
  private final Fact was;
  private final FactValue value;
  private final Outcome outcome;
  private final Trying trying;
  private volatile @Nullable Boolean possible;

  /**
   * A change.
   *
   * @param was the fact as it is
   * @param value the value tried
   */
  Single(Fact was, FactValue value, Trying trying) {
    this.was = was;
    this.value = value;
    this.trying = trying;
    this.outcome = trying.outcome(Map.of(was.name(), value));
  }

  String name() {
    return was.name();
  }

  Fact was() {
    return was;
  }

  FactValue value() {
    return value;
  }

  /** How the options stand then. */
  Outcome outcome() {
    return outcome;
  }

  /** How large a change it is; see {@link Costs}. */
  double cost() {
    return Costs.of(was, value);
  }

  /** Whether it can be with all other facts as they are; found out when it is first asked. */
  boolean possible() {
    Boolean known = possible;
    if (known == null) {
      known = trying.possible(Map.of(was.name(), value));
      possible = known;
    }
    return known;
  }
}
