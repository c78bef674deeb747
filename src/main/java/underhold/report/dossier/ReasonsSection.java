package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Every reason for and against every option, leading to the rules. */
final class ReasonsSection {
  private static final List<Block.Column> COLUMNS =
      Cells.columns("It does", "Reason", "Weight, basis and rule");

  private ReasonsSection() {}

  static Section of(Material material) {
    return new Section(
        "reasons",
        "Reasons",
        List.of(),
        material.zones().stream().map(ReasonsSection::zone).toList());
  }

  private static Section zone(ZonePart zone) {
    return new Section(
        "reasons-" + zone.number(),
        "Zone: " + zone.name(),
        List.of(),
        zone.advice().ranking().options().stream().map(one -> option(zone, one)).toList());
  }

  private static Section option(ZonePart zone, OptionAdvice advice) {
    List<Block.Row> rows = new ArrayList<>();
    advice.holds().forEach(hold -> rows.add(hold(zone, advice, hold)));
    int out = 0;
    for (Finding finding : advice.findings()) {
      String wayBack = "";
      if (finding.effect() == Effect.RULE_OUT && out < advice.wayBack().size()) {
        wayBack = " Way back: " + Words.wayBack(advice.wayBack().get(out++));
      }
      rows.add(known(zone, advice, finding, wayBack));
    }
    Words.assumed(zone.advice(), advice.option())
        .forEach(finding -> rows.add(perhaps(zone, advice, finding)));
    String title = Words.sentence(advice.option().label());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            Prose.of(Words.sentence(OptionsSection.standing(advice)))
                .then(
                    advice.ranked() || !advice.holds().isEmpty()
                        ? ", " + Words.score(advice.score()) + " points."
                        : ".")
                .then(advice.spokenFor() ? "" : " Nothing speaks for it.")));
    if (!rows.isEmpty()) {
      blocks.add(new Block.Table(title + ": the reasons", COLUMNS, rows));
    }
    return Section.of(Anchor.of("reasons", zone.number(), advice.option().id()), title, blocks);
  }

  private static Block.Row known(
      ZonePart zone, OptionAdvice advice, Finding finding, String wayBack) {
    boolean counted = finding.effect() == Effect.RULE_OUT || Words.counted(advice, finding);
    return Cells.row(
        Anchor.reason(zone.number(), advice.option(), finding.rule().id()),
        tone(finding.effect()),
        Prose.of(Words.verb(finding.effect())),
        Prose.of(finding.reason() + wayBack),
        Cells.tag(zone.number(), finding, counted));
  }

  private static Block.Row perhaps(ZonePart zone, OptionAdvice advice, Finding finding) {
    String would =
        switch (finding.effect()) {
          case RULE_OUT -> "rule it out";
          case AGAINST -> "speak against it";
          default -> "speak for it";
        };
    return Cells.row(
        Anchor.reason(zone.number(), advice.option(), finding.rule().id()),
        Block.Tone.DOUBT,
        Prose.of("perhaps"),
        Prose.of(
            finding.reason()
                + " Would "
                + would
                + ", "
                + Words.assumptions(finding)
                + "; it does not count until that is known."),
        Cells.tag(zone.number(), finding, true));
  }

  private static Block.Row hold(ZonePart zone, OptionAdvice advice, Hold hold) {
    List<String> ask = Words.questions(hold.ask(), zone.advice().view());
    return Cells.row(
        Anchor.of("held", zone.number(), advice.option().id(), hold.rule().id()),
        Block.Tone.DOUBT,
        Prose.of("holds it"),
        Prose.of(hold.explanation() + (ask.isEmpty() ? "" : " Ask: " + String.join(" ", ask))),
        Prose.of("safety rule still open, " + hold.rule().basis().notice() + ", ")
            .then(Cells.rule(hold)));
  }

  private static Block.Tone tone(Effect effect) {
    return switch (effect) {
      case RULE_OUT, AGAINST -> Block.Tone.BAD;
      case FOR, REFER -> Block.Tone.GOOD;
      case REQUIRE, CAUTION -> Block.Tone.CAUTION;
      case DERIVE -> Block.Tone.PLAIN;
    };
  }
}
