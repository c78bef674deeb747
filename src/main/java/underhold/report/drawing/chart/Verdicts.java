package underhold.report.drawing.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Pen;
import underhold.sizing.Verdict;

/** The signs of verdicts: a tick, a cross, an open ring. */
final class Verdicts {
  private static final double HALF = 1.1;

  private Verdicts() {}

  /** Draws the sign about a middle on paper [mm]. */
  static void sign(Canvas canvas, Verdict verdict, double x, double y) {
    Path2D path = new Path2D.Double();
    switch (verdict) {
      case PASSES -> {
        path.moveTo(x - HALF, y);
        path.lineTo(x - HALF / 3, y + HALF * 0.8);
        path.lineTo(x + HALF, y - HALF);
        canvas.outline(Pen.NEW, Colours.NEW, path);
      }
      case FAILS -> {
        path.moveTo(x - HALF, y - HALF);
        path.lineTo(x + HALF, y + HALF);
        path.moveTo(x - HALF, y + HALF);
        path.lineTo(x + HALF, y - HALF);
        canvas.outline(Pen.NEW, Colours.ALERT, path);
      }
      case REFER ->
          canvas.outline(
              Pen.FORCE,
              Colours.WATER,
              new Ellipse2D.Double(x - HALF, y - HALF, 2 * HALF, 2 * HALF));
    }
  }
}
