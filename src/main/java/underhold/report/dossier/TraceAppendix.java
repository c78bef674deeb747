package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.advice.Limit;
import underhold.advice.Matched;
import underhold.advice.MatchedLimit;
import underhold.advice.NearMiss;
import underhold.advice.Screening;
import underhold.advice.SupportOption;
import underhold.advice.Truth;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Every rule that fired in every zone, with the facts and limits it matched, and the near ones. */
final class TraceAppendix {
  private static final List<Block.Column> FIRED =
      Cells.columns("Rule", "What it states, and where it is told", "Facts and limits");

  private final Material material;
  private final Set<String> anchors;

  /**
   * The appendix.
   *
   * @param anchors the anchors of all sections before it, to lead back to
   */
  TraceAppendix(Material material, Set<String> anchors) {
    this.material = material;
    this.anchors = anchors;
  }

  Section section() {
    return new Section(
        "trace",
        "Appendix: trace of the rules",
        List.of(
            Cells.paragraph(
                "Every rule that fired, in the order of the rules, and every rule that nearly did."
                    + " What fires only on assumed facts warns and asks; it never counts."
                    + " The rule's sentence and its sources stand where its number leads, how a fact"
                    + " follows where the fact leads. What is told nowhere else names no place.")),
        material.zones().stream().map(this::zone).toList());
  }

  private Section zone(ZonePart zone) {
    Screening screening = zone.advice().screening();
    List<Block> blocks = new ArrayList<>();
    fired(blocks, zone, "Facts that rules derived", screening.derivations());
    fired(blocks, zone, "Rules that fired on known facts", screening.findings());
    fired(blocks, zone, "Rules that fire only on assumed facts", screening.assumed());
    if (!screening.nearMisses().isEmpty()) {
      blocks.add(
          new Block.Table(
              "Rules that failed by one condition",
              Cells.columns("Rule", "What it would state", "What stood in its way"),
              screening.nearMisses().stream().map(miss -> near(zone, miss)).toList()));
    }
    if (!screening.conflicts().isEmpty()) {
      blocks.add(Cells.paragraph("Rules that disagree:"));
      blocks.add(Cells.list(screening.conflicts()));
    }
    return Section.of("trace-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private void fired(List<Block> blocks, ZonePart zone, String caption, List<Finding> findings) {
    if (!findings.isEmpty()) {
      blocks.add(
          new Block.Table(
              caption, FIRED, findings.stream().map(finding -> row(zone, finding)).toList()));
    }
  }

  private Block.Row row(ZonePart zone, Finding finding) {
    String id = finding.rule().id();
    return Cells.row(
        Anchor.trace(zone.number(), id),
        Block.Tone.PLAIN,
        Prose.empty().link(id, Anchor.rule(id)),
        Prose.of(
                Words.verb(finding.effect())
                    + Words.about(finding.rule())
                    + ": "
                    + finding.reason()
                    + " "
                    + Words.tag(finding, true).replace(", " + id, ""))
            .then(told(zone, id)),
        grounds(zone, finding));
  }

  private Prose grounds(ZonePart zone, Finding finding) {
    List<Prose> grounds = new ArrayList<>();
    finding.facts().forEach(fact -> grounds.add(fact(zone, fact)));
    finding.limits().forEach(limit -> grounds.add(limit(limit)));
    return grounds.isEmpty() ? Prose.of("none") : Cells.joined(grounds, "; ");
  }

  private Prose fact(ZonePart zone, Matched fact) {
    boolean told = fact.how().isEmpty() || places(zone, fact.name()).anyMatch(anchors::contains);
    return lead(fact.label(), places(zone, fact.name()))
        .then(" " + fact.value() + " (" + fact.origin().word())
        .then((told ? "" : ": " + fact.how()) + ")");
  }

  private static Stream<String> places(ZonePart zone, String fact) {
    return Stream.of(
        Anchor.fact(zone.number(), fact),
        Anchor.fact(0, fact),
        Anchor.assumed(zone.number(), fact));
  }

  /** Words that lead to the first of the places that there is. */
  private Prose lead(String words, Stream<String> places) {
    return places
        .filter(anchors::contains)
        .findFirst()
        .map(place -> Prose.empty().link(words, place))
        .orElse(Prose.of(words));
  }

  private Prose limit(MatchedLimit matched) {
    Limit limit = material.pack().limits().require(matched.name());
    return Prose.empty()
        .link("limit: " + matched.label(), Citations.limit(limit.name()))
        .then(" " + matched.value() + " (" + matched.basis().notice() + ")");
  }

  private Prose told(ZonePart zone, String rule) {
    List<Prose> places = new ArrayList<>();
    for (SupportOption option : SupportOption.values()) {
      add(places, option.label(), Anchor.reason(zone.number(), option, rule));
    }
    add(places, "conditions", Anchor.condition(zone.number(), rule));
    add(places, "cautions", Anchor.caution(zone.number(), rule));
    return places.isEmpty()
        ? Prose.empty()
        : Prose.of(" Told at: ").then(Cells.joined(places, ", ")).then(".");
  }

  private void add(List<Prose> places, String label, String anchor) {
    if (anchors.contains(anchor)) {
      places.add(Prose.empty().link(label, anchor));
    }
  }

  private static Block.Row near(ZonePart zone, NearMiss miss) {
    String id = miss.rule().id();
    return Cells.row(
        Anchor.near(zone.number(), id),
        miss.truth() == Truth.OPEN ? Block.Tone.DOUBT : Block.Tone.PLAIN,
        Prose.empty().link(id, Anchor.rule(id)),
        Prose.of(Words.verb(miss.rule().effect()) + Words.about(miss.rule())),
        Prose.of(
            (miss.truth() == Truth.OPEN ? "open: " : "failed: ")
                + Cells.sentence(miss.explanation())));
  }
}
