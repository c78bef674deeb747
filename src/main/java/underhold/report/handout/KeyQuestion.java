package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import underhold.classroom.CaseStudy;
import underhold.classroom.Question;
import underhold.classroom.QuestionDesk;
import underhold.classroom.Reckoned;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.sizing.Step;

/** The answer of a question of size or sequence with its working. */
final class KeyQuestion {
  private final CaseStudy study;
  private final Question question;
  private final QuestionDesk desk;

  KeyQuestion(CaseStudy study, Question question, QuestionDesk desk) {
    this.study = study;
    this.question = question;
    this.desk = desk;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Pieces.paragraph(question.text()));
    blocks.addAll(answer(desk.of(study, question)));
    return blocks;
  }

  private List<Block> answer(Reckoned reckoned) {
    List<Block> blocks = new ArrayList<>();
    if (reckoned instanceof Reckoned.Amount amount) {
      blocks.add(strong(amount.text(), ", within " + question.within() + ". " + amount.how()));
      desk.step(study, question).ifPresent(step -> blocks.add(working(step)));
    } else if (reckoned instanceof Reckoned.Verdict verdict) {
      blocks.add(strong(verdict.word(), ". " + verdict.how()));
    } else if (reckoned instanceof Reckoned.Rounds rounds) {
      blocks.add(
          strong(
              rounds.rounds().stream()
                  .map(
                      round ->
                          round.pits().stream()
                              .map(String::valueOf)
                              .collect(Collectors.joining(" ")))
                  .collect(Collectors.joining(" / ")),
              " is one legal way; any other that breaks no rule and needs no more rounds has all"
                  + " points."));
      blocks.add(Pieces.list(desk.beside(study, question)));
      blocks.add(
          Pieces.list(
              List.of(
                  "Every pit is dug once.",
                  "Neighbours are never open together.",
                  "Between pits open together at least "
                      + rounds.clearWidths()
                      + " pit widths stand on their soil ["
                      + rounds.source()
                      + "].",
                  "Not more of the wall is open at once than the sheet allows.")));
    } else if (reckoned instanceof Reckoned.Order order) {
      blocks.add(
          strong(
              desk.order(order),
              " is one legal order; any other in which nothing stands on nothing has all points."));
      blocks.add(Pieces.list(desk.beside(study, question)));
    } else if (reckoned instanceof Reckoned.Nothing nothing) {
      blocks.add(Pieces.paragraph("It cannot be answered: " + nothing.why() + "."));
    }
    return blocks;
  }

  private static Block strong(String strong, String rest) {
    return new Block.Paragraph(Prose.empty().strong(strong).then(rest));
  }

  private Block working(Step step) {
    UnitSystem units = study.full().units();
    return new Block.Working(
        "",
        step.title(),
        step.formulaText(units),
        step.formula().symbols().stream()
            .map(
                symbol ->
                    new Block.Symbol(symbol.sign(), symbol.meaning(), symbol.amount().in(units)))
            .toList(),
        step.calculation(units),
        step.result().in(units),
        Prose.of(step.source().words()),
        Prose.of(step.note().in(units)));
  }
}
