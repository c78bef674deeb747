package underhold.mechanics.foundationbeam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import underhold.quantity.Seeds;

/**
 * The pile on springs by beam elements (cubic shape functions, consistent foundation matrix),
 * solved by Hipparchus, against the closed forms.
 */
class PileOnSpringsByElementsTest {
  /** Elements of 0.1 / lambda over 8 / lambda: the error of the elements is far below this. */
  private static final Percentage ELEMENTS = withPercentage(0.01);

  private static final int COUNT = 80;

  @Property(tries = 25, seed = Seeds.BUILD)
  @Label(
      "Beam elements (Hipparchus): free and held head under a moment, free and fixed head under a force")
  void closed_forms_agree(
      @ForAll @DoubleRange(min = 200, max = 30_000) double stiffness,
      @ForAll @DoubleRange(min = 500, max = 60_000) double reaction) {
    PileOnSprings pile = new PileOnSprings(stiffness, reaction);
    Elements elements = new Elements(stiffness, reaction, 8 / pile.lambda());

    RealVector free = elements.solve(0, 100, false, false);
    DeflectedPile bent = pile.momentOnFreeHead(100);
    assertThat(Math.abs(free.getEntry(0))).isCloseTo(bent.headDeflection(), ELEMENTS);
    assertThat(Math.abs(free.getEntry(1))).isCloseTo(bent.headRotation(), ELEMENTS);
    double depth = 10 * elements.size();
    assertThat(free.getEntry(20) / free.getEntry(0))
        .isCloseTo(bent.deflection().at(depth) / bent.deflection().at(0), ELEMENTS);

    RealVector held = elements.solve(0, 100, true, false);
    DeflectedPile pinned = pile.momentOnHeldHead(100);
    assertThat(Math.abs(held.getEntry(1))).isCloseTo(pinned.headRotation(), ELEMENTS);
    assertThat(Math.abs(elements.force(held, 0)))
        .isCloseTo(pinned.headForceKilonewtons(), ELEMENTS);

    RealVector pushed = elements.solve(50, 0, false, false);
    DeflectedPile sideways = pile.forceOnFreeHead(50);
    assertThat(Math.abs(pushed.getEntry(0))).isCloseTo(sideways.headDeflection(), ELEMENTS);
    assertThat(Math.abs(pushed.getEntry(1))).isCloseTo(sideways.headRotation(), ELEMENTS);

    RealVector clamped = elements.solve(50, 0, false, true);
    DeflectedPile fixed = pile.forceOnFixedHead(50);
    assertThat(Math.abs(clamped.getEntry(0))).isCloseTo(fixed.headDeflection(), ELEMENTS);
    assertThat(Math.abs(elements.force(clamped, 1))).isCloseTo(Math.abs(fixed.moment(0)), ELEMENTS);
  }

  /** Assembled beam; unknowns are deflection and rotation at each node. */
  private static final class Elements {
    private final RealMatrix matrix = new Array2DRowRealMatrix(2 * COUNT + 2, 2 * COUNT + 2);
    private final double size;

    Elements(double stiffness, double reaction, double length) {
      size = length / COUNT;
      double h = size;
      double b = stiffness / (h * h * h);
      double[][] bending = {
        {12, 6 * h, -12, 6 * h},
        {6 * h, 4 * h * h, -6 * h, 2 * h * h},
        {-12, -6 * h, 12, -6 * h},
        {6 * h, 2 * h * h, -6 * h, 4 * h * h}
      };
      double g = reaction * h / 420;
      double[][] ground = {
        {156, 22 * h, 54, -13 * h},
        {22 * h, 4 * h * h, 13 * h, -3 * h * h},
        {54, 13 * h, 156, -22 * h},
        {-13 * h, -3 * h * h, -22 * h, 4 * h * h}
      };
      for (int e = 0; e < COUNT; e++) {
        for (int i = 0; i < 4; i++) {
          for (int j = 0; j < 4; j++) {
            matrix.addToEntry(2 * e + i, 2 * e + j, b * bending[i][j] + g * ground[i][j]);
          }
        }
      }
    }

    double size() {
      return size;
    }

    RealVector solve(double force, double moment, boolean held, boolean clamped) {
      RealMatrix bound = matrix.copy();
      if (held) {
        bound.addToEntry(0, 0, 1e9 * bound.getEntry(0, 0));
      }
      if (clamped) {
        bound.addToEntry(1, 1, 1e9 * bound.getEntry(1, 1));
      }
      RealVector load = new ArrayRealVector(2 * COUNT + 2);
      load.setEntry(0, force);
      load.setEntry(1, moment);
      return new LUDecomposition(bound).getSolver().solve(load);
    }

    /** What the unbound beam needs at an unknown to take this shape. */
    double force(RealVector shape, int unknown) {
      return matrix.getRowVector(unknown).dotProduct(shape);
    }
  }
}
