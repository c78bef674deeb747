package underhold.report.drawing.chart;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Pen;

/** How a bar is filled; told apart in grey as well. */
enum Fill {
  SOLID,
  STRIPED,
  DOTTED,
  OPEN,
  /** Open with a dashed edge. */
  DASHED;

  private static final double STRIPE = 1.5;
  private static final double GRID = 1.5;
  private static final double DOT = 0.45;

  /** Draws a bar; nothing where it has no width. */
  void draw(Canvas canvas, Color ink, Rectangle2D bar) {
    if (bar.isEmpty()) {
      return;
    }
    canvas.fill(this == SOLID ? ink : Colours.PAPER, bar);
    if (this == STRIPED) {
      canvas.outline(Pen.MEDIUM, ink, stripes(bar));
    }
    if (this == DOTTED) {
      dots(canvas, ink, bar);
    }
    canvas.outline(this == DASHED ? Pen.UNKNOWN : Pen.MEDIUM, ink, bar);
  }

  /** Lines at 45 degrees, cut to the bar. */
  private static Path2D stripes(Rectangle2D bar) {
    Path2D path = new Path2D.Double();
    double first = bar.getMinX() + bar.getMinY();
    double last = bar.getMaxX() + bar.getMaxY();
    path.moveTo(bar.getMinX(), bar.getMinY());
    for (double sum = first + STRIPE / 2; sum < last; sum += STRIPE) {
      double left = Math.max(bar.getMinX(), sum - bar.getMaxY());
      double right = Math.min(bar.getMaxX(), sum - bar.getMinY());
      path.moveTo(left, sum - left);
      path.lineTo(right, sum - right);
    }
    return path;
  }

  private static void dots(Canvas canvas, Color ink, Rectangle2D bar) {
    Path2D path = new Path2D.Double();
    int row = 0;
    for (double y = bar.getMinY() + GRID / 2; y < bar.getMaxY() - DOT / 2; y += GRID / 2) {
      double shift = row++ % 2 == 0 ? GRID / 2 : GRID;
      for (double x = bar.getMinX() + shift; x < bar.getMaxX() - DOT / 2; x += GRID) {
        path.append(new Ellipse2D.Double(x - DOT / 2, y - DOT / 2, DOT, DOT), false);
      }
    }
    if (path.getCurrentPoint() != null) {
      canvas.fill(ink, path);
    }
  }
}
