package underhold.consult.contrast;

import underhold.advice.Finding;
import underhold.consult.Bearing;

/**
 * A finding that speaks of one of two options or of both.
 *
 * @param finding the finding
 * @param first what it does to the first option
 * @param second what it does to the second
 * @param points what it counts where it counts: above 0 for, below 0 against; 0 where it counts for
 *     neither
 */
public record Argument(Finding finding, Bearing first, Bearing second, int points) {
  public Argument {
    if (first == Bearing.NONE && second == Bearing.NONE) {
      throw new IllegalArgumentException(finding.rule().id() + " speaks of neither option");
    }
  }

  /** Whether it speaks of both. */
  public boolean shared() {
    return first != Bearing.NONE && second != Bearing.NONE;
  }

  /** What it adds to the score of the first option. */
  public int firstPoints() {
    return first == Bearing.COUNTS ? points : 0;
  }

  /** What it adds to the score of the second option. */
  public int secondPoints() {
    return second == Bearing.COUNTS ? points : 0;
  }

  /** Whether it rests on what is known. */
  public boolean known() {
    return !finding.assumed();
  }
}
