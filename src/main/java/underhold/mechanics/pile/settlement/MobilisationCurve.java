package underhold.mechanics.pile.settlement;

import java.util.List;
import underhold.mechanics.soil.Require;

/**
 * Share of the ultimate resistance that a movement calls up, straight between a few points.
 *
 * <p>Movement is given over the diameter. The share is 0 at rest, rises with movement and stays at
 * 1 after the last point. Sides are called up at a movement of some 0.5 to 1 % of the diameter,
 * bases at 4 to 5 % in clay and 5 to 10 % in sand (Reese and O'Neill, normalized curves; from
 * memory, verify). Points seen: gravelly sand, side 0.80 at 1.2 %, base 0.235 at 0.8 % (B. M. Das,
 * Principles of Foundation Engineering, 2016, pp. 529-530). Straight lines between them are
 * judgement; loss of bond after the peak is not modelled.
 *
 * @param points from the origin to the share 1, both values never falling
 */
public record MobilisationCurve(List<Point> points) {
  /**
   * A point.
   *
   * @param movementRatio movement over diameter
   * @param share share of the ultimate resistance
   */
  public record Point(double movementRatio, double share) {
    public Point {
      Require.between(movementRatio, 0, 1, "movement over diameter", "");
      Require.between(share, 0, 1, "share", "");
    }
  }

  public MobilisationCurve {
    points = List.copyOf(points);
    if (points.size() < 2 || points.get(0).movementRatio() != 0 || points.get(0).share() != 0) {
      throw new IllegalArgumentException("a curve of mobilisation starts at rest without load");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).movementRatio() <= points.get(i - 1).movementRatio()
          || points.get(i).share() < points.get(i - 1).share()) {
        throw new IllegalArgumentException("a curve of mobilisation never falls");
      }
    }
    if (points.get(points.size() - 1).share() != 1) {
      throw new IllegalArgumentException("a curve of mobilisation ends at the share 1");
    }
  }

  /** A straight line to the full share. */
  public static MobilisationCurve straight(double fullAtRatio) {
    return new MobilisationCurve(List.of(new Point(0, 0), new Point(fullAtRatio, 1)));
  }

  /** Two straight lines: to a known point and on to the full share. */
  public static MobilisationCurve through(double ratio, double share, double fullAtRatio) {
    return new MobilisationCurve(
        List.of(new Point(0, 0), new Point(ratio, share), new Point(fullAtRatio, 1)));
  }

  /** The share at a movement over diameter. */
  public double shareAt(double movementRatio) {
    Require.notNegative(movementRatio, "movement over diameter", "");
    Point before = points.get(0);
    for (Point next : points) {
      if (movementRatio <= next.movementRatio()) {
        return next.movementRatio() == before.movementRatio()
            ? next.share()
            : before.share()
                + (movementRatio - before.movementRatio())
                    / (next.movementRatio() - before.movementRatio())
                    * (next.share() - before.share());
      }
      before = next;
    }
    return before.share();
  }

  /**
   * The share s that the movement {@code base + s × perShare} calls up, where the movement itself
   * grows with the share: the least such share.
   *
   * @param base movement over diameter without the share, not negative
   * @param perShare movement over diameter that a share of 1 adds, not negative
   */
  public double shareWhere(double base, double perShare) {
    if (!(base >= 0 && perShare >= 0)) {
      throw new IllegalArgumentException("a movement is not negative");
    }
    Point before = points.get(0);
    for (int i = 1; i < points.size(); i++) {
      Point next = points.get(i);
      if (base + perShare * next.share() <= next.movementRatio()) {
        double slope =
            (next.share() - before.share()) / (next.movementRatio() - before.movementRatio());
        double over = before.share() + slope * (base - before.movementRatio());
        double against = 1 - slope * perShare;
        return against > 0 ? over / against : before.share();
      }
      before = next;
    }
    return before.share();
  }

  /** Movement over diameter at which all is called up. */
  public double fullAtRatio() {
    return points.get(points.size() - 1).movementRatio();
  }
}
