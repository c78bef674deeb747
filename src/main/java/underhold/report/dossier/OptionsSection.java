package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.report.SizingWords;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** The options side by side: one table a zone. */
final class OptionsSection {
  private static final List<Block.Column> COLUMNS =
      List.of(
          Block.Column.words("Option"),
          Block.Column.words("Standing"),
          Block.Column.amounts("Points"),
          Block.Column.words("Speaks for it"),
          Block.Column.words("Speaks against it"),
          Block.Column.words("Its sheet"));

  private OptionsSection() {}

  static Section of(Material material, Illustrations illustrations) {
    List<Section> parts =
        material.zones().stream().map(zone -> zone(material, zone, illustrations)).toList();
    return new Section(
        "options",
        "Options side by side",
        List.of(
            Cells.paragraph(
                "In the order of the ranking."
                    + " Points are those for less those against."
                    + " What speaks for and against is named by its cause and strength; the whole reason"
                    + " stands below under Reasons."
                    + " An option ruled out has no points.")),
        parts);
  }

  private static Section zone(Material material, ZonePart zone, Illustrations illustrations) {
    List<Block.Row> rows =
        zone.advice().ranking().options().stream().map(one -> row(material, zone, one)).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Table("Options for " + zone.name(), COLUMNS, rows));
    blocks.addAll(
        Cells.drawn(
            illustrations.ofAdvice(zone.advice(), Anchor.figures("options", zone.number()))));
    return Section.of("options-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private static Block.Row row(Material material, ZonePart zone, OptionAdvice advice) {
    boolean out = advice.standing() == Standing.RULED_OUT;
    return Cells.row(
        Anchor.of("option", zone.number(), advice.option().id()),
        tone(advice.standing()),
        Prose.empty().strong(Words.sentence(advice.option().label())),
        Prose.of(standing(advice)),
        Prose.of(out ? "none" : Words.score(advice.score())),
        causes(zone, advice, false),
        causes(zone, advice, true),
        sheet(material, zone, advice));
  }

  /** The standing as the terminal says it. */
  static String standing(OptionAdvice advice) {
    return (advice.standing() == Standing.WORKS_IF
            ? "works if its conditions are met"
            : advice.standing().word())
        + (advice.tied() ? ", tied" : "")
        + (advice.ranked() && advice.score() < 0 ? ", but more speaks against it" : "");
  }

  private static Block.Tone tone(Standing standing) {
    return switch (standing) {
      case LEADS -> Block.Tone.GOOD;
      case WORKS, WORKS_IF -> Block.Tone.PLAIN;
      case HELD -> Block.Tone.DOUBT;
      case RULED_OUT -> Block.Tone.BAD;
    };
  }

  private static Prose causes(ZonePart zone, OptionAdvice advice, boolean against) {
    List<Prose> causes = new ArrayList<>();
    for (Finding finding : advice.findings()) {
      boolean rulesOut = finding.effect() == Effect.RULE_OUT;
      boolean speaksAgainst = finding.effect() == Effect.AGAINST || rulesOut;
      if (speaksAgainst == against && (rulesOut || Words.counted(advice, finding))) {
        causes.add(cause(zone, advice, finding));
      }
    }
    if (against) {
      advice.holds().forEach(hold -> causes.add(Prose.of("held by ").then(Cells.rule(hold))));
    }
    return causes.isEmpty() ? Prose.of("nothing") : Cells.joined(causes, "; ");
  }

  private static Prose cause(ZonePart zone, OptionAdvice advice, Finding finding) {
    String id = finding.rule().id();
    String weight =
        finding.effect() == Effect.RULE_OUT
            ? "rules out"
            : finding.strength().map(strength -> strength.word()).orElse("");
    return Prose.of(finding.rule().cause() + " (" + weight + ", ")
        .link(id, Anchor.reason(zone.number(), advice.option(), id))
        .then(")");
  }

  private static Prose sheet(Material material, ZonePart zone, OptionAdvice advice) {
    Prose words =
        zone.advice()
            .sizing(advice.option())
            .map(sizing -> Prose.of(SizingWords.of(sizing, zone.advice().view()) + " "))
            .orElse(Prose.of("No sheet. "));
    return material
        .sheet(zone, advice.option())
        .map(sheet -> words.link("Sheet", sheet.anchor()))
        .orElse(words);
  }
}
