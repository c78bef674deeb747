package underhold.mechanics.pile.group;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Vertical loads of equal piles under a rigid cap, with the whole tensor of inertia.
 *
 * <p>Pi = P (1/n + a xi + b yi), x and y from the centroid; [Iyy Ixy; Ixy Ixx][a b] = [ex ey] with
 * Iyy = sum x^2, Ixx = sum y^2, Ixy = sum x y. Symbols: P load [kN] at (ex, ey) [m] from the
 * centroid. Leaving out Ixy is wrong as soon as one pile is lost. Assumptions: cap rigid, piles
 * equally stiff, pinned, no soil under the cap. Exact under the assumptions. Statics.
 *
 * @param piles positions, at least one
 */
public record RigidCap(List<Position> piles) {
  /** Offsets smaller than this share of the group's size count as none (rounding). */
  private static final double ROUNDING = 1e-9;

  private static final int NONE_LOST = -1;
  private static final String TURNS_OVER =
      "the load stands off the line of the piles: the cap turns over";

  /**
   * A place in plan.
   *
   * @param x m
   * @param y m
   */
  public record Position(double x, double y) {
    public Position {
      Require.finite(x, "x", "m");
      Require.finite(y, "y", "m");
    }
  }

  /**
   * Answer to the loss of a pile.
   *
   * @param lost index of the pile lost
   * @param loadsKilonewtons loads of all piles, 0 for the one lost
   */
  public record Loss(int lost, List<Double> loadsKilonewtons) {
    public Loss {
      loadsKilonewtons = List.copyOf(loadsKilonewtons);
    }

    /** Largest load of a pile that is left, kN. */
    public double largestKilonewtons() {
      return loadsKilonewtons.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
  }

  public RigidCap {
    piles = List.copyOf(piles);
    if (piles.isEmpty()) {
      throw new IllegalArgumentException("a cap has at least one pile");
    }
  }

  /** Piles in a grid about the origin. */
  public static RigidCap grid(int columns, int rows, double spacingXMetres, double spacingYMetres) {
    Require.between(columns, 1, 1000, "columns of piles", "");
    Require.between(rows, 1, 1000, "rows of piles", "");
    List<Position> places = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        places.add(
            new Position(
                (column - (columns - 1) / 2.0) * spacingXMetres,
                (row - (rows - 1) / 2.0) * spacingYMetres));
      }
    }
    return new RigidCap(places);
  }

  /**
   * Loads of the piles under a load at a place; out of range where the cap would turn over (the
   * load stands off the line of piles that lie on one line).
   */
  public Outcome<List<Double>> loadsKilonewtons(double loadKilonewtons, Position at) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    double[] loads = loads(NONE_LOST, loadKilonewtons, at);
    return loads.length == 0
        ? Outcome.outOfRange(TURNS_OVER)
        : Outcome.of(Arrays.stream(loads).boxed().toList());
  }

  /** Loads after one pile is lost; out of range where what is left cannot stand. */
  public Outcome<Loss> without(int lost, double loadKilonewtons, Position at) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    if (piles.size() < 2) {
      return Outcome.outOfRange("nothing is left when the only pile is lost");
    }
    double[] loads = loads(lost, loadKilonewtons, at);
    return loads.length == 0
        ? Outcome.outOfRange(TURNS_OVER)
        : Outcome.of(new Loss(lost, Arrays.stream(loads).boxed().toList()));
  }

  /** The loss, of any one pile, that loads another most; out of range where one cannot be borne. */
  public Outcome<Loss> worstLoss(double loadKilonewtons, Position at) {
    Require.notNegative(loadKilonewtons, "load", "kN");
    int worst = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int lost = 0; lost < piles.size() && piles.size() > 1; lost++) {
      double[] loads = loads(lost, loadKilonewtons, at);
      if (loads.length == 0) {
        return Outcome.outOfRange(TURNS_OVER);
      }
      double largest = Arrays.stream(loads).max().orElse(0);
      if (largest > most) {
        worst = lost;
        most = largest;
      }
    }
    return without(worst, loadKilonewtons, at);
  }

  /**
   * Loads of all piles, 0 for the one lost; none where the cap turns over.
   *
   * @param lost index of the pile lost, or {@link #NONE_LOST}
   */
  private double[] loads(int lost, double loadKilonewtons, Position at) {
    int n = lost == NONE_LOST ? piles.size() : piles.size() - 1;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < piles.size(); i++) {
      if (i != lost) {
        sumX += piles.get(i).x();
        sumY += piles.get(i).y();
      }
    }
    double cx = sumX / n;
    double cy = sumY / n;
    double ixx = 0;
    double iyy = 0;
    double ixy = 0;
    for (int i = 0; i < piles.size(); i++) {
      if (i != lost) {
        double x = piles.get(i).x() - cx;
        double y = piles.get(i).y() - cy;
        iyy += x * x;
        ixx += y * y;
        ixy += x * y;
      }
    }
    double ex = at.x() - cx;
    double ey = at.y() - cy;
    // Principal axes: the formula stays sound where all piles lie on one line.
    double angle = 0.5 * Math.atan2(2 * ixy, iyy - ixx);
    double cosine = Math.cos(angle);
    double sine = Math.sin(angle);
    double along = ex * cosine + ey * sine;
    double across = ey * cosine - ex * sine;
    double centre = (ixx + iyy) / 2;
    double radius = Math.hypot((iyy - ixx) / 2, ixy);
    double major = centre + radius;
    double minor = Math.max(centre - radius, 0);
    double size = Math.sqrt(centre);
    double none = ROUNDING * Math.max(centre, ROUNDING);
    if ((minor <= none && Math.abs(across) > ROUNDING * Math.max(size, 1))
        || (major <= none && Math.abs(along) > ROUNDING * Math.max(size, 1))) {
      return new double[0];
    }
    double slopeAlong = major <= none ? 0 : along / major;
    double slopeAcross = minor <= none ? 0 : across / minor;
    double[] loads = new double[piles.size()];
    for (int i = 0; i < loads.length; i++) {
      if (i != lost) {
        double x = (piles.get(i).x() - cx) * cosine + (piles.get(i).y() - cy) * sine;
        double y = (piles.get(i).y() - cy) * cosine - (piles.get(i).x() - cx) * sine;
        loads[i] = loadKilonewtons * (1.0 / n + slopeAlong * x + slopeAcross * y);
      }
    }
    return loads;
  }
}
