package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.consult.OpenQuestion;
import underhold.consult.OpenQuestions;
import underhold.consult.ZoneAdvice;

/** The answer to a zone in a few sentences: what leads, how firm, what could change it. */
public final class Headline {
  private static final int FIRST_QUESTIONS = 3;

  private final ZoneAdvice zone;

  public Headline(ZoneAdvice zone) {
    this.zone = zone;
  }

  /** What leads and how firm, in one sentence. */
  public String verdict() {
    Optional<OptionAdvice> leader = zone.ranking().leader();
    return leader
        .map(
            advice ->
                Words.sentence(advice.option().label())
                    + (advice.option().label().endsWith("s") ? " lead" : " leads")
                    + (advice.tied() ? " by a hair, in a tie" : "")
                    + "; first in "
                    + firmness()
                    + ".")
        .orElse("No clear choice yet.");
  }

  /** In how many trials the answer stays what it is. */
  String firmness() {
    OpenQuestions questions = zone.questions();
    return questions.trials() == 0
        ? "every trial, for no open fact is left to try"
        : questions.kept() + " of " + questions.trials() + " single-fact trials";
  }

  void on(TextPage page) {
    Tint tint = zone.ranking().leader().isPresent() ? Tint.GOOD : Tint.OPEN;
    page.tinted(tint, 0, verdict());
    tie().ifPresent(text -> page.para(0, text));
    contenders().forEach(text -> page.para(0, text));
    if (zone.ranking().leader().isEmpty()) {
      nextQuestions(page);
    }
  }

  /** The tie and the question that would split it. */
  Optional<String> tie() {
    List<OptionAdvice> tied = zone.ranking().tiedWithLeader();
    if (tied.isEmpty()) {
      return Optional.empty();
    }
    List<String> names =
        tied.stream()
            .map(a -> a.option().label() + " (score " + Words.score(a.score()) + ")")
            .toList();
    int lead = zone.ranking().leader().map(OptionAdvice::score).orElse(0);
    String split =
        zone.questions().list().stream()
            .filter(question -> question.leaderChanges() > 0)
            .findFirst()
            .map(q -> " What would split them first: " + q.fact().question())
            .orElse(" No open fact splits them; cost, time and the firm at hand decide.");
    return Optional.of(
        "It is a tie: "
            + Words.list(names)
            + (tied.size() == 1 ? " stands" : " stand")
            + " level with the leader's "
            + Words.score(lead)
            + "."
            + split);
  }

  private List<String> contenders() {
    List<String> texts = new ArrayList<>();
    for (OptionAdvice advice : zone.ranking().heldContenders()) {
      List<String> names = advice.holds().stream().map(Hold::ask).flatMap(List::stream).toList();
      List<String> questions = Words.questions(names.stream().distinct().toList(), zone.view());
      texts.add(
          "Held, though the score of "
              + Words.score(advice.score())
              + " would put it first: "
              + advice.option().label()
              + ". It waits for: "
              + (questions.isEmpty() ? "see its open rules" : questions.get(0)));
    }
    return texts;
  }

  private void nextQuestions(TextPage page) {
    List<OpenQuestion> questions = zone.questions().list();
    if (questions.isEmpty()) {
      page.para(0, "Nothing speaks for any option, and no open fact would change that.");
      return;
    }
    page.para(0, "Ask next:");
    questions.stream()
        .limit(FIRST_QUESTIONS)
        .forEach(
            question ->
                page.item(2, "?", 3, question.fact().question() + " It " + question.stake() + "."));
  }
}
