package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.advice.Condition;
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
                Cells.columns("Rule", "As written", "Basis and sources", "Fired at"),
                rules.stream().map(rule -> rule(rule, anchors)).toList(),
                "No rule is spoken of."),
            Cells.table(
                "Limits",
                List.of(
                    Block.Column.words("Limit"),
                    Block.Column.amounts("Value"),
                    Block.Column.words("Basis and sources"),
                    Block.Column.words("Where sources differ")),
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
        Prose.of("when ")
            .typed(
                rule.conditions().stream().map(Condition::text).collect(Collectors.joining(", ")))
            .then(
                " it "
                    + Words.verb(rule.effect())
                    + Words.about(rule)
                    + Optional.ofNullable(rule.action().strength())
                        .map(strength -> ", " + strength.word())
                        .orElse("")
                    + "; cause: "
                    + rule.cause()
                    + "; stands in "
                    + rule.file()
                    + ", line "
                    + rule.line()),
        citations.of(rule),
        fired(rule, anchors));
  }

  private Prose fired(Rule rule, Set<String> anchors) {
    List<Prose> places = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      add(places, zone.name(), Anchor.trace(zone.number(), rule.id()), anchors);
      add(places, zone.name() + " (nearly)", Anchor.near(zone.number(), rule.id()), anchors);
    }
    int pairs = material.madeScheme().map(scheme -> scheme.best().findings().size()).orElse(0);
    for (int place = 1; place <= pairs; place++) {
      add(places, "between zones", Anchor.between(place, rule.id()), anchors);
    }
    return places.isEmpty() ? Prose.of("nowhere here") : Cells.joined(places, ", ");
  }

  private static void add(List<Prose> places, String label, String anchor, Set<String> anchors) {
    if (anchors.contains(anchor)) {
      places.add(Prose.empty().link(label, anchor));
    }
  }

  private Block.Row limit(Limit limit) {
    return Cells.row(
        Citations.limit(limit.name()),
        Block.Tone.PLAIN,
        Prose.of(limit.label() + " (").typed(limit.name()).then(")"),
        Prose.of(Cells.amount(limit.text(material.units()), limit.value().measure())),
        citations.of(limit),
        Prose.of(limit.note()));
  }
}
