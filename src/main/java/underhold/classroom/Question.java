package underhold.classroom;

import underhold.advice.SupportOption;
import underhold.site.PlainText;

/**
 * A question of size or sequence. It holds no answer: that is reckoned from the facts known at its
 * stage.
 *
 * @param id its name in commands
 * @param zone the zone it is about
 * @param stage the stage from which it is asked
 * @param kind the word of a {@link QuestionKind}
 * @param method the id of the method whose sheet answers it
 * @param about the fact, step or check; empty where the kind says it all
 * @param tolerance per cent by which an amount may differ
 * @param text the question, with all that must be assumed alike to reckon it
 */
public record Question(
    String id,
    String zone,
    String stage,
    String kind,
    String method,
    String about,
    double tolerance,
    String text) {
  public Question {
    Names.mustBe("question", id);
    if (QuestionKind.find(kind).isEmpty()) {
      throw new IllegalArgumentException(
          "there is no kind of question "
              + PlainText.quoted(kind)
              + "; there are "
              + QuestionKind.words());
    }
    if (SupportOption.find(method).isEmpty()) {
      throw new IllegalArgumentException("there is no method " + PlainText.quoted(method));
    }
    if (!(tolerance >= 0 && tolerance <= 50)) {
      throw new IllegalArgumentException("a tolerance is 0 to 50 per cent, not " + tolerance);
    }
  }

  /** The tolerance in words: {@code 5 per cent}. */
  public String within() {
    String number =
        tolerance == Math.rint(tolerance)
            ? String.valueOf(Math.round(tolerance))
            : String.valueOf(tolerance);
    return number + " per cent";
  }

  /** What it asks for. */
  public QuestionKind asks() {
    return QuestionKind.find(kind).orElseThrow();
  }

  /** The method whose sheet answers it. */
  public SupportOption option() {
    return SupportOption.find(method).orElseThrow();
  }
}
