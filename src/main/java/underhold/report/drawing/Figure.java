package underhold.report.drawing;

import java.util.List;

/**
 * A finished drawing.
 *
 * @param id its anchor in a document: lower-case words joined by hyphens, no two alike in one
 *     document
 * @param title what it shows
 * @param svg the drawing: one {@code svg} element with a viewBox, no XML declaration, nothing
 *     fetched from elsewhere
 * @param widthMillimetres its width on paper [mm]
 * @param heightMillimetres its height on paper [mm]
 * @param equivalent the same in words and plain text, line by line, for whoever cannot see it;
 *     every number with its unit
 */
public record Figure(
    String id,
    String title,
    String svg,
    double widthMillimetres,
    double heightMillimetres,
    List<String> equivalent) {

  public Figure {
    equivalent = List.copyOf(equivalent);
    if (!svg.startsWith("<svg") || equivalent.isEmpty()) {
      throw new IllegalArgumentException("a drawing needs its svg and its text: " + id);
    }
    if (!(widthMillimetres > 0) || !(heightMillimetres > 0)) {
      throw new IllegalArgumentException("a drawing needs a size on paper: " + id);
    }
  }
}
