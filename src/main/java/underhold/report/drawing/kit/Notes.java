package underhold.report.drawing.kit;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Notes in a column on either side of the drawing, each with a leader to what it speaks of. Each
 * stands as near its target as those beside it allow, none overlap, and where their order decides
 * it no leader crosses another.
 */
public final class Notes {
  private static final double AIR = 1.6;
  private static final double ELBOW = 3;

  /** Targets this far apart keep their leaders apart [mm]. */
  private static final double CLEAR = 5;

  /** Heights tried on either side of the middle of an area. */
  private static final int PLACES = 9;

  private record Entry(double x, double y, List<String> lines, Letters letters) {
    double height() {
      return lines.size() * letters.line();
    }

    double wish() {
      return y - letters.line() * 0.6;
    }
  }

  /** A note of an area, whose leader may end anywhere between two heights on paper [mm]. */
  private record Area(double x, double high, double low, String text) {}

  private final Canvas canvas;
  private final double left;
  private final double top;
  private final double width;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Area> areas = new ArrayList<>();

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

  /** A note of an area between two heights on paper [mm]; its leader ends clear of the others. */
  public Notes addWithin(double x, double high, double low, String text) {
    areas.add(new Area(x, high, low, text));
    return this;
  }

  /** Draws them; gives where the lowest ends [mm]. */
  public double draw() {
    areas.forEach(area -> add(area.x(), free(area), area.text()));
    areas.clear();
    List<Entry> order = new ArrayList<>(entries);
    order.sort(Comparator.comparingDouble(Entry::y));
    untangle(order);
    double[] tops = places(order);
    double low = top;
    for (int i = 0; i < order.size(); i++) {
      draw(order.get(i), tops[i], i);
      low = Math.max(low, tops[i] + order.get(i).height());
    }
    return low;
  }

  /** The height in the area nearest its middle that is clear of other targets, or the clearest. */
  private double free(Area area) {
    double middle = (area.high() + area.low()) / 2;
    double best = middle;
    double step = (area.low() - area.high()) / (2 * PLACES + 2);
    for (int i = 0; i <= 2 * PLACES && room(best) < CLEAR; i++) {
      double y = middle + (i % 2 == 0 ? -1 : 1) * (i / 2 + i % 2) * step;
      best = room(y) > room(best) + 1e-6 ? y : best;
    }
    return best;
  }

  private double room(double y) {
    return entries.stream().mapToDouble(entry -> Math.abs(entry.y() - y)).min().orElse(CLEAR);
  }

  /** Notes whose leaders cross others move to where fewest do, as often as that helps. */
  private void untangle(List<Entry> order) {
    int least = crossings(order);
    for (int i = 0; i < order.size() && least > 0; i++) {
      int best = i;
      for (int to = 0; to < order.size(); to++) {
        int count = crossings(moved(order, i, to));
        if (count < least) {
          least = count;
          best = to;
        }
      }
      if (best != i) {
        order.add(best, order.remove(i));
        i = -1;
      }
    }
  }

  private static List<Entry> moved(List<Entry> order, int from, int to) {
    List<Entry> moved = new ArrayList<>(order);
    moved.add(to, moved.remove(from));
    return moved;
  }

  private int crossings(List<Entry> order) {
    int count = 0;
    for (int i = 0; i < order.size(); i++) {
      count += crossings(order, i);
    }
    return count;
  }

  /** How many leaders of those after it the leader of a note crosses. */
  private int crossings(List<Entry> order, int index) {
    double[] tops = places(order);
    Line2D own = leader(order.get(index), tops[index]);
    int count = 0;
    for (int i = index + 1; i < order.size(); i++) {
      Line2D other = leader(order.get(i), tops[i]);
      count += own.intersectsLine(other) ? 1 : 0;
    }
    return count;
  }

  private Line2D leader(Entry entry, double at) {
    return new Line2D.Double(elbow(entry), at + entry.letters.line() * 0.6, entry.x, entry.y);
  }

  private boolean after(Entry entry) {
    return entry.x > left + width / 2;
  }

  /** Where the level part of a leader begins at the words. */
  private double end(Entry entry) {
    return after(entry) ? left + first(entry) + 1 : left - 1;
  }

  private double elbow(Entry entry) {
    return after(entry) ? left + width + 1 : left - ELBOW;
  }

  /**
   * The tops in this order that are, square by square, nearest to where each would stand alone:
   * notes that meet form a block that is set about the mean of their wishes.
   */
  private double[] places(List<Entry> order) {
    int count = order.size();
    double[] above = new double[count];
    for (int i = 1; i < count; i++) {
      above[i] = above[i - 1] + order.get(i - 1).height() + AIR;
    }
    double[] mean = new double[count];
    int[] members = new int[count];
    int blocks = 0;
    for (int i = 0; i < count; i++) {
      mean[blocks] = order.get(i).wish() - above[i];
      members[blocks] = 1;
      while (blocks > 0 && mean[blocks - 1] > mean[blocks]) {
        int both = members[blocks - 1] + members[blocks];
        mean[blocks - 1] =
            (mean[blocks - 1] * members[blocks - 1] + mean[blocks] * members[blocks]) / both;
        members[blocks - 1] = both;
        blocks--;
      }
      blocks++;
    }
    double[] tops = new double[count];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int member = 0; member < members[block]; member++) {
        tops[at] = Math.max(top, mean[block]) + above[at];
        at++;
      }
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
          double elbow = elbow(entry);
          canvas.line(Pen.THIN, end(entry), middle, elbow, middle);
          canvas.line(Pen.THIN, elbow, middle, entry.x, entry.y);
          canvas.dot(Colours.FINE, new Point2D.Double(entry.x, entry.y), 0.9);
          for (String line : entry.lines) {
            canvas.text(line, left, feet, entry.letters);
            feet += entry.letters.line();
          }
        });
  }
}
