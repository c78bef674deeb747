package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.Sheet;

/** Zones of a site from which pits are sized; own cases. */
final class HandZones {
  private HandZones() {}

  static final String NO_LAYERS = "";

  /** A wall of 8 m on a strip; each pair of words is a fact and its text, "-" takes it away. */
  static Map<String, String> wall(String... changes) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("loadPattern", "continuous");
    facts.put("excavationPosition", "beside");
    facts.put("foundationKind", "strip");
    facts.put("lineLoad", "90 kN/m");
    facts.put("wallLength", "8 m");
    facts.put("footingWidth", "0.9 m");
    facts.put("foundingDepth", "1 m");
    facts.put("footingStrength", "plain-concrete");
    facts.put("excavationDepth", "2.5 m");
    facts.put("groundWaterDepth", "6 m");
    facts.put("worstSoil", "dense-sand");
    for (int i = 0; i < changes.length; i += 2) {
      facts.put(changes[i], changes[i + 1]);
      facts.remove(changes[i], "-");
    }
    return facts;
  }

  static Site site(Map<String, String> facts, String layers) {
    List<String> siteWide = List.of("excavationDepth", "groundWaterDepth");
    String text =
        """
        { "underhold": "site/1", "name": "Own case, Bell Yard", "units": "SI",
          "facts": { %s }, "ground": { "layers": [ %s ] },
          "zones": [ { "name": "wall", "facts": { %s } } ] }
        """
            .formatted(json(facts, siteWide, true), layers, json(facts, siteWide, false));
    SiteReading reading = SiteReader.read(text, "own case");
    assertThat(reading).as(reading.toString()).isInstanceOf(SiteReading.Valid.class);
    return ((SiteReading.Valid) reading).site();
  }

  static String json(Map<String, String> facts, List<String> siteWide, boolean wanted) {
    return facts.entrySet().stream()
        .filter(entry -> siteWide.contains(entry.getKey()) == wanted)
        .map(entry -> "\"%s\": \"%s\"".formatted(entry.getKey(), entry.getValue()))
        .collect(Collectors.joining(", "));
  }

  static FactView view(Site site) {
    return ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
  }

  static PitsInput input(Map<String, String> facts, String layers) {
    Site site = site(facts, layers);
    return PitsFromSite.input(view(site), site.ground(), PitsSettings.defaults());
  }

  static PitsInput input(String... changes) {
    return input(wall(changes), NO_LAYERS);
  }

  static Sheet size(Map<String, String> facts, String layers) {
    Site site = site(facts, layers);
    return PitsFromSite.size(view(site), site.ground(), PitsSettings.defaults());
  }

  static double number(PitsInput input, PitsFact fact) {
    return input.amount(fact).orElseThrow().value();
  }
}
