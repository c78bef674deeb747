package underhold.advice;

import java.util.List;
import underhold.site.FactView;

/**
 * Fires the rules of a pack on facts. The rules built in are compiled with the program; a pack from
 * outside is read and never compiled, so nothing that stands in it can run. Both fire the same
 * rules on the same facts.
 */
public sealed interface RuleEngine permits CompiledEngine, PlainEngine {
  /** The rules it fires. */
  RulePack pack();

  /**
   * The rules of a phase that fire on a view, in the order of the pack.
   *
   * @param view of one zone, or for {@link Rule.Phase#SCHEME} of two zones together
   * @throws IllegalArgumentException if the phase does not read such a view
   */
  List<Rule> fire(FactView view, Rule.Phase phase);

  /** The compiled rules for the pack built in, the plain reading for every other. */
  static RuleEngine of(RulePack pack) {
    return BuiltInPack.is(pack) ? BuiltInPack.engine() : new PlainEngine(pack);
  }
}
