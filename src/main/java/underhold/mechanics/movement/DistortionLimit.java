package underhold.mechanics.movement;

import java.util.List;
import java.util.Optional;

/**
 * Published limits of angular distortion, side by side; none is promoted over another.
 *
 * <p>Angular distortion is differential settlement over distance, less the tilt of the whole.
 * Surveys of standing buildings, so empirical: orders of magnitude, not thresholds. Each row names
 * its source. One course-note copy of Sowers prints 0.020 for continuous steel; the value here is
 * 0.002.
 *
 * @param id short name
 * @param author whose limit
 * @param structure what it is for
 * @param meaning what happens there
 * @param least careful end, dimensionless
 * @param most other end, the same where the author gives one value
 * @param citation source
 */
public record DistortionLimit(
    String id,
    String author,
    String structure,
    String meaning,
    double least,
    double most,
    Citation citation) {
  private static final List<DistortionLimit> ROWS =
      TableRows.read("angular-distortion-limits.csv", 8).stream().map(DistortionLimit::of).toList();

  public DistortionLimit {
    if (!(0 < least && least <= most && most < 1)) {
      throw new IllegalArgumentException(id + ": a limit from " + least + " to " + most);
    }
  }

  /** All rows, by author. */
  public static List<DistortionLimit> rows() {
    return ROWS;
  }

  /** The row of that id. */
  public static Optional<DistortionLimit> find(String id) {
    return ROWS.stream().filter(row -> row.id().equals(id)).findFirst();
  }

  private static DistortionLimit of(String[] cell) {
    return new DistortionLimit(
        cell[0],
        cell[1],
        cell[2],
        cell[3],
        number(cell[4]),
        number(cell[5]),
        new Citation(cell[6], Provenance.valueOf(cell[7])));
  }

  private static double number(String text) {
    return text.startsWith("1/")
        ? 1 / Double.parseDouble(text.substring(2))
        : Double.parseDouble(text);
  }
}
