package underhold.mechanics.soil.bearing;

import java.util.Arrays;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SoilTable;

/**
 * Terzaghi's N-gamma from printed tables, which differ from author to author.
 *
 * <p>The next lower tabulated angle is used: the curve is convex, so that a straight line between
 * its points would lie on the unsafe side. Valid range: from the lowest to the highest angle of the
 * author's table. Source: the two books named at {@link Author}; basis: from memory, verify.
 */
public final class TerzaghiWeightFactor {

  /** Whose table. */
  public enum Author {
    /** B. M. Das, Principles of Foundation Engineering (values by Kumbhojkar). */
    DAS,
    /** J. E. Bowles, Foundation Analysis and Design. */
    BOWLES
  }

  private static final SoilTable TABLE = SoilTable.load("terzaghi-n-gamma.csv");

  private TerzaghiWeightFactor() {}

  /** N-gamma at the highest tabulated angle that does not pass the given one. */
  public static Outcome<Double> at(double frictionAngleDegrees, Author author) {
    Require.frictionAngle(frictionAngleDegrees);
    double[][] rows =
        TABLE.rows().stream()
            .filter(row -> row.text("author").equals(author.name()))
            .map(row -> new double[] {row.number("angle-degrees"), row.number("n-gamma")})
            .toArray(double[][]::new);
    double highest = rows[rows.length - 1][0];
    if (frictionAngleDegrees > highest) {
      return Outcome.outOfRange("the printed table of this author ends at " + highest + " degrees");
    }
    return Outcome.of(
        Arrays.stream(rows)
            .filter(row -> row[0] <= frictionAngleDegrees)
            .mapToDouble(row -> row[1])
            .max()
            .orElse(0));
  }
}
