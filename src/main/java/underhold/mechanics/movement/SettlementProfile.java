package underhold.mechanics.movement;

import java.util.List;
import underhold.mechanics.soil.Require;

/**
 * Settlements read at points along a wall, and the measures of its bending.
 *
 * <p>Slope: difference of neighbours over their distance. Tilt: slope of the line through the two
 * end points. Angular distortion: slope of a bay less the tilt. Relative deflection D: distance of
 * a point from the line through the ends, downwards (sagging) or upwards (hogging); deflection
 * ratio D / L with L between the ends. Definitions of Burland and Wroth 1974 (from memory). A
 * profile that sags in one part and hogs in another is better parted where its curvature changes.
 *
 * @param points at least two, in order along the wall
 */
public record SettlementProfile(List<Point> points) {

  /**
   * A reading.
   *
   * @param distanceMetres along the wall
   * @param settlementMetres downwards positive
   */
  public record Point(double distanceMetres, double settlementMetres) {
    public Point {
      Require.finite(distanceMetres, "distance along the wall", "m");
      Require.finite(settlementMetres, "settlement", "m");
    }
  }

  public SettlementProfile {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a profile needs at least two points");
    }
    for (int i = 1; i < points.size(); i++) {
      Require.positive(
          points.get(i).distanceMetres() - points.get(i - 1).distanceMetres(),
          "distance between neighbouring points",
          "m");
    }
  }

  /** L, between the ends, m. */
  public double lengthMetres() {
    return last().distanceMetres() - first().distanceMetres();
  }

  /** Largest settlement, m; negative where every point has risen. */
  public double largestSettlementMetres() {
    return points.stream().mapToDouble(Point::settlementMetres).max().orElseThrow();
  }

  /** Slope of the line through the ends, positive where the far end is lower. */
  public double tilt() {
    return (last().settlementMetres() - first().settlementMetres()) / lengthMetres();
  }

  /** Steepest slope between neighbours, whichever way. */
  public double steepestSlope() {
    return steepest(0);
  }

  /** Largest slope of a bay less the tilt, whichever way. */
  public double angularDistortion() {
    return steepest(tilt());
  }

  /** Largest distance of a point below the line through the ends over L. */
  public double saggingRatio() {
    return points.stream().mapToDouble(this::below).max().orElseThrow() / lengthMetres();
  }

  /** Largest distance of a point above the line through the ends over L. */
  public double hoggingRatio() {
    return points.stream().mapToDouble(point -> -below(point)).max().orElseThrow() / lengthMetres();
  }

  private double below(Point point) {
    double line =
        first().settlementMetres() + tilt() * (point.distanceMetres() - first().distanceMetres());
    return point.equals(first()) || point.equals(last()) ? 0 : point.settlementMetres() - line;
  }

  private double steepest(double tilt) {
    double steepest = 0;
    for (int i = 1; i < points.size(); i++) {
      double bay = points.get(i).distanceMetres() - points.get(i - 1).distanceMetres();
      double difference = points.get(i).settlementMetres() - points.get(i - 1).settlementMetres();
      steepest = Math.max(steepest, Math.abs(difference / bay - tilt));
    }
    return steepest;
  }

  private Point first() {
    return points.get(0);
  }

  private Point last() {
    return points.get(points.size() - 1);
  }
}
