package underhold.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import underhold.advice.Finding;
import underhold.advice.NearMiss;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.turning.TurningPoints;

/** Reasons, comparisons and traces as JSON trees. */
public final class ExplainJson {
  private ExplainJson() {}

  /** The reasons of an option: why, and why not. */
  public static Map<String, Object> reasons(
      Consultation consultation, List<ZoneAdvice> zones, SupportOption option) {
    Map<String, Object> root = AdviceJson.head(consultation);
    root.put("option", option.id());
    root.put("zones", zones.stream().map(zone -> reasons(zone, option)).toList());
    return root;
  }

  /**
   * The reasons, with what would bring the option back or put it first, by the name of the zone.
   */
  public static Map<String, Object> whyNot(
      Consultation consultation,
      List<ZoneAdvice> zones,
      SupportOption option,
      Map<String, TurningPoints> ways) {
    Map<String, Object> root = AdviceJson.head(consultation);
    root.put("option", option.id());
    root.put("zones", zones.stream().map(zone -> whyNot(zone, option, ways)).toList());
    return root;
  }

  private static Map<String, Object> whyNot(
      ZoneAdvice zone, SupportOption option, Map<String, TurningPoints> ways) {
    Map<String, Object> tree = reasons(zone, option);
    TurningPoints points = ways.get(zone.name());
    if (points != null) {
      tree.put("ways", points.all().stream().map(TurningJson::point).toList());
    }
    return tree;
  }

  private static Map<String, Object> reasons(ZoneAdvice zone, SupportOption option) {
    OptionAdvice advice = zone.ranking().of(option);
    List<OptionAdvice> all = zone.ranking().options();
    return Json.object(
        "name", zone.name(),
        "option", AdviceJson.option(zone, advice),
        "conditions", findings(advice.conditions()),
        "above",
            all.subList(0, all.indexOf(advice)).stream()
                .map(
                    other ->
                        Json.object(
                            "id", other.option().id(),
                            "standing", other.standing().word(),
                            "score", other.score()))
                .toList(),
        "nearMisses",
            zone.screening().nearMisses().stream()
                .filter(miss -> miss.rule().action().options().contains(option))
                .map(ExplainJson::nearMiss)
                .toList());
  }

  public static Map<String, Object> trace(Consultation consultation, List<ZoneAdvice> zones) {
    Map<String, Object> root = AdviceJson.head(consultation);
    root.put("zones", zones.stream().map(ExplainJson::trace).toList());
    return root;
  }

  private static Map<String, Object> trace(ZoneAdvice zone) {
    return Json.object(
        "name", zone.name(),
        "derivations", findings(zone.screening().derivations()),
        "findings", findings(zone.screening().findings()),
        "assumed", findings(zone.screening().assumed()),
        "nearMisses", zone.screening().nearMisses().stream().map(ExplainJson::nearMiss).toList(),
        "conflicts", zone.screening().conflicts());
  }

  private static List<Map<String, Object>> findings(List<Finding> findings) {
    return findings.stream()
        .map(f -> FindingJson.of(f, f.effect().scores() && !f.assumed()))
        .toList();
  }

  private static Map<String, Object> nearMiss(NearMiss miss) {
    return Json.object(
        "rule", miss.rule().id(),
        "sentence", miss.rule().sentence(),
        "effect", miss.rule().effect().word(),
        "failed", miss.failed().text(),
        "truth", miss.truth().name().toLowerCase(Locale.ROOT),
        "found", miss.found(),
        "explanation", miss.explanation());
  }
}
