package underhold.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.site.FileNode.Kind;
import underhold.site.SiteProblem.Code;

/** Reads the facts of a site or zone, and any other value that is described as a fact. */
final class FactSection {
  private final FactDictionary dictionary;
  private final List<String> names;
  private final Problems problems;

  FactSection(FactDictionary dictionary, Problems problems) {
    this.dictionary = dictionary;
    this.names = dictionary.all().stream().map(FactDefinition::name).toList();
    this.problems = problems;
  }

  /** The facts stated; one that could not be read counts as unknown until it is put right. */
  Map<String, StatedFact> read(FileNode node, String place) {
    Map<String, StatedFact> facts = new LinkedHashMap<>();
    ObjectEntries entries = ObjectEntries.of(node, place, names, problems);
    entries
        .all()
        .forEach(
            (name, value) -> {
              FactDefinition definition = dictionary.require(name);
              if (definition.derived()) {
                derivedNotStated(definition, entries.placeOf(name));
              } else {
                facts.put(name, stated(definition, value, entries.placeOf(name)));
              }
            });
    return facts;
  }

  private void derivedNotStated(FactDefinition definition, String place) {
    List<String> sources = Derivations.sources(definition.name());
    problems.add(
        Code.DERIVED_NOT_STATED,
        place,
        definition.label()
            + " is never stated; it follows "
            + (sources.isEmpty()
                ? "by rule from other facts"
                : "from " + String.join(", ", sources)),
        "leave it out");
  }

  private StatedFact stated(FactDefinition definition, FileNode node, String place) {
    if (node.kind() != Kind.OBJECT) {
      return new StatedFact(value(definition, node, place, problems).orElse(null), "");
    }
    ObjectEntries entries = ObjectEntries.of(node, place, List.of("value", "note"), problems);
    if (entries.entry("value").isEmpty()) {
      entries.missing("value", definition.label() + " has no value", "add \"value\": \"unknown\"");
    }
    Optional<FactValue> value =
        entries
            .entry("value")
            .flatMap(typed -> value(definition, typed, entries.placeOf("value"), problems));
    return new StatedFact(value.orElse(null), entries.note());
  }

  /** The value of a node; empty where it says unknown or, with a problem, cannot be read. */
  static Optional<FactValue> value(
      FactDefinition definition, FileNode node, String place, Problems problems) {
    problems.visit(place, node);
    boolean fits =
        switch (node.kind()) {
          case TEXT -> true;
          case NUMBER -> definition.kind() == FactKind.QUANTITY;
          case BOOLEAN -> definition.kind() == FactKind.YES_NO;
          case OBJECT, LIST, NULL -> false;
        };
    if (!fits) {
      problems.add(
          Code.WRONG_TYPE,
          place,
          "this is " + node.kind().phrase() + "; " + needed(definition) + " is needed",
          node.kind() == Kind.NULL ? "leave the fact out or type \"unknown\"" : "");
      return Optional.empty();
    }
    return FactReader.read(definition, node.text())
        .fold(
            Optional::of,
            Optional::empty,
            rejected -> {
              problems.add(rejected.code(), place, rejected.message(), rejected.suggestion());
              return Optional.empty();
            });
  }

  private static String needed(FactDefinition definition) {
    return switch (definition.kind()) {
      case CHOICE -> "one of the words of " + definition.label();
      case YES_NO -> "yes or no";
      case QUANTITY ->
          definition.requireRange().measure().phrase()
              + " such as \""
              + definition.requireRange().measure().example()
              + "\"";
      case SLOPE -> "a slope such as \"1 in 500\"";
    };
  }
}
