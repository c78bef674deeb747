package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.advice.RulePack;
import underhold.consult.firmness.Firmness;

/** How firm the first place is in the zones of a site, for programs. */
public final class FirmnessJson {
  private FirmnessJson() {}

  /** The firmness zone by zone, by the name of the zone. */
  public static Object of(String site, Map<String, Firmness> zones, RulePack pack) {
    List<Object> trees = new ArrayList<>();
    zones.forEach(
        (zone, firmness) -> trees.add(Json.object("name", zone, "firmness", of(firmness))));
    return Json.object(
        "site", Json.object("name", site),
        "program", Json.object("name", Program.NAME, "version", Program.version()),
        "rulePack", AdviceJson.rulePack(pack),
        "caution", Program.CAUTION,
        "zones", trees);
  }

  /** How firm one zone's first place is. */
  static Map<String, Object> of(Firmness firmness) {
    Map<String, Object> firsts = new LinkedHashMap<>();
    firmness.byFirsts().forEach(option -> firsts.put(option.id(), firmness.first(option)));
    return Json.object(
        "leader", firmness.leader() == null ? null : firmness.leader().id(),
        "draws", firmness.draws(),
        "seed", firmness.seed(),
        "first", firsts,
        "none", firmness.none(),
        "stays", firmness.stayed(),
        "staysWithWeightsDrawn", firmness.weights(),
        "staysWithOpenFactsDrawn", firmness.facts(),
        "staysWithLimitsDrawn", firmness.limits(),
        "openFactsDrawn", firmness.factsDrawn(),
        "limitsDrawn", firmness.limitsDrawn(),
        "drivers", firmness.drivers().stream().map(FirmnessJson::driver).toList());
  }

  private static Map<String, Object> driver(Firmness.Driver driver) {
    return Json.object(
        "fact", driver.fact().name(),
        "explains", driver.explains(),
        "values",
            driver.values().stream()
                .map(v -> Json.object("value", v.value(), "draws", v.draws(), "stays", v.stayed()))
                .toList());
  }
}
