package underhold.sizing;

import java.util.List;

/**
 * A stage of the work.
 *
 * @param title what it is
 * @param work what is done, in order
 * @param holdPoints what must be released before the next stage
 */
public record Stage(String title, List<Phrase> work, List<HoldPoint> holdPoints) {
  public Stage {
    work = List.copyOf(work);
    holdPoints = List.copyOf(holdPoints);
  }
}
