package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.advice.Condition;
import underhold.advice.Effect;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.report.Program;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** The rules and limits this package speaks of, as they are written. */
final class RulesAppendix {
  private final Material material;
  private final Citations citations;

  RulesAppendix(Material material, Citations citations) {
    this.material = material;
    this.citations = citations;
  }

  /**
   * The appendix.
   *
   * @param targets what the sections before it lead to
   * @param anchors their anchors, to lead back to
   */
  Section section(Set<String> targets, Set<String> anchors) {
    List<Rule> rules =
        material.pack().all().stream()
            .filter(rule -> targets.contains(Anchor.rule(rule.id())))
            .toList();
    List<Limit> limits =
        material.pack().limits().all().stream()
            .filter(
                limit ->
                    targets.contains(Citations.limit(limit.name()))
                        || rules.stream().anyMatch(rule -> compares(rule, limit)))
            .toList();
    return Section.of(
        "rules",
        "Appendix: the rules as written",
        List.of(
            Cells.paragraph(
                "Rule pack "
                    + Program.rules(material.pack())
                    + "."
                    + " A rule fires where all its conditions hold."),
            Cells.table(
                "Rules",
                Cells.columns("Rule, and below it as written", "Basis and sources", "Fired at"),
                rules.stream().map(rule -> rule(rule, anchors)).toList(),
                "No rule is spoken of."),
            Cells.table(
                "Limits",
                List.of(
                    Block.Column.words("Limit"),
                    Block.Column.amounts("Value"),
                    Block.Column.words("Basis and sources")),
                limits.stream().map(this::limit).toList(),
                "No limit is spoken of.")));
  }

  private static boolean compares(Rule rule, Limit limit) {
    return rule.conditions().stream()
        .map(Condition::limit)
        .anyMatch(name -> limit.name().equals(name));
  }

  private Block.Row rule(Rule rule, Set<String> anchors) {
    return Cells.row(
            Anchor.rule(rule.id()),
            Block.Tone.PLAIN,
            Prose.empty().strong(rule.id()).then(" " + rule.sentence()),
            citations.of(rule),
            fired(rule, anchors))
        .noting(written(rule));
  }

  private static String says(Effect effect) {
    return switch (effect) {
      case RULE_OUT -> "rules out";
      case AGAINST -> "speaks against";
      case FOR, REFER -> "speaks for";
      case REQUIRE -> "sets a condition for";
      case CAUTION -> "warns about";
      case DERIVE -> "derives";
    };
  }

  /** The rule as its file has it. */
  private static Prose written(Rule rule) {
    return Prose.of("When ")
        .typed(rule.conditions().stream().map(Condition::text).collect(Collectors.joining(", ")))
        .then(
            " it "
                + says(rule.effect())
                + Words.about(rule)
                + Optional.ofNullable(rule.action().strength())
                    .map(strength -> ", " + strength.word())
                    .orElse("")
                + "; cause: "
                + rule.cause()
                + "; "
                + rule.file()
                + ", line "
                + rule.line()
                + ".");
  }

  private Prose fired(Rule rule, Set<String> anchors) {
    List<Prose> fired = new ArrayList<>();
    List<Prose> nearly = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      String label = String.valueOf(zone.number());
      add(fired, label, Anchor.trace(zone.number(), rule.id()), anchors);
      add(nearly, label, Anchor.near(zone.number(), rule.id()), anchors);
    }
    List<Prose> between = new ArrayList<>();
    int pairs = material.madeScheme().map(scheme -> scheme.best().findings().size()).orElse(0);
    for (int place = 1; place <= pairs; place++) {
      add(between, "between zones", Anchor.between(place, rule.id()), anchors);
    }
    List<Prose> places = new ArrayList<>();
    in(places, "zone ", "zones ", fired);
    places.addAll(between);
    in(places, "nearly zone ", "nearly zones ", nearly);
    return places.isEmpty() ? Prose.of("nowhere here") : Cells.joined(places, ", ");
  }

  private static void in(List<Prose> places, String one, String several, List<Prose> zones) {
    if (!zones.isEmpty()) {
      places.add(Prose.of(zones.size() == 1 ? one : several).then(Cells.joined(zones, ", ")));
    }
  }

  private static void add(List<Prose> places, String label, String anchor, Set<String> anchors) {
    if (anchors.contains(anchor)) {
      places.add(Prose.empty().link(label, anchor));
    }
  }

  private Block.Row limit(Limit limit) {
    Block.Row row =
        Cells.row(
            Citations.limit(limit.name()),
            Block.Tone.PLAIN,
            Prose.of(limit.label() + " (").typed(limit.name()).then(")"),
            Prose.of(Cells.amount(limit.text(material.units()), limit.value().measure())),
            citations.of(limit));
    return limit.note().isEmpty() ? row : row.noting(Prose.of(limit.note()));
  }
}
