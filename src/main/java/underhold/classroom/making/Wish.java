package underhold.classroom.making;

import underhold.advice.SupportOption;
import underhold.classroom.Level;

/**
 * What a trainer asks for.
 *
 * @param leader the method that shall lead once all is known
 * @param level how much the case shall ask of its student
 * @param theme what shall decide
 * @param seed the same seed gives the same case
 */
public record Wish(SupportOption leader, Level level, Theme theme, int seed) {
  /** The wish in running text: {@code needle beams, water, at the third level}. */
  public String words() {
    return leader.label() + " first, " + theme.word() + ", at the " + level.word() + " level";
  }

  /** Where the draws start; every wish has its own. */
  long start() {
    long start = seed;
    for (int part : new int[] {leader.ordinal(), level.ordinal(), theme.ordinal()}) {
      start = 31 * start + part;
    }
    return start;
  }
}
