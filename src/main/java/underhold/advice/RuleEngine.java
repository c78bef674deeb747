package underhold.advice;

import java.util.List;
import underhold.site.FactView;

/**
 * Fires the rules of a pack on facts. Two engines do so and share nothing but the facts: one reads
 * the conditions of the rules, the other fires what the build compiled from the same texts. Both
 * fire the same rules on the same facts. A pack from outside is read and never compiled, so nothing
 * that stands in it can run.
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

  /** The engine that answers: the plain reading, which starts at once and is the faster. */
  static RuleEngine of(RulePack pack) {
    return new PlainEngine(pack);
  }

  /** An engine to check answers by: the compiled rules, where the pack is the one built in. */
  static RuleEngine toCheckBy(RulePack pack) {
    return BuiltInPack.is(pack) ? BuiltInPack.compiledEngine() : of(pack);
  }
}
