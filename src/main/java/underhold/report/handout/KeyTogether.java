package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import underhold.advice.Effect;
import underhold.classroom.CaseStudy;
import underhold.classroom.KeyMaker;
import underhold.classroom.OrderWords;
import underhold.classroom.SchemeKey;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.ZoneChoice;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** What the methods of all zones do to each other, stage by stage. */
final class KeyTogether {
  private final CaseStudy study;
  private final KeyMaker keys;
  private final Sources sources;

  KeyTogether(CaseStudy study, KeyMaker keys, Sources sources) {
    this.study = study;
    this.keys = keys;
    this.sources = sources;
  }

  Section section() {
    List<Section> parts = new ArrayList<>();
    for (int stage = 0; stage < study.stages().size(); stage++) {
      SchemeKey key = keys.together(study, stage, Set.of());
      List<Block> blocks =
          key.best()
              .map(this::best)
              .orElse(List.of(Pieces.paragraph("No scheme: " + key.whyNone())));
      parts.add(Section.of("together-" + (stage + 1), study.stages().get(stage).title(), blocks));
    }
    return new Section("together", "All zones together", List.of(), parts);
  }

  private List<Block> best(Combination best) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Row> zones = new ArrayList<>();
    for (ZoneChoice zone : best.zones()) {
      zones.add(
          Block.Row.of(
              Prose.of(zone.name()),
              Prose.of(zone.method().map(one -> one.label()).orElse("none: " + zone.undecided()))));
    }
    blocks.add(
        new Block.Table(
            "First together, " + best.points() + " points",
            Pieces.columns("Zone", "Method"),
            zones));
    blocks.add(
        Pieces.listOr(
            best.findings().stream().map(this::said).toList(),
            "No rule between the zones speaks of them."));
    List<Block.Row> orders = new ArrayList<>();
    for (OrderWanted order : best.orders()) {
      orders.add(
          Block.Row.of(
              Pieces.typed(order.first() + " " + OrderWords.word(order) + " " + order.second()),
              Prose.of(Words.sentence(order.sentence()) + " [" + order.ruleId() + "]"),
              Prose.of(order.assumed() ? "kept until a fact frees it" : "asked for")));
    }
    blocks.add(
        Pieces.table(
            "Orders of work to be named",
            Pieces.columns("As it is typed", "In words", "Standing"),
            orders,
            "No order of work is asked for."));
    List<Block.Row> facts = new ArrayList<>();
    SchemeKey.meeting(best.findings())
        .forEach(
            (fact, finding) ->
                facts.add(
                    Block.Row.of(
                        Pieces.typed(fact), Prose.of(finding.finding().rule().sentence()))));
    blocks.add(
        Pieces.table(
            "Facts on which they meet",
            Pieces.columns("Fact", "First rule that rests on it"),
            facts,
            "No fact of two zones decides here."));
    return blocks;
  }

  private String said(PairFinding finding) {
    String effect = finding.effect() == Effect.REQUIRE ? "order" : Words.verb(finding.effect());
    return Words.sentence(effect) + ": " + sources.cite(finding.finding(), finding.reason());
  }
}
