package underhold.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import underhold.quantity.Measure;

/**
 * The JSON Schema (draft 2020-12) of site files, made from the dictionary, with which editors
 * complete and check them. It is a little stricter than the program about spelling and knows
 * nothing of contradictions; the program has the last word.
 */
public final class SiteSchema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  private static final String REFERENCE = "$ref";
  private static final String LAYER = "layer";

  private final FactDictionary dictionary;

  private SiteSchema(FactDictionary dictionary) {
    this.dictionary = dictionary;
  }

  /** The schema as JSON. */
  public static String generate() {
    return JsonText.of(new SiteSchema(FactDictionary.standard()).root());
  }

  private Map<String, Object> root() {
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put("underhold", Map.of("const", SiteSection.VERSION));
    properties.put("name", name());
    properties.put("units", Map.of("enum", List.of("SI", "US")));
    properties.put("note", note());
    properties.put("facts", reference("facts"));
    properties.put("ground", reference("ground"));
    properties.put("zones", list(reference("zone"), 1));
    properties.put(RelationSection.ENTRY, list(reference("relation"), 0));
    properties.put("sizing", sizing());
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("$schema", DRAFT);
    root.put("$id", "urn:underhold:" + SiteSection.VERSION.replace('/', ':'));
    root.put("title", "Underhold site");
    root.putAll(object(properties, List.of("underhold", "name", "zones")));
    root.put("allOf", requiredFacts());
    root.put("$defs", definitions());
    return root;
  }

  private Map<String, Object> definitions() {
    Map<String, Object> definitions = new LinkedHashMap<>();
    Map<String, Object> facts = new LinkedHashMap<>();
    for (FactDefinition fact : dictionary.all()) {
      if (!fact.derived()) {
        facts.put(fact.name(), fact(fact));
      }
    }
    definitions.put("facts", object(facts, List.of()));
    Map<String, Object> zone = new LinkedHashMap<>();
    zone.put("name", name());
    zone.put("note", note());
    zone.put("facts", reference("facts"));
    zone.put("ground", reference("ground"));
    definitions.put("zone", object(zone, List.of("name")));
    definitions.put("relation", relation());
    definitions.put(
        "ground", object(Map.of("layers", list(reference(LAYER), 0)), List.of("layers")));
    definitions.put(LAYER, layer());
    for (Measure measure : Measure.values()) {
      definitions.put(measure.name(), quantity(measure));
    }
    return definitions;
  }

  /** Two zones by name, and what is known of them together. */
  private Map<String, Object> relation() {
    Map<String, Object> facts = new LinkedHashMap<>();
    for (FactDefinition fact : FactDictionary.pairs().all()) {
      if (!fact.derived()) {
        facts.put(fact.name(), fact(fact));
      }
    }
    Map<String, Object> zones = list(name(), 2);
    zones.put("maxItems", 2);
    zones.put("uniqueItems", true);
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put(RelationSection.ZONES, zones);
    properties.put("note", note());
    properties.put("facts", object(facts, List.of()));
    return object(properties, List.of(RelationSection.ZONES));
  }

  private Map<String, Object> layer() {
    Map<String, Object> properties = new LinkedHashMap<>();
    new LayerFields(dictionary)
        .all()
        .forEach(
            (name, field) -> {
              boolean needed = name.equals(LayerFields.TOP) || name.equals(LayerFields.SOIL);
              properties.put(name, described(field, value(field, !needed)));
            });
    properties.put(LayerFields.NOTE, note());
    return object(properties, List.of(LayerFields.TOP, LayerFields.SOIL));
  }

  /** A fact is a value, or a value with a note. */
  private Map<String, Object> fact(FactDefinition fact) {
    Map<String, Object> value = value(fact, !fact.required());
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put("value", value);
    properties.put("note", note());
    return described(fact, Map.of("anyOf", List.of(value, object(properties, List.of("value")))));
  }

  private Map<String, Object> described(FactDefinition fact, Map<String, Object> schema) {
    Map<String, Object> described = new LinkedHashMap<>();
    described.put("title", fact.label());
    String limits =
        fact.kind().isNumber()
            ? fact.requireRange().minText() + " to " + fact.requireRange().maxText()
            : "";
    String text =
        String.join(" ", Stream.of(fact.question(), limits).filter(s -> !s.isEmpty()).toList());
    if (!text.isEmpty()) {
      described.put("description", text);
    }
    described.putAll(schema);
    return described;
  }

  private static Map<String, Object> value(FactDefinition fact, boolean mayBeUnknown) {
    return switch (fact.kind()) {
      case QUANTITY -> reference(fact.requireRange().measure().name());
      case SLOPE -> text(QuantityPattern.slope());
      case CHOICE, YES_NO -> {
        List<Object> words = new ArrayList<>();
        fact.values().forEach(allowed -> words.add(allowed.value()));
        if (fact.kind() == FactKind.YES_NO) {
          words.add(true);
          words.add(false);
        }
        if (mayBeUnknown) {
          words.add(FactReader.UNKNOWN);
        }
        yield Map.of("enum", words);
      }
    };
  }

  private static Map<String, Object> quantity(Measure measure) {
    Map<String, Object> text = new LinkedHashMap<>(text(QuantityPattern.of(measure)));
    text.put("description", measure.phrase() + ", for example " + measure.example());
    return measure.needsUnit() ? text : Map.of("anyOf", List.of(Map.of("type", "number"), text));
  }

  /** Each required fact stands in the site's facts or in those of every zone. */
  private List<Object> requiredFacts() {
    List<Object> all = new ArrayList<>();
    for (FactDefinition fact : dictionary.all()) {
      if (fact.required()) {
        Map<String, Object> stated = stating("facts", required(fact.name()));
        Map<String, Object> inZones =
            Map.of("properties", Map.of("zones", Map.of("items", stated)));
        all.add(Map.of("anyOf", List.of(stated, inZones)));
      }
    }
    return all;
  }

  private static Map<String, Object> stating(String entry, Map<String, Object> schema) {
    Map<String, Object> stating = new LinkedHashMap<>(required(entry));
    stating.put("properties", Map.of(entry, schema));
    return stating;
  }

  private static Map<String, Object> required(String name) {
    return Map.of("required", List.of(name));
  }

  private static Map<String, Object> sizing() {
    Map<String, Object> setting = Map.of("type", List.of("string", "number", "boolean"));
    Map<String, Object> method = ordered("type", "object", "additionalProperties", setting);
    return ordered("type", "object", "additionalProperties", method);
  }

  private static Map<String, Object> name() {
    Map<String, Object> name = ordered("type", "string", "minLength", 1);
    name.put("maxLength", PlainText.LONGEST_NAME);
    return name;
  }

  private static Map<String, Object> note() {
    return ordered("type", "string", "maxLength", PlainText.LONGEST_NOTE);
  }

  private static Map<String, Object> text(String pattern) {
    return ordered("type", "string", "pattern", pattern);
  }

  private static Map<String, Object> list(Map<String, Object> items, int least) {
    Map<String, Object> list = ordered("type", "array", "items", items);
    if (least > 0) {
      list.put("minItems", least);
    }
    return list;
  }

  private static Map<String, Object> object(Map<String, Object> properties, List<String> required) {
    Map<String, Object> object = ordered("type", "object", "additionalProperties", false);
    if (!required.isEmpty()) {
      object.put("required", required);
    }
    object.put("properties", properties);
    return object;
  }

  private static Map<String, Object> reference(String name) {
    return Map.of(REFERENCE, "#/$defs/" + name);
  }

  private static Map<String, Object> ordered(
      String first, Object one, String second, Object other) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put(first, one);
    map.put(second, other);
    return map;
  }
}
