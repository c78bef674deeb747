package underhold.mechanics.beam;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A prismatic beam by the direct stiffness method (cubic elements), solved with Hipparchus: exact
 * at its nodes for point loads, and for uniform load with its consistent nodal forces.
 */
final class BeamByStiffness {
  private final double[] nodes;
  private final double stiffness;
  private final RealMatrix matrix;
  private final RealVector loads;
  private final List<Integer> held = new ArrayList<>();

  BeamByStiffness(double stiffness, double... nodes) {
    this.nodes = apart(nodes);
    this.stiffness = stiffness;
    int size = 2 * this.nodes.length;
    matrix = new Array2DRowRealMatrix(size, size);
    loads = new ArrayRealVector(size);
    for (int i = 0; i + 1 < this.nodes.length; i++) {
      double l = this.nodes[i + 1] - this.nodes[i];
      double[][] k = {
        {12, 6 * l, -12, 6 * l},
        {6 * l, 4 * l * l, -6 * l, 2 * l * l},
        {-12, -6 * l, 12, -6 * l},
        {6 * l, 2 * l * l, -6 * l, 4 * l * l}
      };
      for (int row = 0; row < 4; row++) {
        for (int column = 0; column < 4; column++) {
          matrix.addToEntry(
              2 * i + row, 2 * i + column, stiffness / Math.pow(l, 3) * k[row][column]);
        }
      }
    }
  }

  /** In order; of nodes too near each other for a well-conditioned matrix the first stays. */
  private static double[] apart(double... wanted) {
    double least = Arrays.stream(wanted).max().orElseThrow() * 1e-3;
    List<Double> kept = new ArrayList<>();
    for (double node : wanted) {
      if (kept.stream().allMatch(other -> Math.abs(other - node) > least)) {
        kept.add(node);
      }
    }
    return kept.stream().mapToDouble(node -> node).sorted().toArray();
  }

  BeamByStiffness support(double at) {
    held.add(2 * index(at));
    return this;
  }

  BeamByStiffness load(double at, double kilonewtonsDown) {
    loads.addToEntry(2 * index(at), -kilonewtonsDown);
    return this;
  }

  BeamByStiffness uniform(double kilonewtonsPerMetreDown) {
    for (int i = 0; i + 1 < nodes.length; i++) {
      double l = nodes[i + 1] - nodes[i];
      loads.addToEntry(2 * i, -kilonewtonsPerMetreDown * l / 2);
      loads.addToEntry(2 * i + 1, -kilonewtonsPerMetreDown * l * l / 12);
      loads.addToEntry(2 * i + 2, -kilonewtonsPerMetreDown * l / 2);
      loads.addToEntry(2 * i + 3, kilonewtonsPerMetreDown * l * l / 12);
    }
    return this;
  }

  Solution solve() {
    RealMatrix reduced = matrix.copy();
    RealVector right = loads.copy();
    for (int row : held) {
      for (int i = 0; i < reduced.getColumnDimension(); i++) {
        reduced.setEntry(row, i, 0);
        reduced.setEntry(i, row, 0);
      }
      reduced.setEntry(row, row, stiffness);
      right.setEntry(row, 0);
    }
    return new Solution(new LUDecomposition(reduced).getSolver().solve(right));
  }

  private int index(double at) {
    int best = 0;
    for (int i = 1; i < nodes.length; i++) {
      if (Math.abs(nodes[i] - at) < Math.abs(nodes[best] - at)) {
        best = i;
      }
    }
    return best;
  }

  final class Solution {
    private final RealVector displacement;

    private Solution(RealVector displacement) {
      this.displacement = displacement;
    }

    /** Downwards, m. */
    double deflection(double at) {
      return -displacement.getEntry(2 * index(at));
    }

    double largestDeflection() {
      return Arrays.stream(nodes).map(this::deflection).max().orElse(0);
    }

    /** Upwards, kN; of a support. */
    double reaction(double at) {
      int row = 2 * index(at);
      return matrix.operate(displacement).getEntry(row) - loads.getEntry(row);
    }

    /** Moment at the left end of the element that starts there, sagging positive, kN m. */
    double moment(double at) {
      int i = index(at);
      double l = nodes[i + 1] - nodes[i];
      double v1 = displacement.getEntry(2 * i);
      double r1 = displacement.getEntry(2 * i + 1);
      double v2 = displacement.getEntry(2 * i + 2);
      double r2 = displacement.getEntry(2 * i + 3);
      return stiffness / (l * l) * (-6 * v1 - 4 * l * r1 + 6 * v2 - 2 * l * r2);
    }
  }
}
