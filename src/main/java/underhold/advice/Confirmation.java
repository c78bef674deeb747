package underhold.advice;

import java.util.List;
import java.util.Set;
import underhold.site.Fact;
import underhold.site.FactView;

/** Sizes the options that the screening left, and states what its checks say as facts. */
@FunctionalInterface
public interface Confirmation {
  /** Sizes nothing. */
  Confirmation NONE = (view, left) -> List.of();

  /**
   * Derived facts for the rules of the phase {@link Rule.Phase#CONFIRM}.
   *
   * @param view the facts, with what follows from them
   * @param left the options not ruled out
   */
  List<Fact> facts(FactView view, Set<SupportOption> left);
}
