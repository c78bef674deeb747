package underhold.report;

import java.util.List;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.OpenQuestion;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.sizing.MissingInput;

/** What to find out next, zone by zone: how, and what each answer would mean. */
public final class AskNextText {
  private static final int NUMBER = 4;
  private static final int MARK = 10;
  private static final int MOST_SHOWN = 10;

  private final TextPage page;

  private AskNextText(Look look) {
    this.page = new TextPage(look);
  }

  public static String of(Consultation consultation, Look look) {
    AskNextText text = new AskNextText(look);
    for (ZoneAdvice zone : consultation.zones()) {
      text.page.heading(consultation.site().name() + ": " + zone.name());
      text.zone(zone);
    }
    Program.foot(text.page, consultation.pack());
    return text.page.text();
  }

  private void zone(ZoneAdvice zone) {
    page.para(0, new Headline(zone).leads());
    List<OpenQuestion> deciding =
        zone.questions().list().stream().filter(OpenQuestion::decides).toList();
    List<OpenQuestion> minor =
        zone.questions().list().stream().filter(question -> !question.decides()).toList();
    if (deciding.isEmpty()) {
      page.para(0, "No open fact, alone, could put another option first or rule one in or out.");
    }
    int number = 0;
    for (OpenQuestion question : deciding.subList(0, Math.min(MOST_SHOWN, deciding.size()))) {
      question(++number, question, zone);
    }
    if (deciding.size() > MOST_SHOWN) {
      page.para(0, "Also deciding: " + names(deciding.subList(MOST_SHOWN, deciding.size())) + ".");
    }
    if (!minor.isEmpty()) {
      page.blank();
      page.para(0, "Alone these could only move a score: " + names(minor) + ".");
    }
    if (!deciding.isEmpty()) {
      page.blank();
      page.para(
          0,
          "Amounts are those tried, about the limits of the rules; where exactly an answer turns:"
              + " turning-points.");
    }
    sheet(zone);
  }

  private static String names(List<OpenQuestion> questions) {
    return String.join(", ", questions.stream().map(question -> question.fact().name()).toList());
  }

  private void question(int number, OpenQuestion question, ZoneAdvice zone) {
    page.blank();
    page.item(
        Tint.STRONG,
        0,
        number + ".",
        NUMBER,
        question.fact().question() + " (" + question.fact().name() + ")");
    detail("stake", "It " + question.stake() + ".");
    if (!question.fact().findOut().isEmpty()) {
      detail("find out", question.fact().findOut());
    }
    AnswerWords.meanings(question)
        .forEach((values, meaning) -> detail("if", values + ": " + meaning + "."));
  }

  private void detail(String mark, String words) {
    page.item(Tint.QUIET, NUMBER, mark, MARK, words);
  }

  /** What the sheet of the leader cannot do without. */
  private void sheet(ZoneAdvice zone) {
    List<MissingInput> missing =
        zone.ranking()
            .leader()
            .flatMap(leader -> zone.sizing(leader.option()))
            .map(QuickSizing::sheet)
            .map(sheet -> sheet.missing())
            .orElse(List.of());
    if (!missing.isEmpty()) {
      SupportOption leader = zone.ranking().leader().orElseThrow().option();
      page.heading("To size " + leader.label() + " its sheet also asks");
      missing.forEach(one -> page.item(NUMBER, "-", 2, one.question() + " (" + one.name() + ")"));
    }
  }
}
