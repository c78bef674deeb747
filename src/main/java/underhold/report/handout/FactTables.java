package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.quantity.Quantity;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.GroundLayer;
import underhold.site.StatedFact;

/** Facts and ground as tables: what is known in words, and what can be asked for by name. */
final class FactTables {
  private static final String NOT_EXPLORED = "The ground is not explored yet.";

  private FactTables() {}

  /** What is known, fact by fact in the order of the dictionary. */
  static Block known(
      String caption, Map<String, StatedFact> facts, FactDictionary dictionary, String none) {
    List<Block.Row> rows = new ArrayList<>();
    for (FactDefinition definition : dictionary.all()) {
      StatedFact fact = facts.get(definition.name());
      if (fact != null) {
        rows.add(
            Block.Row.of(
                Prose.of(Words.sentence(definition.label())),
                Prose.of(value(definition, fact)),
                Pieces.typed(definition.name())));
      }
    }
    return Pieces.table(caption, Pieces.columns("Fact", "What is known", "Its name"), rows, none);
  }

  /** The value as typed, a word of the dictionary with what it means. */
  private static String value(FactDefinition definition, StatedFact fact) {
    if (fact.value() == null) {
      return "nobody knows";
    }
    String text = fact.value().text();
    return definition
        .allowed(text)
        .map(FactDefinition.Allowed::means)
        .filter(means -> !means.isBlank() && !means.equals(text))
        .map(means -> text + ": " + means)
        .orElse(text);
  }

  /** The layers of the ground. */
  static Block ground(String caption, List<GroundLayer> layers) {
    List<Block.Row> rows = new ArrayList<>();
    for (GroundLayer layer : layers) {
      rows.add(
          Block.Row.of(
              Prose.of(layer.top().text()), Prose.of(soil(layer.soil())), Prose.of(more(layer))));
    }
    return Pieces.table(caption, Pieces.columns("From", "Soil", "Measured"), rows, NOT_EXPLORED);
  }

  private static String soil(String word) {
    return FactDictionary.standard()
        .require("soilAtFooting")
        .allowed(word)
        .map(FactDefinition.Allowed::means)
        .map(means -> word + ": " + means)
        .orElse(word);
  }

  private static String more(GroundLayer layer) {
    String text =
        Stream.of(
                named("unit weight", layer.maybeUnitWeight()),
                named("undrained strength", layer.maybeUndrainedStrength()),
                named("friction angle", Optional.ofNullable(layer.frictionAngle())),
                named("cohesion", Optional.ofNullable(layer.cohesion())),
                named("blow count N60", Optional.ofNullable(layer.n60())),
                named("unconfined strength", Optional.ofNullable(layer.unconfinedStrength())),
                named("rock quality RQD", Optional.ofNullable(layer.rqd())),
                named("permeability", layer.maybePermeability()),
                layer.maybeStandUp().map(word -> "face stands: " + word))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    return text.isEmpty() ? "nothing" : text;
  }

  private static Optional<String> named(String what, Optional<Quantity> value) {
    return value.map(quantity -> what + " " + quantity.text());
  }

  /** Every fact of the dictionary that can be stated, group by group, less those known already. */
  static List<Block> byName(Predicate<String> known) {
    List<Block> blocks = new ArrayList<>();
    Map<String, List<FactDefinition>> groups =
        FactDictionary.standard().all().stream()
            .filter(one -> !one.derived() && !known.test(one.name()))
            .collect(
                Collectors.groupingBy(
                    FactDefinition::group, java.util.LinkedHashMap::new, Collectors.toList()));
    groups.forEach(
        (group, facts) ->
            blocks.add(
                new Block.Table(
                    Words.sentence(group),
                    Pieces.columns("Name", "What it is", "How it is told"),
                    facts.stream()
                        .map(
                            one ->
                                Block.Row.of(
                                    Pieces.typed(one.name()),
                                    Prose.of(one.label()),
                                    Prose.of(told(one))))
                        .toList())));
    return blocks;
  }

  private static String told(FactDefinition fact) {
    return fact.kind().isNumber()
        ? "an amount" + unit(fact)
        : Words.either(fact.values().stream().map(FactDefinition.Allowed::value).toList());
  }

  private static String unit(FactDefinition fact) {
    FactDefinition.Range range = fact.requireRange();
    return range.siUnit().isEmpty() ? "" : " in " + range.siUnit();
  }
}
