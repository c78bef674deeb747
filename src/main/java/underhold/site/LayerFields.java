package underhold.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;

/**
 * What may be said of a ground layer, described as facts are. Limits are sanity limits against
 * slips of the hand (common practice), shared with the fact of the dictionary where there is one.
 */
public final class LayerFields {
  static final String TOP = "top";
  static final String SOIL = "soil";
  static final String NOTE = "note";
  private static final String GROUP = "ground layer";

  private final Map<String, FactDefinition> fields = new LinkedHashMap<>();

  /** The fields, those that are facts as well as the dictionary has them. */
  public LayerFields(FactDictionary dictionary) {
    amount(TOP, "depth of the layer's top", Measure.LENGTH, "0 m", "200 m");
    fields.put(SOIL, dictionary.require("soilAtFooting"));
    fields.put("unitWeight", dictionary.require("soilUnitWeight"));
    fields.put("undrainedStrength", dictionary.require("undrainedStrength"));
    amount("frictionAngle", "friction angle", Measure.ANGLE, "0 deg", "60 deg");
    amount("cohesion", "cohesion", Measure.PRESSURE, "0 kPa", "5000 kPa");
    amount("n60", "blow count N60", Measure.COUNT, "0", "300");
    amount("unconfinedStrength", "unconfined strength", Measure.PRESSURE, "1 kPa", "500 MPa");
    amount("rqd", "rock quality designation", Measure.RATIO, "0 %", "100 %");
    fields.put("permeability", dictionary.require("permeability"));
    fields.put("standUp", dictionary.require("standUp"));
  }

  /** The fields in the order in which they are written, by name. */
  public Map<String, FactDefinition> all() {
    return fields;
  }

  /** Whether the definition is of a layer and of nothing in the dictionary. */
  static boolean isLayerField(FactDefinition definition) {
    return definition.group().equals(GROUP);
  }

  private void amount(String name, String label, Measure measure, String min, String max) {
    fields.put(
        name,
        new FactDefinition(
            fields.size(),
            name,
            label,
            FactDefinition.Scope.SITE,
            GROUP,
            FactKind.QUANTITY,
            "",
            "",
            List.of(),
            new FactDefinition.Range(
                measure,
                measure.insideUnit(),
                measure.insideUnit(),
                false,
                inside(min, measure),
                inside(max, measure),
                min,
                max),
            List.of(),
            new Unknown(Unknown.Treatment.NOTE, null, "", List.of()),
            "",
            false,
            false,
            List.of(),
            0));
  }

  private static double inside(String text, Measure measure) {
    return Quantity.parse(text, measure).toOptional().orElseThrow().si();
  }
}
