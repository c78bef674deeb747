package underhold.report.drawing.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Dimension lines along one side of what is drawn. Lines that would run into each other, or into
 * each other's words, go on the next row out, and words cover the extension lines behind them. Each
 * is a group {@code dim-NAME} with {@code data-axis}, {@code data-from} and {@code data-to} [mm on
 * paper], {@code data-ratio} of the scale and {@code data-text}, so that it can be read back and
 * measured.
 */
public final class Dimensions {
  /** From one row to the next [mm]. */
  public static final double ROW = 5;

  private static final double AIR = 0.9;
  private static final double OVERRUN = 1.2;
  private static final double TICK = 0.9;

  /** Words stand clear of the ticks, which they may reach over where the line is short. */
  private static final double LIFT = 1.2;

  /** Which side the lines stand on, outwards. */
  public enum Side {
    BELOW,
    ABOVE,
    LEFT,
    RIGHT;

    boolean level() {
      return this == BELOW || this == ABOVE;
    }

    int outwards() {
      return this == BELOW || this == RIGHT ? 1 : -1;
    }
  }

  private record Entry(String name, double from, double to, double edge, String text, Pen pen) {}

  private final Canvas canvas;
  private final View view;
  private final Side side;
  private final double first;
  private final List<Entry> entries = new ArrayList<>();

  /**
   * No line yet.
   *
   * @param first where the innermost row lies on paper [mm]
   */
  public Dimensions(Canvas canvas, View view, Side side, double first) {
    this.canvas = canvas;
    this.view = view;
    this.side = side;
    this.first = first;
  }

  /**
   * A dimension between two places of the world.
   *
   * @param name names its group
   * @param from one place along the line [m]
   * @param to the other [m]
   * @param edge where on the other axis its extension lines begin [m]
   * @param text what is written, with its unit
   */
  public Dimensions add(String name, double from, double to, double edge, String text) {
    return add(name, from, to, edge, text, Pen.THIN);
  }

  /** A dimension of what is not known: dashed, its words say so. */
  public Dimensions unknown(String name, double from, double to, double edge, String text) {
    return add(name, from, to, edge, text, Pen.UNKNOWN);
  }

  private Dimensions add(String name, double from, double to, double edge, String text, Pen pen) {
    entries.add(
        new Entry(
            name, paper(Math.min(from, to)), paper(Math.max(from, to)), across(edge), text, pen));
    return this;
  }

  private double paper(double metres) {
    return side.level() ? view.x(metres) : view.y(metres);
  }

  private double across(double metres) {
    return side.level() ? view.y(metres) : view.x(metres);
  }

  /** Draws them all; gives where the outermost row lies on paper [mm]. */
  public double draw() {
    List<List<double[]>> rows = new ArrayList<>();
    List<List<Entry>> drawn = new ArrayList<>();
    for (Entry entry : entries) {
      double[] taken = taken(entry);
      int row = 0;
      while (row < rows.size() && meets(rows.get(row), taken[0], taken[1])) {
        row++;
      }
      if (row == rows.size()) {
        rows.add(new ArrayList<>());
        drawn.add(new ArrayList<>());
      }
      rows.get(row).add(taken);
      drawn.get(row).add(entry);
    }
    for (int row = rows.size() - 1; row >= 0; row--) {
      double at = first + side.outwards() * row * ROW;
      drawn.get(row).forEach(entry -> group(entry, at));
    }
    return first + side.outwards() * ROW * Math.max(0, rows.size() - 1);
  }

  /** What line and words take along the row [mm]. */
  private static double[] taken(Entry entry) {
    double wide = Letters.DIMENSION.width(Lettering.clean(entry.text));
    double middle = (entry.from + entry.to) / 2;
    boolean fits = wide + AIR <= entry.to - entry.from;
    return fits
        ? new double[] {entry.from, entry.to}
        : new double[] {
          Math.min(entry.from, middle - wide / 2 - AIR), Math.max(entry.to, middle + wide / 2 + AIR)
        };
  }

  private static boolean meets(List<double[]> row, double from, double to) {
    double touch = 0.01;
    return row.stream().anyMatch(other -> from < other[1] - touch && to > other[0] + touch);
  }

  private void group(Entry entry, double at) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("axis", side.level() ? "x" : "y");
    values.put("from", String.valueOf(entry.from));
    values.put("to", String.valueOf(entry.to));
    values.put("ratio", String.valueOf(view.scale().ratio()));
    values.put("text", entry.text);
    if (!entry.text.isBlank()) {
      canvas.measured(entry.name, Lettering.clean(entry.text));
    }
    canvas.group("dim-" + entry.name, values, () -> draw(entry, at));
  }

  private void draw(Entry entry, double at) {
    extension(entry.from, entry.edge, at);
    extension(entry.to, entry.edge, at);
    double middle = (entry.from + entry.to) / 2;
    if (side.level()) {
      canvas.label(entry.text, middle, at - LIFT, Letters.DIMENSION);
    } else {
      canvas.upright(entry.text, at - LIFT, middle, Letters.DIMENSION);
    }
    line(entry.pen, entry.from, at, entry.to, at);
    tick(entry.from, at);
    tick(entry.to, at);
  }

  private void extension(double place, double edge, double at) {
    double gap = side.outwards() * AIR;
    if ((at - edge) * side.outwards() > AIR) {
      line(Pen.THIN, place, edge + gap, place, at + side.outwards() * OVERRUN);
    }
  }

  private void tick(double place, double at) {
    line(Pen.MEDIUM, place - TICK, at + TICK, place + TICK, at - TICK);
  }

  private void line(Pen pen, double from, double at, double to, double toAt) {
    if (side.level()) {
      canvas.line(pen, from, at, to, toAt);
    } else {
      canvas.line(pen, at, from, toAt, to);
    }
  }
}
