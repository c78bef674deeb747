package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.review.recheck.Difference;
import underhold.review.recheck.Recheck;
import underhold.review.saved.SavedAdvice;

/** What running a saved consultation again showed, as a JSON tree. */
public final class RecheckJson {
  private RecheckJson() {}

  public static Map<String, Object> of(Recheck recheck) {
    return Json.object(
        "site", recheck.was().siteName(),
        "stands", recheck.stand().word(),
        "holds", recheck.stand().holds(),
        "editedByHand", !recheck.was().intact(),
        "sameProgramAndRules", recheck.sameProgram(),
        "sameSite", recheck.sameSite(),
        "saved", maker(recheck.was()),
        "now", maker(recheck.now()),
        "rules",
            recheck.rules().stream()
                .map(
                    change ->
                        Json.object(
                            "change", change.kind().word(),
                            "name", change.name(),
                            "was", change.was(),
                            "is", change.now()))
                .toList(),
        "zones",
            recheck.zones().stream()
                .map(
                    zone ->
                        Json.object(
                            "zone", zone.zone(),
                            "stands", zone.stand().word(),
                            "was", zone.was(),
                            "is", zone.now(),
                            "differences", differences(zone.differences())))
                .toList(),
        "schemeAndStages",
            Json.object(
                "stands", recheck.wholeStand().word(),
                "differences", differences(recheck.whole())),
        "caution", Program.CAUTION);
  }

  private static Map<String, Object> maker(SavedAdvice advice) {
    return Json.object(
        "when", advice.made().when().toString(),
        "program", advice.made().program() + " " + advice.made().version(),
        "rulePack", advice.rulePack().line(),
        "fingerprint", advice.fingerprint());
  }

  private static List<Map<String, Object>> differences(List<Difference> all) {
    return all.stream()
        .map(
            one ->
                Json.object(
                    "topic", one.topic().word(),
                    "subject", one.subject(),
                    "was", one.was(),
                    "is", one.now(),
                    "worse", one.worse()))
        .toList();
  }
}
