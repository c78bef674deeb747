package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.sizing.MissingInput;

/** What to find out next, zone by zone, for programs. */
public final class AskNextJson {
  private AskNextJson() {}

  public static Object of(Consultation consultation) {
    Map<String, Object> root = AdviceJson.head(consultation);
    root.put("zones", consultation.zones().stream().map(AskNextJson::zone).toList());
    return root;
  }

  private static Map<String, Object> zone(ZoneAdvice zone) {
    List<String> asks =
        zone.ranking()
            .leader()
            .flatMap(leader -> zone.sizing(leader.option()))
            .map(sizing -> sizing.sheet().missing().stream().map(MissingInput::name).toList())
            .orElse(List.of());
    return Json.object(
        "name", zone.name(),
        "leader", zone.ranking().leader().map(advice -> advice.option().id()).orElse(null),
        "questions", zone.questions().list().stream().map(AdviceJson::question).toList(),
        "sheetOfLeaderAsks", asks);
  }
}
