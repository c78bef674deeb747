package underhold.sizing.needles;

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
import underhold.site.Zone;
import underhold.site.ZoneViews;
import underhold.sizing.Given;
import underhold.sizing.SettingTable;
import underhold.sizing.Sheet;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.SiteFacts;

/** Own cases: sites of our own for tests of needles. */
final class NeedleSites {
  private static final NeedleMethod METHOD = new NeedleMethod();

  private NeedleSites() {}

  /** A steel column of a frame over dense sand, 180 kip, seats 14 ft apart. */
  static Map<String, String> column() {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("loadPattern", "concentrated");
    facts.put("excavationPosition", "crosses-support");
    facts.put("structureMaterial", "steel");
    facts.put("columnLoad", "180 kip");
    facts.put("seatSpan", "14 ft");
    facts.put("seatBearingDepth", "3 ft");
    facts.put("movementLimit", "10 mm");
    return facts;
  }

  /** A brick wall of a terrace. */
  static Map<String, String> wall() {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("loadPattern", "continuous");
    facts.put("excavationPosition", "partly-under");
    facts.put("structureMaterial", "unreinforced-masonry");
    facts.put("lineLoad", "80 kN/m");
    facts.put("wallLength", "6 m");
    facts.put("wallThickness", "0.4 m");
    facts.put("clearSpan", "1.2 m");
    facts.put("seatSpan", "3 m");
    facts.put("seatBearingDepth", "1 m");
    facts.put("movementLimit", "8 mm");
    return facts;
  }

  static Map<String, String> with(Map<String, String> facts, String... pairs) {
    Map<String, String> more = new LinkedHashMap<>(facts);
    for (int i = 0; i < pairs.length; i += 2) {
      if (pairs[i + 1].isEmpty()) {
        more.remove(pairs[i]);
      } else {
        more.put(pairs[i], pairs[i + 1]);
      }
    }
    return more;
  }

  static Sheet size(Map<String, String> facts, String... settings) {
    return on("dense-sand", facts, settings);
  }

  static Sheet on(String soil, Map<String, String> facts, String... settings) {
    String words =
        facts.entrySet().stream()
            .map(entry -> "\"" + entry.getKey() + "\": \"" + entry.getValue() + "\"")
            .collect(Collectors.joining(", "));
    String layers =
        soil.isEmpty()
            ? ""
            : """
              "ground": { "layers": [ { "top": "0 m", "soil": "%s", "unitWeight": "19 kN/m3" } ] },
              """
                .formatted(soil);
    String json =
        """
        { "underhold": "site/1", "name": "Own case, Quarry Street", "units": "SI", %s
          "zones": [ { "name": "support", "facts": { %s } } ] }
        """
            .formatted(layers, words);
    Site site = read(json);
    Zone zone = site.zones().get(0);
    SettingTable.Read read = METHOD.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", read.problems()));
    }
    GroundProfile ground = site.ground();
    return METHOD.size(
        ZoneViews.known(site, zone, FactDictionary.standard()), ground, read.settings());
  }

  /** A case of that layout with nothing else known, for parts that read settings alone. */
  static NeedleCase settled(String layout, String... settings) {
    SettingTable.Read read = METHOD.settings().parse(List.of(settings));
    if (!read.problems().isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", read.problems()));
    }
    SiteFacts facts = new SiteFacts(FactView.of(FactDictionary.standard(), Map.of()));
    return new NeedleCase(
        Inputs.from(facts).put(NeedleInput.LAYOUT, Given.stated(layout)).build(), read.settings());
  }

  private static Site read(String json) {
    SiteReading reading = SiteReader.read(json, "own case");
    if (reading instanceof SiteReading.Valid valid) {
      return valid.site();
    }
    throw new IllegalArgumentException("the own case is refused: " + reading);
  }
}
