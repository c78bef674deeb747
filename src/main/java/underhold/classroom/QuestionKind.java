package underhold.classroom;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a question after the method asks for; each answer is reckoned by the program. */
public enum QuestionKind {
  /** An amount that follows from the facts of the zone. */
  AMOUNT("amount", "an amount with its unit, such as 2.4 m"),
  /** The result of a step of a calculation sheet. */
  RESULT("result", "an amount with its unit, such as 180 kN"),
  /** The verdict of a check of a calculation sheet. */
  VERDICT("verdict", "passes, fails or refer"),
  /** Which pits are open together, round by round. */
  ROUNDS("rounds", "the pits of each round, rounds parted by a stroke: 1 4 / 2 5 / 3"),
  /** The order of the stages of a calculation sheet. */
  ORDER("order", "the letters of the stages in their order: c a b");

  private final String word;
  private final String form;

  QuestionKind(String word, String form) {
    this.word = word;
    this.form = form;
  }

  /** The word in files. */
  public String word() {
    return word;
  }

  /** What an answer looks like. */
  public String form() {
    return form;
  }

  /** The kind of that word. */
  public static Optional<QuestionKind> find(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(QuestionKind::word).toList();
  }
}
