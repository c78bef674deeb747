package underhold.report.drawing.kit;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The marks of a hatch inside a shape, as one path. Marks lie on a grid of the paper with a shift
 * that hangs on their place alone, so the same shape always has the same marks. Nothing is clipped
 * by the viewer: small marks that would cross the edge are left out, long lines are cut to it.
 */
final class HatchMarks {
  /** No area gets more marks than this; a larger one gets them wider apart. */
  private static final int MOST = 4000;

  private final Shape shape;
  private final Rectangle2D bounds;
  private final Path2D path = new Path2D.Double();

  private HatchMarks(Shape shape) {
    this.shape = shape;
    this.bounds = shape.getBounds2D();
  }

  static Path2D of(Hatch hatch, Shape shape) {
    HatchMarks marks = new HatchMarks(shape);
    switch (hatch) {
      case CONCRETE -> marks.scatter(2.6, 1.1, marks::aggregate);
      case NEW_CONCRETE -> marks.newConcrete();
      case MASONRY -> marks.courses();
      case STEEL -> marks.slanted(0.9, 1);
      case TIMBER -> marks.grain();
      case DRY_PACK -> marks.scatter(0.75, 0.2, marks::point);
      case CLAY -> marks.scatter(2.6, 1.7, marks::dash);
      case SILT -> marks.scatter(2.3, 1.5, marks::dashAndPoint);
      case SAND -> marks.scatter(1.6, 0.3, marks::point);
      case GRAVEL -> marks.scatter(2.5, 1.4, marks::pebble);
      case FILL -> marks.scatter(3.0, 1.5, marks::rubble);
      case ROCK -> marks.scatter(4.2, 3.0, marks::fissure);
      case ORGANIC -> marks.scatter(3.0, 1.6, marks::tuft);
      case UNKNOWN -> marks.slanted(5.0, 1);
      case WATER -> marks.scatter(4.0, 2.2, marks::ripple);
      case STRIPES -> marks.slanted(1.5, 1);
      case DOTS -> marks.scatter(1.5, 0.3, marks::point);
      case LEVELS -> marks.levels(1.1);
      case CROSSES -> marks.scatter(1.9, 0.9, marks::cross);
      case UPRIGHTS -> marks.uprights(1.1);
      case RINGS -> marks.scatter(2.0, 1.1, (x, y, turn) -> marks.pebble(x, y, 0.3));
      case PLAIN -> {}
    }
    return marks.path;
  }

  /** A mark about a middle; the turn from 0 to 1 varies it. */
  private interface Mark {
    void at(double x, double y, double turn);
  }

  private void newConcrete() {
    slanted(3.2, 1);
    scatter(3.2, 0.9, this::aggregate);
  }

  private void scatter(double asked, double size, Mark mark) {
    double pitch = Math.max(asked, Math.sqrt(bounds.getWidth() * bounds.getHeight() / MOST));
    int row = (int) Math.floor(bounds.getMinY() / pitch);
    for (double y = row * pitch; y <= bounds.getMaxY(); y = ++row * pitch) {
      int column = (int) Math.floor(bounds.getMinX() / pitch) - 1;
      double shift = Math.floorMod(row, 2) * pitch / 2;
      for (double x = column * pitch; x <= bounds.getMaxX(); x = ++column * pitch) {
        double middleX = x + shift + (chance(row, column, 1) - 0.5) * pitch * 0.35;
        double middleY = y + (chance(row, column, 2) - 0.5) * pitch * 0.35;
        if (shape.contains(middleX - size / 2, middleY - size / 2, size, size)) {
          mark.at(middleX, middleY, chance(row, column, 3));
        }
      }
    }
  }

  /** A number from 0 to 1 that hangs on the place alone. */
  private static double chance(int row, int column, int which) {
    int mixed = row * 73_856_093 ^ column * 19_349_663 ^ which * 83_492_791;
    mixed ^= mixed >>> 13;
    mixed *= 0x5bd1e995;
    mixed ^= mixed >>> 15;
    return (mixed & 0xFFFF) / 65_535.0;
  }

  private void stroke(double... points) {
    path.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i], points[i + 1]);
    }
  }

  private void point(double x, double y, double turn) {
    stroke(x, y, x + 0.02, y);
  }

  private void cross(double x, double y, double turn) {
    stroke(x - 0.4, y - 0.4, x + 0.4, y + 0.4);
    stroke(x - 0.4, y + 0.4, x + 0.4, y - 0.4);
  }

  private void dash(double x, double y, double turn) {
    stroke(x - 0.75, y, x + 0.75, y);
  }

  private void dashAndPoint(double x, double y, double turn) {
    if (turn < 0.5) {
      stroke(x - 0.6, y, x + 0.6, y);
    } else {
      stroke(x - 0.1, y, x + 0.1, y);
    }
  }

  private void aggregate(double x, double y, double turn) {
    if (turn < 0.55) {
      stroke(x - 0.05, y, x + 0.05, y);
      return;
    }
    double angle = turn * 20;
    double size = 0.5;
    stroke(
        x + size * Math.cos(angle),
        y + size * Math.sin(angle),
        x + size * Math.cos(angle + 2.1),
        y + size * Math.sin(angle + 2.1),
        x + size * Math.cos(angle + 4.2),
        y + size * Math.sin(angle + 4.2),
        x + size * Math.cos(angle),
        y + size * Math.sin(angle));
  }

  private void pebble(double x, double y, double turn) {
    double wide = 0.35 + 0.3 * turn;
    path.append(
        new java.awt.geom.Ellipse2D.Double(x - wide, y - wide * 0.7, 2 * wide, 1.4 * wide), false);
  }

  private void rubble(double x, double y, double turn) {
    double angle = turn * Math.PI;
    double wide = 0.65 * Math.cos(angle);
    double high = 0.65 * Math.sin(angle);
    stroke(x - wide, y - high, x + wide, y + high);
    if (turn > 0.5) {
      stroke(x - high * 0.6, y + wide * 0.6, x + high * 0.6, y - wide * 0.6);
    }
  }

  private void fissure(double x, double y, double turn) {
    double lean = 0.4 + turn * 0.5;
    stroke(x - 1.3, y + 0.9, x - 1.3 + lean * 2, y - 0.9, x + 1.3, y - 0.5);
  }

  private void tuft(double x, double y, double turn) {
    stroke(x, y + 0.6, x, y - 0.6);
    stroke(x, y + 0.6, x - 0.6, y - 0.4);
    stroke(x, y + 0.6, x + 0.6, y - 0.4);
  }

  private void ripple(double x, double y, double turn) {
    stroke(x - 1, y, x - 0.35, y - 0.25, x + 0.35, y + 0.25, x + 1, y);
  }

  private void courses() {
    double pitch = 1.6;
    int row = (int) Math.floor(bounds.getMinY() / pitch);
    for (double y = row * pitch; y <= bounds.getMaxY(); y = ++row * pitch) {
      cut(bounds.getMinX() - 1, y, bounds.getMaxX() + 1, y);
      double shift = Math.floorMod(row, 2) * pitch;
      int column = (int) Math.floor(bounds.getMinX() / (2 * pitch)) - 1;
      for (double x = column * 2 * pitch; x <= bounds.getMaxX(); x = ++column * 2 * pitch) {
        cut(x + shift, y, x + shift, y + pitch);
      }
    }
  }

  private void grain() {
    double pitch = 0.7;
    if (bounds.getHeight() > bounds.getWidth()) {
      uprights(pitch);
    } else {
      levels(pitch);
    }
  }

  private void uprights(double pitch) {
    for (double x = bounds.getMinX() + pitch / 2; x < bounds.getMaxX(); x += pitch) {
      cut(x, bounds.getMinY() - 1, x, bounds.getMaxY() + 1);
    }
  }

  private void levels(double pitch) {
    for (double y = bounds.getMinY() + pitch / 2; y < bounds.getMaxY(); y += pitch) {
      cut(bounds.getMinX() - 1, y, bounds.getMaxX() + 1, y);
    }
  }

  private void slanted(double pitch, double slope) {
    double high = bounds.getHeight();
    double start = Math.floor((bounds.getMinX() - high * slope) / pitch) * pitch;
    for (double x = start; x <= bounds.getMaxX(); x += pitch) {
      cut(x, bounds.getMaxY(), x + high * slope, bounds.getMinY());
    }
  }

  private void cut(double fromX, double fromY, double toX, double toY) {
    List<Line2D> inside = LineCut.inside(shape, new Line2D.Double(fromX, fromY, toX, toY));
    inside.forEach(line -> stroke(line.getX1(), line.getY1(), line.getX2(), line.getY2()));
  }
}
