package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    meanings(question, zone)
        .forEach((values, meaning) -> detail("if", values + ": " + meaning + "."));
  }

  private void detail(String mark, String words) {
    page.item(Tint.QUIET, NUMBER, mark, MARK, words);
  }

  /** What the answers mean, values with the same meaning together. */
  private static Map<String, String> meanings(OpenQuestion question, ZoneAdvice zone) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    List<OpenQuestion.Answer> answers = question.answers();
    for (int i = 0; i < answers.size(); i++) {
      groups
          .computeIfAbsent(meaning(question, answers.get(i), zone), key -> new ArrayList<>())
          .add(i);
    }
    Map<String, String> meanings = new LinkedHashMap<>();
    groups.forEach((meaning, places) -> meanings.put(values(question, places), meaning));
    return meanings;
  }

  private static String meaning(
      OpenQuestion question, OpenQuestion.Answer answer, ZoneAdvice zone) {
    List<String> parts = new ArrayList<>();
    if (answer.leader().equals(question.leader())) {
      parts.add(answer.leader().isEmpty() ? "still no clear choice" : "still " + answer.leader());
    } else {
      parts.add(answer.leader().isEmpty() ? "no clear choice" : answer.leader() + " first");
    }
    if (!answer.tied().isEmpty() && !answer.tied().equals(question.tied())) {
      parts.add("in a tie with " + Words.list(answer.tied()));
    } else if (answer.tied().isEmpty()
        && !question.tied().isEmpty()
        && !answer.leader().isEmpty()) {
      parts.add("no longer in a tie");
    }
    if (!answer.freed().isEmpty()) {
      parts.add(Words.list(answer.freed()) + " no longer held");
    }
    if (!answer.lost().isEmpty()) {
      parts.add(Words.list(answer.lost()) + " ruled out");
    }
    if (!answer.won().isEmpty()) {
      parts.add(Words.list(answer.won()) + " back");
    }
    return String.join(", ", parts);
  }

  /** Words as they are; neighbouring amounts as a range, the ends of the list as ends. */
  private static String values(OpenQuestion question, List<Integer> places) {
    List<OpenQuestion.Answer> answers = question.answers();
    if (!question.fact().kind().isNumber()) {
      return Words.list(places.stream().map(place -> answers.get(place).value()).toList());
    }
    if (places.size() == answers.size()) {
      return "any value tried";
    }
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      int first = places.get(i);
      while (i + 1 < places.size() && places.get(i + 1) == places.get(i) + 1) {
        i++;
      }
      int last = places.get(i);
      String low = answers.get(first).value();
      String high = answers.get(last).value();
      ranges.add(
          first == 0
              ? high + " or less"
              : last == answers.size() - 1
                  ? low + " or more"
                  : first == last ? low : low + " to " + high);
    }
    return String.join("; ", ranges);
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
