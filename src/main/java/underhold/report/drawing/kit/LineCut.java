package underhold.report.drawing.kit;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Cuts a line to the parts of it that lie inside a shape. */
final class LineCut {
  /** How far a flattened curve may lie from its edge [mm]. */
  private static final double FLATNESS = 0.05;

  private static final double SHORTEST = 0.05;

  private LineCut() {}

  static List<Line2D> inside(Shape shape, Line2D line) {
    List<Double> places = crossings(shape, line);
    places.add(0.0);
    places.add(1.0);
    places.sort(Double::compare);
    List<Line2D> parts = new ArrayList<>();
    for (int i = 0; i + 1 < places.size(); i++) {
      double from = places.get(i);
      double to = places.get(i + 1);
      Line2D part = new Line2D.Double(x(line, from), y(line, from), x(line, to), y(line, to));
      double middle = (from + to) / 2;
      if (part.getP1().distance(part.getP2()) > SHORTEST
          && shape.contains(x(line, middle), y(line, middle))) {
        parts.add(part);
      }
    }
    return parts;
  }

  private static double x(Line2D line, double share) {
    return line.getX1() + share * (line.getX2() - line.getX1());
  }

  private static double y(Line2D line, double share) {
    return line.getY1() + share * (line.getY2() - line.getY1());
  }

  private static List<Double> crossings(Shape shape, Line2D line) {
    List<Double> places = new ArrayList<>();
    double[] point = new double[6];
    double startX = 0;
    double startY = 0;
    double lastX = 0;
    double lastY = 0;
    for (PathIterator edges = shape.getPathIterator(null, FLATNESS);
        !edges.isDone();
        edges.next()) {
      int kind = edges.currentSegment(point);
      if (kind == PathIterator.SEG_MOVETO) {
        startX = point[0];
        startY = point[1];
      } else if (kind == PathIterator.SEG_LINETO) {
        crossing(line, lastX, lastY, point[0], point[1], places);
      } else {
        crossing(line, lastX, lastY, startX, startY, places);
      }
      lastX = kind == PathIterator.SEG_CLOSE ? startX : point[0];
      lastY = kind == PathIterator.SEG_CLOSE ? startY : point[1];
    }
    return places;
  }

  private static void crossing(
      Line2D line, double fromX, double fromY, double toX, double toY, List<Double> places) {
    double alongX = line.getX2() - line.getX1();
    double alongY = line.getY2() - line.getY1();
    double edgeX = toX - fromX;
    double edgeY = toY - fromY;
    double turn = alongX * edgeY - alongY * edgeX;
    if (Math.abs(turn) < 1e-12) {
      return;
    }
    double overX = fromX - line.getX1();
    double overY = fromY - line.getY1();
    double share = (overX * edgeY - overY * edgeX) / turn;
    double onEdge = (overX * alongY - overY * alongX) / turn;
    if (share > 0 && share < 1 && onEdge >= 0 && onEdge <= 1) {
      places.add(share);
    }
  }
}
