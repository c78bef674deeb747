package underhold.site;

import java.util.List;
import java.util.Map;

/** Sites for tests: places and numbers of our own. */
final class Sites {
  static final FactDictionary DICTIONARY = FactDictionary.standard();

  /** Every entry a site file may have. */
  static final String FULL =
      """
      { "underhold": "site/1", "name": "Mill Lane", "units": "SI", "note": "two\\nlines",
        "facts": {
          "movementLimit": "10 mm",
          "groundWaterDepth": { "value": "3 m", "note": "standpipe, March" },
          "heritage": "unknown",
          "excavationDepth": "4.2 m",
          "storeys": 4,
          "tiltLimit": "1 in 500",
          "wetSeason": true
        },
        "ground": { "layers": [
          { "top": "0 m", "soil": "fill", "unitWeight": "18 kN/m3", "note": "brick" },
          { "top": "2 m", "soil": "Stiff clay", "unitWeight": "20 kN/m3",
            "undrainedStrength": "80 kPa", "permeability": "1e-9 m/s", "standUp": "hours" },
          { "top": "9 m", "soil": "dense-gravel", "frictionAngle": "38 deg", "n60": 42.5 },
          { "top": "14 m", "soil": "rock", "unconfinedStrength": "25 MPa", "rqd": "70 %",
            "cohesion": "100 kPa" }
        ] },
        "zones": [
          { "name": "north wall", "note": "party wall",
            "facts": {
              "loadPattern": "Continuous", "excavationPosition": "beside",
              "foundingDepth": "1.8 m", "gapToExcavation": "0.6 m", "lineLoad": "180 kN/m",
              "clearSpan": "1.2 m", "predictedMovement": "6 mm", "bracingRoom": "no" } },
          { "name": "corner column",
            "facts": {
              "loadPattern": "concentrated", "excavationPosition": "partly under",
              "foundingDepth": "2.5 m", "columnLoad": "900 kN", "columnCount": "2" },
            "ground": { "layers": [ { "top": "0 m", "soil": "silt" } ] } }
        ],
        "sizing": { "pits": { "pitWidth": "1.2 m", "stages": 3 } } }
      """;

  /** The least a site file needs. */
  static final String LEAST = oneZone("");

  private Sites() {}

  /** A file with one zone beside the excavation and the facts given, each ending in a comma. */
  static String oneZone(String facts) {
    return file(facts, "");
  }

  /** A file with one zone and, before the zones, any entries given, each ending in a comma. */
  static String file(String facts, String entries) {
    String position =
        facts.contains("excavationPosition") ? "" : "\"excavationPosition\": \"beside\", ";
    return """
        { "underhold": "site/1", "name": "Dock Row", %s
          "zones": [ { "name": "wall", "facts": { %s %s "loadPattern": "continuous" } } ] }
        """
        .formatted(entries, facts, position);
  }

  static Site valid(String text) {
    return SiteReader.read(text, "test.site.json")
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new AssertionError(invalid.problems().toString());
            });
  }

  static List<SiteProblem> problems(String text) {
    return SiteReader.read(text, "test.site.json")
        .fold(valid -> List.of(), SiteReading.Invalid::problems);
  }

  /** The known facts of the first zone. */
  static FactView known(String text) {
    Site site = valid(text);
    return ZoneViews.known(site, site.zones().get(0), DICTIONARY);
  }

  /** A view with facts stated as typed. */
  static FactView stated(Map<String, String> typed) {
    FactView view = FactView.of(DICTIONARY, Map.of());
    for (Map.Entry<String, String> entry : typed.entrySet()) {
      FactDefinition definition = DICTIONARY.require(entry.getKey());
      FactValue value =
          FactReader.read(definition, entry.getValue())
              .fold(
                  accepted -> accepted,
                  () -> {
                    throw new AssertionError(entry + " is unknown");
                  },
                  rejected -> {
                    throw new AssertionError(rejected.explanation());
                  });
      view = view.with(new Fact(definition, Origin.STATED, value, ""));
    }
    return view;
  }
}
