package underhold.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import underhold.quantity.Measure;

/** The text of a site file; equal sites have equal texts. */
final class SiteText {
  private static final Pattern INTEGER = Pattern.compile("0|[1-9][0-9]{0,8}");

  private final FactDictionary dictionary;

  SiteText(FactDictionary dictionary) {
    this.dictionary = dictionary;
  }

  String of(Site site) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("underhold", SiteSection.VERSION);
    root.put("name", site.name());
    root.put("units", site.units().name());
    putNote(root, site.note());
    if (!site.facts().isEmpty()) {
      root.put("facts", facts(site.facts()));
    }
    putGround(root, site.ground());
    List<Object> zones = new ArrayList<>();
    site.zones().forEach(zone -> zones.add(zone(zone)));
    root.put("zones", zones);
    if (!site.relations().isEmpty()) {
      List<Object> relations = new ArrayList<>();
      site.relations().forEach(relation -> relations.add(relation(relation)));
      root.put(RelationSection.ENTRY, relations);
    }
    if (!site.sizing().isEmpty()) {
      Map<String, Object> sizing = new TreeMap<>();
      site.sizing().forEach((method, values) -> sizing.put(method, new TreeMap<>(values)));
      root.put("sizing", sizing);
    }
    return JsonText.of(root);
  }

  private Map<String, Object> zone(Zone zone) {
    Map<String, Object> node = new LinkedHashMap<>();
    node.put("name", zone.name());
    putNote(node, zone.note());
    if (!zone.facts().isEmpty()) {
      node.put("facts", facts(zone.facts()));
    }
    putGround(node, zone.ground());
    return node;
  }

  private static Map<String, Object> relation(Relation relation) {
    Map<String, Object> node = new LinkedHashMap<>();
    node.put(RelationSection.ZONES, List.of(relation.first(), relation.second()));
    putNote(node, relation.note());
    if (!relation.facts().isEmpty()) {
      node.put("facts", facts(relation.facts(), FactDictionary.pairs()));
    }
    return node;
  }

  private Map<String, Object> facts(Map<String, StatedFact> facts) {
    return facts(facts, dictionary);
  }

  /** The facts in the order of the dictionary. */
  private static Map<String, Object> facts(
      Map<String, StatedFact> facts, FactDictionary dictionary) {
    Map<String, Object> node = new LinkedHashMap<>();
    for (FactDefinition definition : dictionary.all()) {
      StatedFact fact = facts.get(definition.name());
      if (fact != null) {
        node.put(definition.name(), fact(fact));
      }
    }
    return node;
  }

  private static Object fact(StatedFact fact) {
    FactValue value = fact.value();
    Object typed = value == null ? FactReader.UNKNOWN : value(value);
    if (fact.note().isEmpty()) {
      return typed;
    }
    Map<String, Object> node = new LinkedHashMap<>();
    node.put("value", typed);
    node.put("note", fact.note());
    return node;
  }

  /** A count is written as a number, everything else as the text typed. */
  private static Object value(FactValue value) {
    boolean count =
        value instanceof FactValue.Amount amount
            && amount.quantity().measure() == Measure.COUNT
            && INTEGER.matcher(value.text()).matches();
    return count ? Integer.valueOf(value.text()) : value.text();
  }

  private static void putGround(Map<String, Object> node, GroundProfile ground) {
    if (ground.isEmpty()) {
      return;
    }
    List<Object> layers = new ArrayList<>();
    for (GroundLayer layer : ground.layers()) {
      Map<String, Object> values = new LinkedHashMap<>();
      LayerValues.of(layer).forEach((name, value) -> values.put(name, value(value)));
      putNote(values, layer.note());
      layers.add(values);
    }
    node.put("ground", Map.of("layers", layers));
  }

  private static void putNote(Map<String, Object> node, String note) {
    if (!note.isEmpty()) {
      node.put("note", note);
    }
  }
}
