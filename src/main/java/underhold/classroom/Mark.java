package underhold.classroom;

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
  public Mark {
    lines = List.copyOf(lines);
    feedback = List.copyOf(feedback);
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
