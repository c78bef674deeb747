package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.Finding;
import underhold.advice.Strength;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Origin;

/** Findings and facts as JSON trees. */
final class FindingJson {
  private FindingJson() {}

  static Map<String, Object> of(Finding finding, boolean counted) {
    return Json.object(
        "rule", finding.rule().id(),
        "sentence", finding.rule().sentence(),
        "effect", finding.effect().word(),
        "strength", finding.strength().map(Strength::word).orElse(""),
        "cause", finding.rule().cause(),
        "because", finding.reason(),
        "source", finding.source(),
        "basis", finding.rule().basis().word(),
        "facts", facts(finding),
        "limits", limits(finding),
        "assumed", finding.assumed(),
        "counted", counted);
  }

  static List<Map<String, Object>> facts(Finding finding) {
    return finding.facts().stream()
        .map(f -> Json.object("name", f.name(), "value", f.value(), "origin", f.origin().word()))
        .toList();
  }

  static List<Map<String, Object>> limits(Finding finding) {
    return finding.limits().stream()
        .map(
            limit ->
                Json.object(
                    "name", limit.name(),
                    "label", limit.label(),
                    "value", limit.value(),
                    "basis", limit.basis().word()))
        .toList();
  }

  /** Every fact with a value: those known, then those assumed meanwhile. */
  static List<Map<String, Object>> facts(FactView known, FactView cautious) {
    return cautious.present().stream()
        .map(
            fact ->
                known.fact(fact.name()).origin() == Origin.UNKNOWN ? fact : known.fact(fact.name()))
        .map(FindingJson::fact)
        .toList();
  }

  private static Map<String, Object> fact(Fact fact) {
    return Json.object(
        "name", fact.name(),
        "label", fact.definition().label(),
        "value", fact.text(),
        "origin", fact.origin().word(),
        "how", fact.how());
  }
}
