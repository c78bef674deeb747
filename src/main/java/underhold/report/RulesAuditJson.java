package underhold.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.review.audit.Accepted;
import underhold.review.audit.Defect;
import underhold.review.audit.RulesAudit;
import underhold.review.audit.Section;
import underhold.site.SiteWriter;

/** The audit of a rule pack as a JSON tree. */
public final class RulesAuditJson {
  private RulesAuditJson() {}

  /**
   * The tree.
   *
   * @param files where the sites that show a defect were written, if they were
   */
  public static Map<String, Object> of(RulesAudit audit, Map<Defect, String> files) {
    return Json.object(
        "tries", audit.effort().tries(),
        "seed", audit.effort().seed(),
        "cases", audit.cases().stream().map(site -> site.group() + "/" + site.name()).toList(),
        "tried", audit.tried(),
        "open", audit.unaccepted().size(),
        "accepted", audit.defects().size() - audit.unaccepted().size(),
        "noLongerFound", audit.idle().stream().map(RulesAuditJson::accepted).toList(),
        "sections", audit.sections().stream().map(one -> section(one, audit, files)).toList());
  }

  private static Map<String, Object> section(
      Section section, RulesAudit audit, Map<Defect, String> files) {
    Map<String, Object> results = new LinkedHashMap<>();
    section.results().forEach((method, count) -> results.put(method.word(), count));
    return Json.object(
        "name", section.name(),
        "question", section.question(),
        "results", results,
        "tried", section.tried(),
        "findings", section.defects().stream().map(one -> defect(one, audit, files)).toList(),
        "notes", section.notes());
  }

  private static Map<String, Object> defect(
      Defect defect, RulesAudit audit, Map<Defect, String> files) {
    return Json.object(
        "about", defect.about(),
        "text", defect.text(),
        "method", defect.method().word(),
        "accepted",
            audit
                .accepted(defect)
                .<@Nullable Map<String, Object>>map(RulesAuditJson::accepted)
                .orElse(null),
        "file", files.get(defect),
        "site", defect.witness().<@Nullable String>map(SiteWriter::toText).orElse(null));
  }

  private static Map<String, Object> accepted(Accepted accepted) {
    return Json.object(
        "section", accepted.section(),
        "findings",
            accepted.findings().stream().map(one -> one.stream().sorted().toList()).toList(),
        "because", accepted.because(),
        "basis", accepted.basis());
  }
}
