package underhold.mechanics.soil.edgewall;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.bearing.PresumptiveBearing;

/**
 * Resistance of a base and of the ground before it by presumptive values.
 *
 * <p>Formula: sand, gravel, rock: R = mu N; clay: R = c A, no more than N/2; in front R = S D^2/2
 * over an embedment D, acting D/3 above the base. Symbols: N vertical force on the base [kN/m], A
 * width in contact [m], S lateral bearing [kPa per metre]. Valid range: soils of the table; nothing
 * in front that will be dug away or softened. Accuracy: a convention, allowable values. Source:
 * International Building Code, Table 1804.2 (2006), now 1806.2, as quoted in code change
 * S148-07/08; basis: cited, secondary; the limit N/2 (1806.3.2): from memory, verify.
 *
 * @param row the row of the table
 */
public record PresumptiveSliding(PresumptiveBearing row) {

  /** Most of the vertical force that clay gives, dimensionless; 1806.3.2, from memory. */
  public static final double CLAY_SHARE = 0.5;

  /** Whether the row is clay, whose resistance is its cohesion. */
  public boolean clay() {
    return row.cohesionKilopascals().isPresent();
  }

  /** Resistance under the base [kN per metre]. */
  public double base(double normalKilonewtonsPerMetre, double contactMetres) {
    double normal =
        Math.max(0, Require.finite(normalKilonewtonsPerMetre, "vertical force", "kN/m"));
    Require.notNegative(contactMetres, "width in contact", "m");
    return clay()
        ? Math.min(row.cohesionKilopascals().orElse(0) * contactMetres, CLAY_SHARE * normal)
        : row.frictionCoefficient().orElse(0) * normal;
  }

  /** Resistance in front of an embedment [kN per metre]. */
  public double front(double embedmentMetres) {
    Require.notNegative(embedmentMetres, "embedment", "m");
    return row.lateralKilopascalsPerMetre() * embedmentMetres * embedmentMetres / 2;
  }

  /** Its moment about the base [kN m per metre]. */
  public double frontMoment(double embedmentMetres) {
    return front(embedmentMetres) * embedmentMetres / 3;
  }
}
