package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import underhold.consult.OpenQuestion;
import underhold.consult.scheme.PairQuestion;
import underhold.report.AnswerWords;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** What to find out next: how, and what each answer would mean. */
final class QuestionsSection {
  private QuestionsSection() {}

  static Section of(Material material) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "Those that could change most stand first."
                + " Every value of an open fact was tried on the whole advice, one fact at a time."));
    List<Block.Row> between = between(material);
    if (!between.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Not known between the zones",
              Cells.columns("Zones", "Question", "What waits for it"),
              between));
    }
    return new Section(
        "questions",
        "Open questions",
        blocks,
        material.zones().stream().map(zone -> zone(material, zone)).toList());
  }

  private static List<Block.Row> between(Material material) {
    return material.madeScheme().stream()
        .flatMap(scheme -> scheme.questions().stream())
        .map(QuestionsSection::pair)
        .toList();
  }

  private static Block.Row pair(PairQuestion question) {
    Prose rules =
        Cells.joined(
            question.rules().stream()
                .map(
                    rule -> Prose.of(rule.sentence() + " ").link(rule.id(), Anchor.rule(rule.id())))
                .toList(),
            " ");
    return Cells.row(
        "",
        question.holds() ? Block.Tone.DOUBT : Block.Tone.PLAIN,
        Prose.of(question.one() + " (first), " + question.other() + " (second)"),
        Prose.of(question.fact().question()),
        question.holds() ? rules.then(" It could rule the scheme out.") : rules);
  }

  private static Section zone(Material material, ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    List<OpenQuestion> all = zone.advice().questions().list();
    List<OpenQuestion> deciding = all.stream().filter(OpenQuestion::decides).toList();
    blocks.add(
        Cells.table(
            "Questions that could decide",
            Cells.columns(
                "Question", "What hangs on it", "How to find out", "What each answer means"),
            deciding.stream().map(question -> row(zone, question)).toList(),
            "No open fact, alone, could put another option first or rule one in or out."));
    List<OpenQuestion> minor = all.stream().filter(question -> !question.decides()).toList();
    if (!minor.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Also open: alone these could only move points",
              Cells.columns("Question", "What hangs on it", "How to find out"),
              minor.stream().map(question -> minor(zone, question)).toList()));
    }
    material
        .chosen(zone)
        .filter(sheet -> !sheet.sheet().missing().isEmpty())
        .ifPresent(
            sheet ->
                blocks.add(
                    new Block.Table(
                        "To size " + sheet.option().label() + " its sheet also asks",
                        Cells.columns("Question", "Why"),
                        sheet.sheet().missing().stream()
                            .map(
                                one ->
                                    Block.Row.of(
                                        Prose.of(one.question() + " (").typed(one.name()).then(")"),
                                        Prose.of(one.why())))
                            .toList())));
    return Section.of("questions-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  private static Block.Row row(ZonePart zone, OpenQuestion question) {
    String meanings =
        AnswerWords.meanings(question).entrySet().stream()
            .map(entry -> entry.getKey() + ": " + entry.getValue())
            .collect(Collectors.joining(". ", "", "."));
    return Cells.row(
        Anchor.question(zone.number(), question.fact().name()),
        Block.Tone.DOUBT,
        asked(question),
        Prose.of(Cells.sentence("it " + question.stake())),
        Prose.of(question.fact().findOut()),
        Prose.of(meanings));
  }

  private static Block.Row minor(ZonePart zone, OpenQuestion question) {
    return Cells.row(
        Anchor.question(zone.number(), question.fact().name()),
        Block.Tone.PLAIN,
        asked(question),
        Prose.of(Cells.sentence("it " + question.stake())),
        Prose.of(question.fact().findOut()));
  }

  private static Prose asked(OpenQuestion question) {
    return Prose.of(question.fact().question() + " (").typed(question.fact().name()).then(")");
  }
}
