package underhold.sizing;

import java.util.List;

/**
 * A stage of the work.
 *
 * @param title what it is
 * @param work what is done, in order
 * @param holdPoints what must be released before the next stage
 * @param role what it does
 * @param detail what it counts
 */
public record Stage(
    String title,
    List<Phrase> work,
    List<HoldPoint> holdPoints,
    StageRole role,
    StageDetail detail) {
  public Stage {
    work = List.copyOf(work);
    holdPoints = List.copyOf(holdPoints);
  }

  /** A stage of that role that counts nothing. */
  public Stage(StageRole role, String title, List<Phrase> work, List<HoldPoint> holdPoints) {
    this(title, work, holdPoints, role, new StageDetail.None());
  }

  /** The same stage with what it counts. */
  public Stage with(StageDetail counted) {
    return new Stage(title, work, holdPoints, role, counted);
  }
}
