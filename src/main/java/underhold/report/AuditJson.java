package underhold.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.review.Agreement;
import underhold.review.AgreementTable;
import underhold.review.Audit;
import underhold.review.Expectation;
import underhold.review.Outcome;

/** An audit of the rules as a JSON tree. */
public final class AuditJson {
  private AuditJson() {}

  public static Map<String, Object> of(Audit audit) {
    return Json.object(
        "program", Json.object("name", Program.NAME, "version", Program.version()),
        "rulePack", AdviceJson.rulePack(audit.pack()),
        "caution", Program.CAUTION,
        "publishedJobs", publishedJobs(audit.publishedJobs()));
  }

  private static Map<String, Object> publishedJobs(AgreementTable table) {
    Map<String, Object> counts = new LinkedHashMap<>();
    for (Outcome outcome : Outcome.values()) {
      counts.put(outcome.word(), table.rows(outcome).size());
    }
    return Json.object(
        "jobs", table.jobs(),
        "zones", table.rows().size(),
        "scored", table.scored(),
        "outcomes", counts,
        "mustNotLead", Json.object("named", table.named(), "notKeptBack", table.letThrough()),
        "rows", table.rows().stream().map(AuditJson::row).toList());
  }

  private static Map<String, Object> row(Agreement row) {
    Expectation expected = row.expected();
    return Json.object(
        "job", row.job().name(),
        "name", row.job().site().name(),
        "source", row.job().source(),
        "teaches", row.job().teaches(),
        "zone", expected.zone(),
        "done", expected.done(),
        "used", ids(expected.used()),
        "target", ids(expected.target()),
        "alsoFair", ids(expected.alsoFair()),
        "mustNotLead", ids(expected.out()),
        "reading", expected.because(),
        "outcome", row.outcome().word(),
        "asRecorded", row.asRecorded(),
        "front", row.front().stream().map(AuditJson::option).toList(),
        "leadsBecause",
            row.leadsBecause().stream().map(finding -> FindingJson.of(finding, true)).toList(),
        "targets", row.targets().stream().map(AuditJson::option).toList(),
        "notKeptBack", ids(row.letThrough()),
        "silentRules", row.silent(),
        "onRecord", onRecord(expected));
  }

  private static @Nullable Map<String, Object> onRecord(Expectation expected) {
    return expected
        .known()
        .<@Nullable Map<String, Object>>map(
            known -> Json.object("outcome", known.outcome().word(), "because", known.because()))
        .orElse(null);
  }

  private static Map<String, Object> option(OptionAdvice advice) {
    return Json.object(
        "id", advice.option().id(),
        "standing", advice.standing().word(),
        "score", advice.score(),
        "tied", advice.tied(),
        "heldBy", advice.holds().stream().map(hold -> hold.rule().id()).toList());
  }

  private static List<String> ids(List<SupportOption> options) {
    return options.stream().map(SupportOption::id).toList();
  }
}
