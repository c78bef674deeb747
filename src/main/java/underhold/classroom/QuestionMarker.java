package underhold.classroom;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;
import underhold.sizing.Verdict;

/** Marks the answer to a question by what the program reckons. */
final class QuestionMarker {
  private static final double NEAR = 3;
  private static final double HALF = 2;
  private static final double MORE_ROUNDS = 3;

  private QuestionMarker() {}

  /** The word of a verdict in questions and answers. */
  static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** What is wrong with the form of an answer; empty where it can be marked. */
  static Optional<String> unreadable(Question question, String gives) {
    boolean readable =
        switch (question.asks()) {
          case VERDICT -> verdicts().contains(gives.strip().toLowerCase(Locale.ROOT));
          case ROUNDS -> Sequence.rounds(gives).isPresent();
          case ORDER -> Sequence.letters(gives).isPresent();
          case AMOUNT, RESULT -> gives.matches(".*[0-9].*");
        };
    return readable
        ? Optional.empty()
        : Optional.of("The answer must be " + question.asks().form() + ".");
  }

  private static List<String> verdicts() {
    return List.of(word(Verdict.PASSES), word(Verdict.FAILS), word(Verdict.REFER));
  }

  /** The points and the reason. */
  static MarkLine mark(Question question, String gives, Reckoned reckoned) {
    if (reckoned instanceof Reckoned.Amount amount) {
      return amount(question, gives, amount);
    }
    if (reckoned instanceof Reckoned.Verdict verdict) {
      boolean right = verdict.word().equals(gives.strip().toLowerCase(Locale.ROOT));
      return line(right ? Rubric.QUESTION : 0, "it is " + verdict.word() + ". " + verdict.how());
    }
    if (reckoned instanceof Reckoned.Rounds rounds) {
      return rounds(gives, rounds);
    }
    if (reckoned instanceof Reckoned.Order order) {
      Optional<String> broken =
          Sequence.letters(gives)
              .map(letters -> Sequence.broken(letters, order))
              .orElse(Optional.of("It is no order of letters."));
      return broken
          .map(rule -> line(0, rule))
          .orElseGet(() -> line(Rubric.QUESTION, "the order is legal"));
    }
    return new MarkLine("question", 0, 0, "not marked: " + ((Reckoned.Nothing) reckoned).why());
  }

  private static MarkLine amount(Question question, String gives, Reckoned.Amount amount) {
    ParsedQuantity parsed = Quantity.parse(gives, amount.measure());
    Optional<Quantity> typed =
        parsed.fold(accepted -> Optional.of(accepted.quantity()), rejected -> Optional.empty());
    String right = "it is " + amount.text() + ": " + amount.how();
    if (typed.isEmpty()) {
      return line(0, "no " + amount.measure().phrase() + " with its unit; " + right);
    }
    double off = Math.abs(typed.get().si() - amount.si());
    double within = Math.abs(amount.si()) * question.tolerance() / 100;
    double rounding = 1e-9 * Math.max(1, Math.abs(amount.si()));
    if (off <= within + rounding) {
      return line(Rubric.QUESTION, "within " + question.within() + "; " + right);
    }
    return off <= NEAR * within + rounding
        ? line(HALF, "within three times the " + question.within() + "; " + right)
        : line(0, right);
  }

  private static MarkLine rounds(String gives, Reckoned.Rounds sheet) {
    Optional<List<List<Integer>>> typed = Sequence.rounds(gives);
    Optional<String> broken =
        typed
            .map(rounds -> Sequence.broken(rounds, sheet))
            .orElse(Optional.of("It names no rounds."));
    if (broken.isPresent()) {
      return line(0, broken.get());
    }
    int needed = sheet.rounds().size();
    int had = typed.map(List::size).orElse(0);
    return had <= needed
        ? line(Rubric.QUESTION, "legal, in " + had + " rounds")
        : line(MORE_ROUNDS, "legal, in " + had + " rounds where " + needed + " would do");
  }

  private static MarkLine line(double points, String why) {
    return new MarkLine("question", points, Rubric.QUESTION, why);
  }
}
