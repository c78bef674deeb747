package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.SupportOption;
import underhold.classroom.Question;
import underhold.classroom.QuestionKind;

/** Questions of size and sequence that go with the method of a case. */
final class Asking {
  private static final double TOLERANCE = 5;

  private Asking() {}

  /** Questions worth trying; those that cannot be reckoned are to be left out. */
  static List<Question> of(Wish wish, String zone, String stage) {
    List<Question> questions = new ArrayList<>();
    switch (wish.leader()) {
      case PITS -> {
        questions.add(
            amount(
                "pit-depth",
                zone,
                stage,
                SupportOption.PITS,
                "pitDepth",
                "The piers go down to the level of the dig, or to good ground if that lies deeper."
                    + " How far is that below the present founding level?"));
        questions.add(
            new Question(
                "open-together",
                zone,
                stage,
                QuestionKind.ROUNDS.word(),
                SupportOption.PITS.id(),
                "",
                0,
                "The wall is divided into the pits below, numbered from one end. Which of them are"
                    + " open together, round by round? A pit is open until its pier carries."));
      }
      case NEEDLES -> {
        questions.add(
            new Question(
                "needle-strong",
                zone,
                stage,
                QuestionKind.VERDICT.word(),
                SupportOption.NEEDLES.id(),
                "needle-section",
                0,
                "Is the needle that the sheet chooses strong enough in bending, by its own check?"));
        questions.add(order(zone, stage, SupportOption.NEEDLES));
      }
      case DRILLED_PILES, BRACKET_PILES, EDGE_PITS ->
          questions.add(order(zone, stage, wish.leader()));
      case MONITOR ->
          questions.add(
              amount(
                  "how-far",
                  zone,
                  stage,
                  SupportOption.MONITOR,
                  "gapOverDepth",
                  "How far off is the dig, as a share of its depth? Give a number without a unit."));
      case REFER -> {}
    }
    if (wish.theme() == Theme.WATER && wish.leader() != SupportOption.MONITOR) {
      questions.add(
          amount(
              "water-above",
              zone,
              stage,
              SupportOption.PITS,
              "headAbovePitBase",
              "How high does the water stand above the base of a pit taken down to the level of the"
                  + " dig, or to good ground if that is deeper? Below the base it counts as less"
                  + " than nothing."));
    }
    return questions;
  }

  private static Question amount(
      String id, String zone, String stage, SupportOption method, String fact, String text) {
    return new Question(
        id, zone, stage, QuestionKind.AMOUNT.word(), method.id(), fact, TOLERANCE, text);
  }

  private static Question order(String zone, String stage, SupportOption method) {
    return new Question(
        "order-of-works",
        zone,
        stage,
        QuestionKind.ORDER.word(),
        method.id(),
        "",
        0,
        "Put the stages of the work in an order in which nothing ever stands on nothing.");
  }
}
