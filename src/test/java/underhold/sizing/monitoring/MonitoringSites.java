package underhold.sizing.monitoring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.SettingTable;
import underhold.sizing.Sheet;

/** Zones for tests of the monitoring plan. */
final class MonitoringSites {
  private static final List<String> OF_THE_SITE =
      List.of("structureKind", "heritage", "storeys", "liveUse", "excavationDepth");
  private static final MonitoringMethod METHOD = new MonitoringMethod();

  private MonitoringSites() {}

  /** Own case: a brick wall 12 m long, three storeys, beside an excavation 5 m deep. */
  static Map<String, String> mill() {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("structureKind", "building-wall");
    facts.put("structureMaterial", "unreinforced-masonry");
    facts.put("heritage", "none");
    facts.put("storeys", "3");
    facts.put("excavationDepth", "5 m");
    facts.put("excavationBelowFooting", "3.5 m");
    facts.put("gapToExcavation", "4 m");
    facts.put("loadPattern", "continuous");
    facts.put("excavationPosition", "beside");
    facts.put("excavationWall", "none");
    facts.put("wallLength", "12 m");
    facts.put("predictedMovement", "5 mm");
    facts.put("movementLimit", "10 mm");
    facts.put("tiltLimit", "1 in 500");
    return facts;
  }

  /** The same with some facts otherwise; an empty text leaves the fact out. */
  static Map<String, String> mill(String... changes) {
    Map<String, String> facts = mill();
    for (int i = 0; i < changes.length; i += 2) {
      facts.put(changes[i], changes[i + 1]);
    }
    facts.values().removeIf(String::isEmpty);
    return facts;
  }

  static FactView view(Map<String, String> facts, String units) {
    Site site =
        SiteReader.read(
                """
                { "underhold": "site/1", "name": "Own case, Tannery Lane", "units": "%s",
                  "facts": { %s }, "zones": [ { "name": "wall", "facts": { %s } } ] }
                """
                    .formatted(units, text(facts, true), text(facts, false)),
                "own case")
            .fold(
                SiteReading.Valid::site,
                invalid -> {
                  throw new AssertionError(invalid.problems().toString());
                });
    return ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
  }

  private static String text(Map<String, String> facts, boolean ofTheSite) {
    return facts.entrySet().stream()
        .filter(fact -> OF_THE_SITE.contains(fact.getKey()) == ofTheSite)
        .map(
            fact ->
                fact.getKey().equals("storeys")
                    ? "\"storeys\": " + fact.getValue()
                    : "\"%s\": \"%s\"".formatted(fact.getKey(), fact.getValue()))
        .collect(Collectors.joining(", "));
  }

  static Sheet sheet(Map<String, String> facts, String... settings) {
    SettingTable.Read read = METHOD.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new AssertionError(read.problems().toString());
    }
    return METHOD.size(view(facts, "SI"), GroundProfile.NONE, read.settings());
  }
}
