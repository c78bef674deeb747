package underhold.report.drawing.kit;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Where the world lies on paper.
 *
 * @param scale the scale
 * @param zeroX where x = 0 of the world lies [mm]
 * @param zeroY where y = 0 of the world lies, depth or plan going down [mm]
 */
public record View(DrawingScale scale, double zeroX, double zeroY) {
  /** Paper x [mm] of a world x [m]. */
  public double x(double metres) {
    return zeroX + scale.paper(metres);
  }

  /** Paper y [mm] of a world depth [m]. */
  public double y(double metres) {
    return zeroY + scale.paper(metres);
  }

  /** A rectangle on paper between two corners of the world [m]. */
  public Rectangle2D box(double left, double top, double right, double bottom) {
    return new Rectangle2D.Double(
        x(Math.min(left, right)),
        y(Math.min(top, bottom)),
        scale.paper(Math.abs(right - left)),
        scale.paper(Math.abs(bottom - top)));
  }

  /** A closed shape on paper through points of the world: x, y, x, y [m]. */
  public Shape shape(double... points) {
    Path2D path = new Path2D.Double();
    path.moveTo(x(points[0]), y(points[1]));
    for (int i = 2; i + 1 < points.length; i += 2) {
      path.lineTo(x(points[i]), y(points[i + 1]));
    }
    path.closePath();
    return path;
  }
}
