package underhold.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.PlainText;

/** Reads the sources and weights of a rule pack, alone or over those of the pack built in. */
final class PackTables {
  static final String SOURCES = "sources.json";
  static final String STRENGTHS = "strengths.json";

  private static final List<String> SOURCE_FIELDS =
      List.of("key", "title", "kind", "year", "read", "extent");
  private static final List<String> READ = List.of("in whole", "in part", Source.NOT_READ);

  private final List<PackProblem> problems;
  private final @Nullable RulePack base;

  PackTables(List<PackProblem> problems, @Nullable RulePack base) {
    this.problems = problems;
    this.base = base;
  }

  Map<String, Source> sources(PackNode table) {
    PackFields fields = new PackFields(SOURCES, problems);
    fields.only(table, "the table of sources", List.of("note", "sources"));
    Map<String, Source> sources = new LinkedHashMap<>(base == null ? Map.of() : base.sources());
    Set<String> seen = new HashSet<>();
    for (PackNode node : fields.objects(table, "sources")) {
      fields.only(node, "a source", SOURCE_FIELDS);
      String key = fields.text(node, "key").orElse("");
      Source source =
          new Source(
              key,
              fields.text(node, "title").orElse(""),
              fields.text(node, "kind").orElse(""),
              fields.text(node, "year").orElse(null),
              fields.text(node, "read").orElse(""),
              fields.text(node, "extent").orElse(""));
      if (!key.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,59}") || source.title().isBlank()) {
        fields.problem(
            node.line(),
            "a source needs a title, and a key of letters, digits, dots and hyphens: "
                + PlainText.quoted(key));
      }
      if (!READ.contains(source.read())) {
        fields.problem(
            node.line(),
            "the source "
                + PlainText.shown(key)
                + " says under read what was read of it: "
                + String.join(", ", READ));
      }
      if (!seen.add(key)) {
        fields.problem(node.line(), PlainText.shown(key) + " stands twice");
      }
      sources.put(key, source);
    }
    return sources;
  }

  RulePack.Weights weights(PackNode table) {
    PackFields fields = new PackFields(STRENGTHS, problems);
    fields.only(
        table, "the table of strengths", List.of("note", "basis", "weights", "tie", "costOrder"));
    PackNode weights = fields.field(table, "weights", PackNode.Kind.OBJECT).orElse(PackNode.none());
    List<String> words = java.util.Arrays.stream(Strength.values()).map(Strength::word).toList();
    fields.only(weights, "weights", words);
    Map<Strength, Integer> points = new EnumMap<>(Strength.class);
    for (Strength strength : Strength.values()) {
      OptionalInt value = fields.whole(weights, strength.word());
      if (value.isPresent()) {
        points.put(strength, value.getAsInt());
      } else if (base != null) {
        points.put(strength, base.weights().of(strength));
      } else {
        fields.problem(weights.line(), "no weight for " + strength.word());
      }
    }
    checkOrder(points, weights.line(), fields);
    OptionalInt tie = fields.whole(table, "tie");
    if (tie.isEmpty() && base == null) {
      fields.problem(table.line(), "no tie: the points up to which two options are called a tie");
    }
    return new RulePack.Weights(
        points, tie.orElse(base == null ? 0 : base.weights().tie()), costOrder(table, fields));
  }

  /** Findings would be counted upside down, or not at all. */
  private static void checkOrder(Map<Strength, Integer> points, int line, PackFields fields) {
    if (points.size() < Strength.values().length) {
      return;
    }
    int above = Integer.MAX_VALUE;
    for (Strength strength : Strength.values()) {
      int value = points.getOrDefault(strength, 0);
      if (value > above) {
        fields.problem(
            line,
            strength.word()
                + " weighs "
                + value
                + ", more than the strength above it: decisive >= major >= moderate >= minor");
      }
      above = value;
    }
    if (points.getOrDefault(Strength.DECISIVE, 0) == 0) {
      fields.problem(line, "decisive weighs nothing, so nothing could be ranked");
    }
  }

  private List<SupportOption> costOrder(PackNode table, PackFields fields) {
    if (base != null && !table.members().containsKey("costOrder")) {
      return base.weights().costOrder();
    }
    List<SupportOption> order = new ArrayList<>();
    List<PackNode> named = fields.texts(table, "costOrder");
    for (PackNode node : named) {
      Optional<SupportOption> option = SupportOption.find(node.text());
      option.ifPresent(order::add);
      if (option.isEmpty()) {
        fields.problem(
            node.line(),
            "there is no option "
                + PlainText.quoted(node.text())
                + PackFields.nearest(node.text(), SupportOption.ids()));
      }
    }
    int wanted = SupportOption.values().length - 1;
    if (order.size() != wanted
        || new LinkedHashSet<>(order).size() != wanted
        || order.contains(SupportOption.REFER)) {
      fields.problem(table.line(), "costOrder names every option but refer once");
    }
    return order;
  }
}
