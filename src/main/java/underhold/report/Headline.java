package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.OpenQuestion;
import underhold.consult.OpenQuestions;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.consult.firmness.Firmness;
import underhold.sizing.Verdict;

/** The answer to a zone in a few sentences: what leads, how firm, what could change it. */
public final class Headline {
  private static final int FIRST_QUESTIONS = 3;
  private static final int MOST_SHARES = 3;

  private final ZoneAdvice zone;

  public Headline(ZoneAdvice zone) {
    this.zone = zone;
  }

  /** What leads and how firm, in one sentence. */
  public String verdict() {
    return zone.ranking().leader().map(this::verdict).orElseGet(this::noChoice);
  }

  private String noChoice() {
    String open =
        zone.firmness()
            .filter(firmness -> !firmness.firsts().isEmpty())
            .map(Headline::spread)
            .orElse("");
    return "No clear choice yet." + open;
  }

  private static String spread(Firmness firmness) {
    List<String> shares =
        firmness.byFirsts().stream()
            .limit(MOST_SHARES)
            .map(option -> option.label() + " in " + firmness.perHundred(firmness.first(option)))
            .toList();
    return " In 100 draws " + Words.list(shares) + " would come first.";
  }

  private String verdict(OptionAdvice leader) {
    String label = leader.option().label();
    if (!leader.tied()) {
      return Words.sentence(label) + lead(label) + ", first in " + firmness() + "." + turning();
    }
    List<String> names = new ArrayList<>(List.of(label));
    zone.ranking().tiedWithLeader().forEach(advice -> names.add(advice.option().label()));
    return "A tie: "
        + Words.list(names)
        + ". As it is "
        + label
        + (label.endsWith("s") ? " come" : " comes")
        + " first, in "
        + firmness()
        + ".";
  }

  private static String lead(String label) {
    return label.endsWith("s") ? " lead" : " leads";
  }

  /** How many open questions could put another option first; nothing where none could. */
  private String turning() {
    long turning = zone.questions().list().stream().filter(q -> q.leaderChanges() > 0).count();
    return turning == 0
        ? ""
        : " Not firm yet: "
            + (turning == 1 ? "1 open question" : turning + " open questions")
            + " could put another option first.";
  }

  /** What leads, and nothing else. */
  String leads() {
    return zone.ranking()
        .leader()
        .map(
            leader -> Words.sentence(leader.option().label()) + lead(leader.option().label()) + ".")
        .orElse("No clear choice yet.");
  }

  /** In how many draws or trials the answer stays what it is. */
  String firmness() {
    return zone.firmness().map(Headline::draws).orElseGet(this::trials);
  }

  private static String draws(Firmness firmness) {
    return firmness.perHundred(firmness.stayed()) + " of 100 draws" + next(firmness);
  }

  private static String next(Firmness firmness) {
    return firmness
        .runnerUp()
        .map(
            option ->
                " (next: "
                    + option.label()
                    + " in "
                    + firmness.perHundred(firmness.first(option))
                    + ")")
        .orElse("");
  }

  /** That another option, or none, comes first more often once the open facts are drawn. */
  private Optional<String> seldom() {
    return zone.firmness()
        .filter(firmness -> firmness.leader() != null)
        .filter(firmness -> 2 * firmness.stayed() < firmness.draws())
        .map(
            firmness ->
                "So it leads only as far as is known: with the open facts drawn it comes first in fewer than"
                    + " half of the draws. Find them out before anything is built on this place.");
  }

  /** What a draw is. */
  private Optional<String> drawn() {
    return zone.firmness()
        .map(
            firmness ->
                "A draw gives each of "
                    + Words.count(firmness.factsDrawn(), "open fact", "open facts")
                    + " a value at random, good or bad alike, and moves weights and limits: a measure of"
                    + " what is not known, not a probability.");
  }

  /** The open facts that drive the doubt. */
  private Optional<String> doubt() {
    List<String> labels =
        zone.firmness().map(Firmness::drivers).orElse(List.of()).stream()
            .map(driver -> driver.fact().label())
            .toList();
    return labels.isEmpty()
        ? Optional.empty()
        : Optional.of("What drives the doubt: " + Words.list(labels) + ".");
  }

  private String trials() {
    OpenQuestions questions = zone.questions();
    return questions.trials() == 0
        ? "every trial, for no open fact is left to try"
        : questions.kept() + " of " + questions.trials() + " single-fact trials";
  }

  /**
   * What must be read with the verdict: proof, ties, what is held, what a draw is, what is open.
   */
  public List<String> beside() {
    List<String> all = new ArrayList<>();
    sizing().ifPresent(all::add);
    tie().ifPresent(all::add);
    all.addAll(contenders());
    seldom().ifPresent(all::add);
    drawn().ifPresent(all::add);
    doubt().ifPresent(all::add);
    return all;
  }

  void on(TextPage page) {
    Tint tint = zone.ranking().leader().isPresent() ? Tint.GOOD : Tint.OPEN;
    page.tinted(tint, 0, verdict());
    sizing().ifPresent(text -> page.para(0, text));
    tie().ifPresent(text -> page.para(0, text));
    contenders().forEach(text -> page.para(0, text));
    seldom().ifPresent(text -> page.tinted(Tint.OPEN, 0, text));
    drawn().ifPresent(text -> page.para(0, text));
    doubt().ifPresent(text -> page.para(0, text));
    if (zone.ranking().leader().isEmpty() || !turning().isEmpty()) {
      nextQuestions(page);
    }
  }

  /** What the sheet of the leader leaves open: a lead is not yet a design that works. */
  Optional<String> sizing() {
    return zone.ranking()
        .leader()
        .flatMap(advice -> zone.sizing(advice.option()))
        .filter(QuickSizing::complete)
        .filter(sizing -> sizing.count(Verdict.PASSES) < sizing.sheet().checks().size())
        .map(
            sizing -> {
              long fails = sizing.count(Verdict.FAILS);
              long refers = sizing.count(Verdict.REFER);
              String open =
                  fails == 0
                      ? refers + (refers == 1 ? " check refers" : " checks refer")
                      : fails
                          + (fails == 1 ? " check fails" : " checks fail")
                          + ", "
                          + refers
                          + " refer";
              return "Not proved by its sizing yet: "
                  + open
                  + " to the engineer; see size "
                  + sizing.option().id()
                  + ".";
            });
  }

  /** The scores of a tie, and the question that would split it. */
  Optional<String> tie() {
    List<OptionAdvice> tied = zone.ranking().tiedWithLeader();
    if (tied.isEmpty()) {
      return Optional.empty();
    }
    List<String> scores = new ArrayList<>();
    zone.ranking().leader().ifPresent(advice -> scores.add(Words.score(advice.score())));
    tied.forEach(advice -> scores.add(Words.score(advice.score())));
    String split =
        zone.questions().list().stream()
            .filter(question -> question.leaderChanges() > 0)
            .findFirst()
            .map(question -> "What would split them first: " + question.fact().question())
            .orElse(unsplit());
    return Optional.of("The scores are " + Words.list(scores) + ". " + split);
  }

  private String unsplit() {
    boolean specialist =
        zone.ranking().options().stream()
            .anyMatch(advice -> advice.tied() && advice.option() == SupportOption.REFER);
    return specialist
        ? "No open fact splits them: ask a specialist before the other is built."
        : "No open fact splits them: cost, time and the firm at hand decide.";
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
