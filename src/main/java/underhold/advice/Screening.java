package underhold.advice;

import java.util.List;
import java.util.Map;
import underhold.site.FactView;

/**
 * What the rules say of one zone.
 *
 * @param view the facts, with what follows from them by calculation and by rule
 * @param derivations the rules that derived facts, in the order they fired
 * @param findings what fired on known facts, in the order of the pack
 * @param assumed what fires only on assumed facts, in the order of the pack
 * @param holds safety rules still open, by the option they may rule out
 * @param nearMisses rules that failed by one condition
 * @param conflicts derived facts on which rules disagree, in words; none in a sound pack
 */
public record Screening(
    FactView view,
    List<Finding> derivations,
    List<Finding> findings,
    List<Finding> assumed,
    Map<SupportOption, List<Hold>> holds,
    List<NearMiss> nearMisses,
    List<String> conflicts) {
  public Screening {
    derivations = List.copyOf(derivations);
    findings = List.copyOf(findings);
    assumed = List.copyOf(assumed);
    holds = Map.copyOf(holds);
    nearMisses = List.copyOf(nearMisses);
    conflicts = List.copyOf(conflicts);
  }

  /** The holds on an option. */
  public List<Hold> holdsOn(SupportOption option) {
    List<Hold> found = holds.get(option);
    return found == null ? List.of() : found;
  }
}
