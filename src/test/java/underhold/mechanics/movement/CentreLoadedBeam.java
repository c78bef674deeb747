package underhold.mechanics.movement;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import underhold.mechanics.movement.DeepBeam.Bending;

/**
 * A simply supported beam with shear under a load at its centre, as four two-node elements; knows
 * nothing of the closed formula. The shear area is the section over 1.5, the peak of the parabola.
 */
final class CentreLoadedBeam {
  private static final int ELEMENTS = 4;
  private static final double LOAD = 1000;
  private static final double MODULUS = 2.0e6;
  private static final double PEAK = 1.5;

  private final double element;
  private final double height;
  private final double shearModulus;
  private final double secondMoment;
  private final double fibre;
  private final RealVector displacement;

  CentreLoadedBeam(double length, double height, Bending bending, double ratio) {
    this.element = length / ELEMENTS;
    this.height = height;
    this.shearModulus = MODULUS / ratio;
    boolean hogging = bending == Bending.HOGGING;
    // Second moment of the rectangle about its base, or about mid-height.
    this.secondMoment = Math.pow(height, 3) / 12 + (hogging ? height * height * height / 4 : 0);
    this.fibre = hogging ? height : height / 2;
    this.displacement = solve();
  }

  private RealVector solve() {
    int size = 2 * (ELEMENTS + 1);
    RealMatrix stiffness = MatrixUtils.createRealMatrix(size, size);
    for (int e = 0; e < ELEMENTS; e++) {
      RealMatrix one = elementStiffness();
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          stiffness.addToEntry(2 * e + i, 2 * e + j, one.getEntry(i, j));
        }
      }
    }
    RealVector force = new ArrayRealVector(size);
    force.setEntry(ELEMENTS, -LOAD);
    for (int support : new int[] {0, 2 * ELEMENTS}) {
      for (int j = 0; j < size; j++) {
        stiffness.setEntry(support, j, 0);
        stiffness.setEntry(j, support, 0);
      }
      stiffness.setEntry(support, support, 1);
    }
    return new LUDecomposition(stiffness, 1e-30).getSolver().solve(force);
  }

  private RealMatrix elementStiffness() {
    double l = element;
    double phi = 12 * MODULUS * secondMoment / (shearModulus * height / PEAK * l * l);
    double k = MODULUS * secondMoment / ((1 + phi) * l * l * l);
    double[][] matrix = {
      {12, 6 * l, -12, 6 * l},
      {6 * l, (4 + phi) * l * l, -6 * l, (2 - phi) * l * l},
      {-12, -6 * l, 12, -6 * l},
      {6 * l, (2 - phi) * l * l, -6 * l, (4 + phi) * l * l}
    };
    return MatrixUtils.createRealMatrix(matrix).scalarMultiply(k);
  }

  /** Deflection of the centre. */
  double deflection() {
    return -displacement.getEntry(ELEMENTS);
  }

  /** Forces at the ends of the element left of the centre: shear, moment, shear, moment. */
  private RealVector endForces() {
    int first = 2 * (ELEMENTS / 2 - 1);
    return elementStiffness().operate(displacement.getSubVector(first, 4));
  }

  /** Strain of the outermost fibre at the centre. */
  double fibreStrain() {
    return Math.abs(endForces().getEntry(3)) * fibre / (MODULUS * secondMoment);
  }

  /** Half the peak shear strain. */
  double diagonalStrain() {
    return PEAK * Math.abs(endForces().getEntry(0)) / (shearModulus * height) / 2;
  }
}
