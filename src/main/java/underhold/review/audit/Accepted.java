package underhold.review.audit;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Findings of the audit that engineers have argued and let stand, under one reason.
 *
 * @param section the section that finds them
 * @param findings what each of them is about, exactly: rules, facts, limits or sources. A finding
 *     that names more, or others, is not accepted
 * @param because why they may stand
 * @param basis what the reason rests on, such as judgement
 */
public record Accepted(String section, List<Set<String>> findings, String because, String basis) {
  public Accepted {
    findings = List.copyOf(findings);
  }

  /** Whether it speaks of a finding. */
  public boolean covers(Defect defect) {
    return section.equals(defect.section()) && findings.contains(Set.copyOf(defect.about()));
  }

  /** What it is about that none of these findings is about any more. */
  public List<Set<String>> idle(List<Defect> found) {
    List<Set<String>> met =
        found.stream().filter(this::covers).map(defect -> Set.copyOf(defect.about())).toList();
    return findings.stream().filter(one -> !met.contains(one)).toList();
  }

  /** The same for some of its findings only. */
  Accepted of(List<Set<String>> some) {
    return new Accepted(section, some, because, basis);
  }

  /** What it is about, in a line, such as {@code A, B; A, C}. */
  public String about() {
    return findings.stream()
        .map(one -> one.stream().sorted().collect(Collectors.joining(", ")))
        .collect(Collectors.joining("; "));
  }
}
