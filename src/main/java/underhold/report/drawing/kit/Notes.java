package underhold.report.drawing.kit;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Notes in a column on either side of the drawing, each with a leader to what it speaks of. They
 * keep the order of their targets from top to bottom and never overlap.
 */
public final class Notes {
  private static final double AIR = 1.6;
  private static final double ELBOW = 3;

  private record Entry(double x, double y, List<String> lines, Letters letters) {
    double height() {
      return lines.size() * letters.line();
    }
  }

  private final Canvas canvas;
  private final double left;
  private final double top;
  private final double width;
  private final List<Entry> entries = new ArrayList<>();

  /**
   * An empty column on paper [mm].
   *
   * @param left where the words begin
   * @param top above which no words stand
   * @param width of the column
   */
  public Notes(Canvas canvas, double left, double top, double width) {
    this.canvas = canvas;
    this.left = left;
    this.top = top;
    this.width = width;
  }

  /** A note of what lies there on paper [mm]. */
  public Notes add(double x, double y, String text) {
    return add(x, y, text, Letters.NOTE);
  }

  /** The same in letters of its own. */
  public Notes add(double x, double y, String text, Letters letters) {
    entries.add(new Entry(x, y, Lettering.wrap(text, width, letters), letters));
    return this;
  }

  /** Draws them; gives where the lowest ends [mm]. */
  public double draw() {
    List<Entry> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparingDouble(Entry::y));
    double[] tops = places(sorted);
    double low = top;
    for (int i = 0; i < sorted.size(); i++) {
      draw(sorted.get(i), tops[i], i);
      low = Math.max(low, tops[i] + sorted.get(i).height());
    }
    return low;
  }

  /** Each at its target where it can, pushed down by those above. */
  private double[] places(List<Entry> sorted) {
    int count = sorted.size();
    double[] tops = new double[count];
    double next = top;
    for (int i = 0; i < count; i++) {
      Entry entry = sorted.get(i);
      tops[i] = Math.max(next, entry.y - entry.letters.line() * 0.6);
      next = tops[i] + entry.height() + AIR;
    }
    return tops;
  }

  private static double first(Entry entry) {
    return entry.letters.width(entry.lines.get(0));
  }

  private void draw(Entry entry, double at, int number) {
    canvas.group(
        "note-" + (number + 1),
        () -> {
          double feet = at + entry.letters.size();
          double middle = at + entry.letters.line() * 0.6;
          boolean after = entry.x > left + width / 2;
          double end = after ? left + first(entry) + 1 : left - 1;
          double elbow = after ? end + ELBOW - 1 : left - ELBOW;
          canvas.line(Pen.THIN, end, middle, elbow, middle);
          canvas.line(Pen.THIN, elbow, middle, entry.x, entry.y);
          canvas.dot(Colours.FINE, new Point2D.Double(entry.x, entry.y), 0.9);
          for (String line : entry.lines) {
            canvas.text(line, left, feet, entry.letters);
            feet += entry.letters.line();
          }
        });
  }
}
