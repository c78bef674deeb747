package underhold.sizing.pits.order;

import java.util.Collection;
import java.util.Collections;
import java.util.List;

/**
 * Pits side by side along one wall, from end to end.
 *
 * @param widthsMetres width of each pit along the wall
 */
public record PitRow(List<Double> widthsMetres) {
  public PitRow {
    widthsMetres = List.copyOf(widthsMetres);
    if (widthsMetres.isEmpty()) {
      throw new IllegalArgumentException("a row needs at least one pit");
    }
    for (double width : widthsMetres) {
      if (!(width > 0) || Double.isInfinite(width)) {
        throw new IllegalArgumentException("pit width is " + width + " m, it must be above 0 m");
      }
    }
  }

  /** Pits of one width. */
  public static PitRow equal(int count, double widthMetres) {
    return new PitRow(Collections.nCopies(count, widthMetres));
  }

  /** Number of pits. */
  public int count() {
    return widthsMetres.size();
  }

  /** Length of the wall, m. */
  public double lengthMetres() {
    return widthsMetres.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Width of a pit, m. */
  public double width(int pit) {
    return widthsMetres.get(pit);
  }

  /** Clear distance between two different pits, m. */
  public double clearDistance(int one, int other) {
    double clear = 0;
    for (int pit = Math.min(one, other) + 1; pit < Math.max(one, other); pit++) {
      clear += width(pit);
    }
    return clear;
  }

  /** Length of wall over some pits, m. */
  public double lengthOf(Collection<Integer> pits) {
    return pits.stream().mapToDouble(this::width).sum();
  }
}
