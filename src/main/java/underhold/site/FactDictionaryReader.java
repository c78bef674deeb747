package underhold.site;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.quantity.Measure;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;

/** Reads the fact dictionary from its resource. */
final class FactDictionaryReader {
  private FactDictionaryReader() {}

  static List<FactDefinition> read(InputStream in) {
    List<FactDefinition> definitions = new ArrayList<>();
    for (JsonNode node : JsonMapper.shared().readTree(in).get("facts")) {
      definitions.add(definition(definitions.size(), node));
    }
    return definitions;
  }

  private static FactDefinition definition(int index, JsonNode node) {
    FactKind kind = kind(text(node, "kind"));
    boolean derived = node.path("derived").asBoolean(false);
    return new FactDefinition(
        index,
        text(node, "name"),
        text(node, "label"),
        FactDefinition.Scope.valueOf(text(node, "scope").toUpperCase(Locale.ROOT)),
        text(node, "group"),
        kind,
        text(node, "question"),
        text(node, "why"),
        values(kind, node),
        range(kind, node),
        strings(node.path("options")),
        derived ? null : unknown(node.get("unknown")),
        node.path("findOut").asString(""),
        node.path("required").asBoolean(false),
        derived,
        strings(node.path("askInstead")),
        node.path("core").asInt(0));
  }

  private static FactKind kind(String word) {
    return switch (word) {
      case "choice" -> FactKind.CHOICE;
      case "yesNo" -> FactKind.YES_NO;
      case "quantity" -> FactKind.QUANTITY;
      case "slope" -> FactKind.SLOPE;
      default -> throw new IllegalArgumentException("no such kind of fact: " + word);
    };
  }

  private static List<FactDefinition.Allowed> values(FactKind kind, JsonNode node) {
    if (kind == FactKind.YES_NO) {
      return List.of(
          new FactDefinition.Allowed("yes", "yes"), new FactDefinition.Allowed("no", "no"));
    }
    List<FactDefinition.Allowed> values = new ArrayList<>();
    for (JsonNode value : node.path("values")) {
      values.add(new FactDefinition.Allowed(text(value, "value"), text(value, "means")));
    }
    return values;
  }

  private static FactDefinition.@Nullable Range range(FactKind kind, JsonNode node) {
    if (!kind.isNumber()) {
      return null;
    }
    String min = text(node, "min");
    String max = text(node, "max");
    if (kind == FactKind.SLOPE) {
      return new FactDefinition.Range(
          Measure.RATIO,
          "",
          "",
          false,
          Slope.parse(min).orElseThrow().si(),
          Slope.parse(max).orElseThrow().si(),
          min,
          max);
    }
    Measure measure = Measure.valueOf(text(node, "measure"));
    List<String> units = strings(node.get("units"));
    return new FactDefinition.Range(
        measure,
        units.get(0),
        units.get(units.size() - 1),
        node.path("fine").asBoolean(false),
        quantity(min, measure).si(),
        quantity(max, measure).si(),
        min,
        max);
  }

  private static Quantity quantity(String text, Measure measure) {
    return Quantity.parse(text, measure)
        .fold(
            ParsedQuantity.Parsed::quantity,
            rejected -> {
              throw new IllegalArgumentException(rejected.message());
            });
  }

  private static Unknown unknown(JsonNode node) {
    List<Unknown.Case> cases = new ArrayList<>();
    for (JsonNode item : node.path("cases")) {
      Map<String, Set<String>> when = new LinkedHashMap<>();
      for (Map.Entry<String, JsonNode> entry : item.get("when").properties()) {
        when.put(entry.getKey(), new LinkedHashSet<>(strings(entry.getValue())));
      }
      cases.add(new Unknown.Case(when, text(item, "value"), text(item, "because")));
    }
    JsonNode value = node.get("value");
    return new Unknown(
        Unknown.Treatment.valueOf(text(node, "treatment").toUpperCase(Locale.ROOT)),
        value == null ? null : value.asString(),
        text(node, "because"),
        cases);
  }

  private static String text(JsonNode node, String name) {
    return node.get(name).asString();
  }

  private static List<String> strings(JsonNode array) {
    List<String> strings = new ArrayList<>();
    array.forEach(item -> strings.add(item.asString()));
    return strings;
  }
}
