package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.consult.OpenQuestion;

/** What the answers to an open question would lead to, in words. */
public final class AnswerWords {
  private AnswerWords() {}

  /** What the answers mean, values with the same meaning together. */
  public static Map<String, String> meanings(OpenQuestion question) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    List<OpenQuestion.Answer> answers = question.answers();
    for (int i = 0; i < answers.size(); i++) {
      groups.computeIfAbsent(meaning(question, answers.get(i)), key -> new ArrayList<>()).add(i);
    }
    Map<String, String> meanings = new LinkedHashMap<>();
    groups.forEach((meaning, places) -> meanings.put(values(question, places), meaning));
    return meanings;
  }

  private static String meaning(OpenQuestion question, OpenQuestion.Answer answer) {
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
}
