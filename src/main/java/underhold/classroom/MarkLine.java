package underhold.classroom;

/**
 * The points for one part of an answer.
 *
 * @param part the part, in words
 * @param points points given
 * @param of points that could be had; 0 for points on top of the others
 * @param why why so many
 */
public record MarkLine(String part, double points, double of, String why) {
  public MarkLine {
    if (!(points >= 0 && of >= 0 && (points <= of || of == 0))) {
      throw new IllegalArgumentException(points + " of " + of + " points cannot be");
    }
  }
}
