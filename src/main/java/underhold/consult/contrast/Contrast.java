package underhold.consult.contrast;

import java.util.List;
import java.util.function.Predicate;
import underhold.advice.Criterion;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;

/**
 * Two options of one zone set against each other. What counts under the criteria adds up to the
 * score of each.
 *
 * @param zone the zone's name
 * @param first the option named first
 * @param second the other
 * @param tie gap in points up to which the rule pack calls two options a tie
 * @param criteria every criterion, in order
 */
public record Contrast(
    String zone, Side first, Side second, int tie, List<CriterionContrast> criteria) {
  public Contrast {
    criteria = List.copyOf(criteria);
  }

  /** Sets two options against each other by what was advised of a zone. */
  public static Contrast of(
      ZoneAdvice zone, RulePack pack, SupportOption one, SupportOption other) {
    return new ContrastMaker(zone, pack, one, other).make();
  }

  /** The criteria with such an outcome. */
  public List<Criterion> where(Predicate<Outcome> wanted) {
    return criteria.stream()
        .filter(one -> wanted.test(one.outcome()))
        .map(CriterionContrast::criterion)
        .toList();
  }

  /** How many points the first option is ahead of the second; below 0 where it is behind. */
  public int ahead() {
    return first.advice().score() - second.advice().score();
  }

  /** Whether the rules do not tell the two apart: neither is ruled out and the gap is a tie. */
  public boolean tied() {
    return !first.ruledOut() && !second.ruledOut() && Math.abs(ahead()) <= tie;
  }
}
