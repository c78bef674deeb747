package underhold.sizing.pits.order;

import java.util.Collection;
import java.util.Collections;
import java.util.List;

/** Pits side by side along one wall, from end to end. */
public final class PitRow {
  private final List<Double> widthsMetres;
  private final double[] edges;

  /**
   * Pits of given widths.
   *
   * @param widthsMetres width of each pit along the wall
   */
  public PitRow(List<Double> widthsMetres) {
    this.widthsMetres = List.copyOf(widthsMetres);
    if (widthsMetres.isEmpty()) {
      throw new IllegalArgumentException("a row needs at least one pit");
    }
    this.edges = new double[widthsMetres.size() + 1];
    for (int pit = 0; pit < widthsMetres.size(); pit++) {
      double width = widthsMetres.get(pit);
      if (!(width > 0) || Double.isInfinite(width)) {
        throw new IllegalArgumentException("pit width is " + width + " m, it must be above 0 m");
      }
      edges[pit + 1] = edges[pit] + width;
    }
  }

  /** Pits of one width. */
  public static PitRow equal(int count, double widthMetres) {
    return new PitRow(Collections.nCopies(count, widthMetres));
  }

  /** Widths from one end to the other, m. */
  public List<Double> widthsMetres() {
    return widthsMetres;
  }

  /** Number of pits. */
  public int count() {
    return widthsMetres.size();
  }

  /** Length of the wall, m. */
  public double lengthMetres() {
    return edges[count()];
  }

  /** Width of a pit, m. */
  public double width(int pit) {
    return widthsMetres.get(pit);
  }

  /** Clear distance between two different pits, m. */
  public double clearDistance(int one, int other) {
    return edges[Math.max(one, other)] - edges[Math.min(one, other) + 1];
  }

  /** Length of wall over some pits, m. */
  public double lengthOf(Collection<Integer> pits) {
    double length = 0;
    for (int pit : pits) {
      length += width(pit);
    }
    return length;
  }
}
