package underhold.classroom;

import java.util.ArrayList;
import java.util.List;

/**
 * The mark of one answer.
 *
 * @param student the student
 * @param of the case
 * @param stage the number of the stage it was given at, from 0
 * @param about the zone, or the question
 * @param lines part by part
 * @param feedback why, in two or three sentences
 */
public record Mark(
    String student,
    String of,
    int stage,
    String about,
    List<MarkLine> lines,
    List<String> feedback) {
  /** The part that tells of answers that do not count. */
  public static final String EARLIER = "answered again";

  public Mark {
    lines = List.copyOf(lines);
    feedback = List.copyOf(feedback);
  }

  /**
   * The same mark, saying which answer counts where there were several.
   *
   * @param all what the answers of this turn chose, this one last
   */
  Mark after(List<String> all) {
    if (all.size() < 2) {
      return this;
    }
    List<MarkLine> more = new ArrayList<>(lines);
    more.add(
        new MarkLine(
            EARLIER,
            0,
            0,
            "the last of "
                + all.size()
                + " answers counts; before it: "
                + String.join(", ", all.subList(0, all.size() - 1))));
    return new Mark(student, of, stage, about, more, feedback);
  }

  /** Points given. */
  public double points() {
    return lines.stream().mapToDouble(MarkLine::points).sum();
  }

  /** Points that could be had. */
  public double outOf() {
    return lines.stream().mapToDouble(MarkLine::of).sum();
  }
}
