package underhold.sizing.drilledpiles;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.pile.group.RigidCap;
import underhold.mechanics.pile.group.RigidCap.Loss;
import underhold.mechanics.pile.group.RigidCap.Position;

/**
 * What is left of a group after one pile is lost, about its own centre.
 *
 * @param ex load from the centre, along, m
 * @param ey load from the centre, across, m
 * @param x the pile loaded most, along, m
 * @param y the pile loaded most, across, m
 * @param ixx sum of squares across, m2
 * @param iyy sum of squares along, m2
 * @param ixy sum of products, m2
 */
record Remaining(double ex, double ey, double x, double y, double ixx, double iyy, double ixy) {

  static Remaining of(RigidCap cap, Loss loss, double off) {
    List<Position> left = new ArrayList<>(cap.piles());
    left.remove(loss.lost());
    double cx = left.stream().mapToDouble(Position::x).average().orElse(0);
    double cy = left.stream().mapToDouble(Position::y).average().orElse(0);
    int most = 0;
    for (int i = 0; i < cap.piles().size(); i++) {
      if (loss.loadsKilonewtons().get(i) > loss.loadsKilonewtons().get(most)) {
        most = i;
      }
    }
    Position worst = cap.piles().get(most);
    return new Remaining(
        off - cx,
        off - cy,
        worst.x() - cx,
        worst.y() - cy,
        left.stream().mapToDouble(one -> (one.y() - cy) * (one.y() - cy)).sum(),
        left.stream().mapToDouble(one -> (one.x() - cx) * (one.x() - cx)).sum(),
        left.stream().mapToDouble(one -> (one.x() - cx) * (one.y() - cy)).sum());
  }
}
