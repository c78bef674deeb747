package underhold.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.LayerFields;

/** A table of zones to begin with: every column, and an invented zone as an example. */
final class ScreenTemplate {
  private static final int LAYERS = 2;

  /** An invented wall; whatever is not told stays empty, which means that nobody knows. */
  private static final Map<String, String> EXAMPLE =
      Map.ofEntries(
          Map.entry("zone", "Plot 1, boundary wall"),
          Map.entry("site", "Alder Row"),
          Map.entry("units", "SI"),
          Map.entry(
              "note", "an invented example; write your own zones below and take this row out"),
          Map.entry("loadPattern", "continuous"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureKind", "building-wall"),
          Map.entry("purpose", "new-excavation"),
          Map.entry("structureMaterial", "unreinforced-masonry"),
          Map.entry("structureCondition", "good"),
          Map.entry("movementLimit", "10 mm"),
          Map.entry("lineLoad", "95 kN/m"),
          Map.entry("foundationKind", "strip"),
          Map.entry("foundingDepth", "1.0 m"),
          Map.entry("footingWidth", "0.9 m"),
          Map.entry("wallThickness", "0.33 m"),
          Map.entry("wallLength", "12 m"),
          Map.entry("groundWaterDepth", "unknown"),
          Map.entry("excavationDepth", "3.4 m"),
          Map.entry("gapToExcavation", "0 m"),
          Map.entry("excavationWall", "none"),
          Map.entry("outsideAccess", "hand"),
          Map.entry("insideAccess", "hand"),
          Map.entry("layer1.top", "0 m"),
          Map.entry("layer1.soil", "cohesive-fill"),
          Map.entry("layer1.unitWeight", "18 kN/m3"),
          Map.entry("layer2.top", "0.9 m"),
          Map.entry("layer2.soil", "stiff-clay"),
          Map.entry("layer2.unitWeight", "19.5 kN/m3"),
          Map.entry("layer2.undrainedStrength", "140 kPa"));

  private ScreenTemplate() {}

  /** The header and the example, as comma-separated values. */
  static String text() {
    FactDictionary dictionary = FactDictionary.standard();
    List<String> names = new ArrayList<>(List.of("zone", "site", "units", "note"));
    dictionary.all().stream()
        .filter(definition -> !definition.derived())
        .map(FactDefinition::name)
        .forEach(names::add);
    List<String> fields = new ArrayList<>(new LayerFields(dictionary).all().keySet());
    fields.add("note");
    for (int layer = 1; layer <= LAYERS; layer++) {
      for (String field : fields) {
        names.add("layer" + layer + "." + field);
      }
    }
    List<String> cells = names.stream().map(name -> EXAMPLE.getOrDefault(name, "")).toList();
    return CSVFormat.RFC4180.format(names.toArray())
        + "\n"
        + CSVFormat.RFC4180.format(cells.toArray())
        + "\n";
  }
}
