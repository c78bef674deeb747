package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.review.audit.Accepted;
import underhold.review.audit.AuditSite;
import underhold.review.audit.Defect;
import underhold.review.audit.Method;
import underhold.review.audit.RulesAudit;
import underhold.review.audit.Section;

/** The audit of a rule pack: a summary, what engineers accepted and why, and section by section. */
public final class RulesAuditText {
  private static final int MARGIN = 2;
  private static final int NAME = 14;
  private static final int MARK = 10;

  private final RulesAudit audit;
  private final Map<Defect, String> files;
  private final TextPage page;

  private RulesAuditText(RulesAudit audit, Map<Defect, String> files, TextPage page) {
    this.audit = audit;
    this.files = files;
    this.page = page;
  }

  /**
   * The page, without the foot.
   *
   * @param files where the sites that show a defect were written, if they were
   */
  public static String of(RulesAudit audit, Map<Defect, String> files, Look look) {
    RulesAuditText text = new RulesAuditText(audit, files, new TextPage(look));
    text.summary();
    text.accepted();
    audit.sections().forEach(text::section);
    return text.page.text();
  }

  private void summary() {
    page.heading("Audit of the rules: " + audit.pack().name() + " " + audit.pack().version());
    page.para(
        0,
        audit.pack().rules().size()
            + " rules that read one zone, "
            + audit.pack().pairRules().size()
            + " that read two; "
            + cases()
            + "; seed "
            + audit.effort().seed()
            + ", "
            + grouped(audit.tried())
            + " sites and combinations tried.");
    int open = audit.unaccepted().size();
    int accepted = audit.defects().size() - open;
    page.tinted(
        open == 0 ? Tint.GOOD : Tint.BAD,
        0,
        (open == 0 ? "No open defect" : Words.count(open, "open defect", "open defects"))
            + "; "
            + Words.count(accepted, "finding", "findings")
            + " accepted with a reason.");
    page.blank();
    for (Section section : audit.sections()) {
      long left = left(section);
      page.item(
          left == 0 ? Tint.NONE : Tint.BAD,
          MARGIN,
          section.name(),
          NAME,
          (left == 0 ? "none open" : left + " OPEN")
              + (section.defects().size() > left
                  ? ", " + (section.defects().size() - left) + " accepted"
                  : "")
              + "; "
              + methods(section)
              + (section.tried() > 0 ? "; " + grouped(section.tried()) + " tried" : ""));
    }
    page.blank();
    page.para(
        0,
        "Proved: by sets and intervals, for every site. Shown: by a site. Exhaustive: every combination that the rules tell apart. Covering: each two values of any two facts together. Sampled: on random sites; what was not met may still be.");
  }

  private String cases() {
    Map<String, Long> groups =
        audit.cases().stream()
            .collect(
                Collectors.groupingBy(AuditSite::group, LinkedHashMap::new, Collectors.counting()));
    return groups.isEmpty()
        ? "no cases"
        : Words.list(
                groups.entrySet().stream()
                    .map(group -> group.getValue() + " " + group.getKey())
                    .toList())
            + " sites";
  }

  private long left(Section section) {
    return section.defects().stream().filter(defect -> audit.accepted(defect).isEmpty()).count();
  }

  private static String methods(Section section) {
    List<String> parts = new ArrayList<>();
    section.results().forEach((method, count) -> parts.add(grouped(count) + " " + method.word()));
    return parts.isEmpty() ? "nothing to ask" : String.join(", ", parts);
  }

  private static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  private void accepted() {
    List<Accepted> used =
        audit.notes().accepted().stream()
            .filter(one -> audit.defects().stream().anyMatch(one::covers))
            .toList();
    if (!used.isEmpty()) {
      page.heading("Accepted, and why");
      for (Accepted one : used) {
        page.para(MARGIN, one.section() + ": " + one.about());
        page.para(MARGIN + MARGIN, one.because() + " [" + one.basis() + "]");
      }
    }
    for (Accepted idle : audit.idle()) {
      page.tinted(
          Tint.OPEN,
          MARGIN,
          "Accepted in audit.json and no longer found: "
              + idle.section()
              + ", "
              + idle.about()
              + ". Take it out.");
    }
  }

  private void section(Section section) {
    page.heading(Words.sentence(section.name()) + ": " + section.question());
    for (Defect defect : section.defects()) {
      Optional<Accepted> accepted = audit.accepted(defect);
      page.item(
          accepted.isPresent() ? Tint.QUIET : Tint.BAD,
          MARGIN,
          accepted.isPresent() ? "accepted" : "OPEN",
          MARK,
          defect.text() + " [" + found(defect) + "]");
    }
    boolean counts = section.results().keySet().equals(Set.of(Method.COUNTED));
    if (section.defects().isEmpty() && !counts) {
      page.para(MARGIN, "Nothing found.");
    }
    section.notes().forEach(note -> page.para(MARGIN, note));
  }

  private String found(Defect defect) {
    String file = files.get(defect);
    String site =
        file != null ? ", site: " + file : defect.witness().isPresent() ? ", a site shows it" : "";
    return (defect.method() == Method.SAMPLED && defect.witness().isPresent()
            ? "found on a site tried"
            : defect.method().word())
        + site;
  }
}
