package underhold.review.audit;

import java.util.List;
import java.util.Set;

/**
 * A finding of the audit that engineers have argued and let stand.
 *
 * @param section the section that finds it
 * @param about rules, facts, limits or sources: a finding that names only these is accepted; where
 *     it names two rules and they are more, any two of them
 * @param because why it may stand
 * @param basis what the reason rests on, such as judgement
 */
public record Accepted(String section, List<String> about, String because, String basis) {
  public Accepted {
    about = List.copyOf(about);
  }

  /** Whether it speaks of a finding. */
  public boolean covers(Defect defect) {
    return section.equals(defect.section())
        && !defect.about().isEmpty()
        && Set.copyOf(about).containsAll(defect.about());
  }
}
