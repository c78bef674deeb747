package underhold.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import underhold.quantity.Measure;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;

/** Reads the tables of a rule pack: limits, sources, weights. */
final class PackTables {
  private final List<PackProblem> problems;

  PackTables(List<PackProblem> problems) {
    this.problems = problems;
  }

  Limits limits(JsonNode table) {
    List<Limit> limits = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (JsonNode node : table.path("limits")) {
      String name = node.path("name").asString("");
      if (!names.add(name)) {
        limit(name, "stands twice");
        continue;
      }
      Optional<Measure> measure = measure(name, node.path("measure").asString(""));
      Optional<Basis> basis = Basis.find(node.path("basis").asString(""));
      if (basis.isEmpty()) {
        limit(name, "has no basis");
      }
      if (node.path("label").asString("").isBlank()) {
        limit(name, "has no label");
      }
      if (measure.isEmpty() || basis.isEmpty()) {
        continue;
      }
      Optional<Quantity> value = quantity(name, node.path("value").asString(""), measure.get());
      List<Quantity> plausible = new ArrayList<>();
      node.path("plausible")
          .forEach(
              end -> quantity(name, end.asString(""), measure.get()).ifPresent(plausible::add));
      if (!plausible.isEmpty()
          && (plausible.size() != 2 || plausible.get(0).si() >= plausible.get(1).si())) {
        limit(name, "has a plausible range that is not a least and a greatest value");
      }
      value.ifPresent(
          quantity ->
              limits.add(
                  new Limit(
                      name,
                      node.path("label").asString(""),
                      quantity,
                      node.path("fine").asBoolean(false),
                      basis.get(),
                      node.path("source").asString(""),
                      node.path("note").asString(""),
                      plausible)));
    }
    return new Limits(limits);
  }

  Map<String, Source> sources(JsonNode table) {
    Map<String, Source> sources = new LinkedHashMap<>();
    for (JsonNode node : table.path("sources")) {
      String key = node.path("key").asString("");
      JsonNode year = node.get("year");
      Source source =
          new Source(
              key,
              node.path("title").asString(""),
              node.path("kind").asString(""),
              year == null ? null : year.asString(),
              node.path("read").asString(""),
              node.path("extent").asString(""));
      if (key.isBlank() || source.title().isBlank() || source.read().isBlank()) {
        problems.add(
            new PackProblem("sources.json", 0, "a source needs key, title and read: " + key));
      }
      if (sources.put(key, source) != null) {
        problems.add(new PackProblem("sources.json", 0, key + " stands twice"));
      }
    }
    return sources;
  }

  RulePack.Weights weights(JsonNode table) {
    Map<Strength, Integer> points = new EnumMap<>(Strength.class);
    for (Strength strength : Strength.values()) {
      int value = table.path("weights").path(strength.word()).asInt(-1);
      if (value < 0) {
        problems.add(new PackProblem("strengths.json", 0, "no weight for " + strength.word()));
      }
      points.put(strength, value);
    }
    List<SupportOption> order = new ArrayList<>();
    table
        .path("costOrder")
        .forEach(id -> SupportOption.find(id.asString("")).ifPresent(order::add));
    if (order.size() != SupportOption.values().length - 1
        || new HashSet<>(order).size() != order.size()) {
      problems.add(
          new PackProblem("strengths.json", 0, "costOrder names every option but refer once"));
    }
    return new RulePack.Weights(points, table.path("tie").asInt(0), order);
  }

  private Optional<Measure> measure(String name, String word) {
    for (Measure measure : Measure.values()) {
      if (measure.name().equals(word)) {
        return Optional.of(measure);
      }
    }
    limit(name, "has no measure");
    return Optional.empty();
  }

  private Optional<Quantity> quantity(String name, String text, Measure measure) {
    return Quantity.parse(text, measure)
        .fold(
            parsed -> Optional.of(parsed.quantity()),
            (ParsedQuantity.Rejected rejected) -> {
              limit(name, rejected.explanation());
              return Optional.empty();
            });
  }

  private void limit(String name, String message) {
    problems.add(new PackProblem("limits.json", 0, "the limit " + name + " " + message));
  }
}
