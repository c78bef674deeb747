package underhold.classroom;

import java.util.List;

/** What an answer is marked by; students may see it. The weights are judgement. */
public final class Rubric {
  /** Points for the method. */
  public static final int CHOICE = 3;

  /** Points for the facts that decided it. */
  public static final int FACTS = 3;

  /** Points for what must be checked first. */
  public static final int CHECKS = 2;

  /** Points for the dangers. */
  public static final int DANGERS = 2;

  /** Points for a changed mind with a good reason, on top of the others. */
  public static final int CHANGED = 1;

  /** Points for a number, a verdict or a sequence. */
  public static final int QUESTION = 4;

  /** How many facts, checks and dangers of an answer count, the first ones. */
  public static final int MOST_NAMED = 5;

  private Rubric() {}

  /**
   * A part of the rubric.
   *
   * @param part what it is about
   * @param points points to be had
   * @param means what they are given for
   */
  public record Row(String part, int points, String means) {}

  /** All parts, with what they mean. */
  public static List<Row> rows() {
    return List.of(
        new Row(
            "method",
            CHOICE,
            "3 for what leads on the facts you had, or ties; 3 for none where nothing leads yet."
                + " 2 for a held method named with the fact it waits for, for one that works and has"
                + " more for it than against it, and for waiting where a held one could lead. 1 for"
                + " any other that is not ruled out, and for waiting where a method leads. 0 for one"
                + " that is ruled out."),
        new Row(
            "deciding facts",
            FACTS,
            "In full once three facts are named whose change would turn the answer, or all where"
                + " there are fewer. A half for each other fact on which the reasons rest; while"
                + " nothing leads those count in full. The first five named count; what you did not know yet does not."),
        new Row(
            "to check first",
            CHECKS,
            "1 for each fact not known yet that could turn the answer or frees what is held. In full"
                + " where nothing is open and nothing is asked."),
        new Row("dangers", DANGERS, "1 for each danger of which the rules warn with that method."),
        new Row(
            "changed mind",
            CHANGED,
            "1 on top where the method changed because of a fact that was not known before and that"
                + " matters, for a method worth at least 2."),
        new Row(
            "question",
            QUESTION,
            "4 for a number within its tolerance, the right verdict or a legal sequence; 2 for a"
                + " number within three times the tolerance; 3 for legal rounds that are more than"
                + " needed; 0 for a sequence that breaks a rule."));
  }
}
