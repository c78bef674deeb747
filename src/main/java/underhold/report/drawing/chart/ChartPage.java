package underhold.report.drawing.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Lettering;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;

/** What all charts have in common: paper, heading, grid lines, key, caution. */
final class ChartPage {
  /** Width of a chart on paper [mm]. */
  static final double WIDTH = 170;

  /** Left and right edge of what is drawn [mm]. */
  static final double EDGE = 2;

  private static final double KEY_BOX = 6;
  private static final double KEY_HEIGHT = 3.2;
  private static final double KEY_AIR = 5;

  private final Canvas canvas;
  private final String title;
  private final double top;

  ChartPage(String id, String title, String of) {
    this.canvas = new Canvas(id, WIDTH);
    this.title = title;
    this.top = Symbols.heading(canvas, title, of);
  }

  Canvas canvas() {
    return canvas;
  }

  /** Where the chart may begin [mm]. */
  double top() {
    return top;
  }

  /** Ticks and their values below a level axis, thin lines up from it, its name below. */
  void levelAxis(Axis axis, double top, double bottom, String name) {
    for (double tick : axis.ticks()) {
      double x = axis.at(tick);
      canvas.line(Pen.HATCH, x, top, x, bottom);
      canvas.line(Pen.THIN, x, bottom, x, bottom + 1);
      canvas.text(axis.label(tick), x, bottom + 3.8, Letters.DIMENSION);
    }
    canvas.line(Pen.MEDIUM, axis.from(), bottom, axis.to(), bottom);
    canvas.text(name, (axis.from() + axis.to()) / 2, bottom + 8, Letters.DIMENSION.heavy());
  }

  /** The same for an axis going down the left side. */
  void depthAxis(Axis axis, double left, double right, String name) {
    for (double tick : axis.ticks()) {
      double y = axis.at(tick);
      canvas.line(Pen.HATCH, left, y, right, y);
      canvas.line(Pen.THIN, left - 1, y, left, y);
      canvas.text(axis.label(tick), left - 1.6, y + 0.9, Letters.DIMENSION.end());
    }
    canvas.line(Pen.MEDIUM, left, axis.from(), left, axis.to());
    double widest =
        axis.ticks().stream()
            .mapToDouble(tick -> Letters.DIMENSION.width(axis.label(tick)))
            .max()
            .orElse(0);
    canvas.upright(
        name, left - widest - 3.4, (axis.from() + axis.to()) / 2, Letters.DIMENSION.heavy());
  }

  /**
   * One entry of a key.
   *
   * @param fill how its bars are filled
   * @param ink their colour
   * @param words what they mean
   */
  record Key(Fill fill, Color ink, String words) {}

  /** A key from left to right, on more lines where it is long; gives where it ends [mm]. */
  double key(double y, List<Key> keys) {
    double x = EDGE;
    double line = y;
    for (Key key : keys) {
      double wide = KEY_BOX + 1.5 + Letters.NOTE.width(key.words());
      if (x > EDGE && x + wide > WIDTH - EDGE) {
        x = EDGE;
        line += KEY_AIR;
      }
      key.fill().draw(canvas, key.ink(), new Rectangle2D.Double(x, line, KEY_BOX, KEY_HEIGHT));
      canvas.text(key.words(), x + KEY_BOX + 1.5, line + 2.6, Letters.NOTE);
      x += wide + KEY_AIR;
    }
    return line + KEY_AIR;
  }

  /** Words on as many lines as they take, two at most; what is cut is told in the figure's text. */
  List<String> lines(String words, double wide, Letters letters) {
    List<String> lines = Lettering.wrap(words, wide, letters);
    return lines.size() <= 2
        ? lines
        : List.of(lines.get(0), cut(words, lines.get(0), wide, letters));
  }

  private String cut(String words, String first, double wide, Letters letters) {
    String clean = Lettering.clean(words);
    return canvas.fit(clean.substring(first.length()).strip(), wide, letters);
  }

  /** Words below the chart, the caution, and the finished figure. */
  Figure finish(List<String> notes, String description, List<String> equivalent) {
    double y = canvas.bottom() + 3.5;
    for (String note : notes) {
      y = canvas.paragraph(note, EDGE, y + 2, WIDTH - 2 * EDGE, Letters.NOTE);
    }
    double line = canvas.bottom() + 2;
    canvas.line(Pen.MEDIUM, EDGE, line, WIDTH - EDGE, line);
    canvas.text(Symbols.NOT_FOR_CONSTRUCTION, EDGE, line + 4, Letters.DIMENSION.start());
    return canvas.finish(title, description, equivalent);
  }
}
