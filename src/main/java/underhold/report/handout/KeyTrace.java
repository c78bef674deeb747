package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.advice.NearMiss;
import underhold.advice.Screening;
import underhold.advice.Truth;
import underhold.classroom.CaseStudy;
import underhold.classroom.KeyMaker;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.site.Zone;

/** Every rule that fired once all is known, with the facts and limits it matched. */
final class KeyTrace {
  private final CaseStudy study;
  private final KeyMaker keys;
  private final Sources sources;

  KeyTrace(CaseStudy study, KeyMaker keys, Sources sources) {
    this.study = study;
    this.keys = keys;
    this.sources = sources;
  }

  Section section() {
    int last = study.stages().size() - 1;
    List<Section> parts = new ArrayList<>();
    for (Zone zone : study.full().zones()) {
      Screening screening = keys.of(study, last, Set.of(), zone.name()).advice().screening();
      parts.add(Section.of("trace-" + (parts.size() + 1), "Zone: " + zone.name(), zone(screening)));
    }
    return new Section(
        "trace",
        "Appendix: trace of the rules once all is known",
        List.of(
            Pieces.paragraph(
                "What fires only on assumed facts warns and asks; it never counts. trace on a site"
                    + " file of these facts shows the same on the screen.")),
        parts);
  }

  private List<Block> zone(Screening screening) {
    List<Block> blocks = new ArrayList<>();
    fired(blocks, "Facts that rules derived", screening.derivations());
    fired(blocks, "Rules that fired on known facts", screening.findings());
    fired(blocks, "Rules that fire only on assumed facts", screening.assumed());
    blocks.add(
        Pieces.table(
            "Rules that failed by one condition",
            Pieces.columns("Rule", "What it would state", "What stood in its way"),
            screening.nearMisses().stream().map(KeyTrace::near).toList(),
            "No rule failed by one condition alone."));
    return blocks;
  }

  private void fired(List<Block> blocks, String caption, List<Finding> findings) {
    if (!findings.isEmpty()) {
      blocks.add(
          new Block.Table(
              caption,
              Pieces.columns("Rule", "What it states", "Facts and limits"),
              findings.stream().map(this::row).toList()));
    }
  }

  private Block.Row row(Finding finding) {
    return Block.Row.of(
        Prose.of(finding.rule().id() + " " + finding.rule().sentence()),
        Prose.of(
            Words.sentence(Words.verb(finding.effect()))
                + Words.about(finding.rule())
                + ": "
                + sources.cite(finding)),
        Prose.of(grounds(finding)));
  }

  private static String grounds(Finding finding) {
    String text =
        Stream.concat(
                finding.facts().stream()
                    .map(
                        fact ->
                            fact.label() + " " + fact.value() + " (" + fact.origin().word() + ")"),
                finding.limits().stream()
                    .map(
                        limit ->
                            "limit: "
                                + limit.label()
                                + " "
                                + limit.value()
                                + " ("
                                + limit.basis().notice()
                                + ")"))
            .collect(Collectors.joining("; "));
    return text.isEmpty() ? "none" : text;
  }

  private static Block.Row near(NearMiss miss) {
    return Block.Row.of(
        Prose.of(miss.rule().id() + " " + miss.rule().sentence()),
        Prose.of(Words.sentence(Words.verb(miss.rule().effect())) + Words.about(miss.rule())),
        Prose.of((miss.truth() == Truth.OPEN ? "open: " : "failed: ") + miss.explanation()));
  }
}
