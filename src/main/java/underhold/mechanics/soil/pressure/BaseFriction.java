package underhold.mechanics.soil.pressure;

import java.util.List;
import java.util.Optional;
import underhold.mechanics.soil.SoilTable;

/**
 * Friction angle between mass concrete cast against the ground and that ground.
 *
 * <p>Valid range: mass concrete cast on undisturbed ground. Accuracy: a range; the lower end is the
 * careful one. Source: AASHTO LRFD Bridge Design Specifications, Table C3.11.5.3-1, in Caltrans,
 * Trenching and Shoring Manual, Table 4-2; basis: each row carries its own.
 *
 * @param id short name of the row
 * @param ground interface material
 * @param lowDegrees lower friction angle
 * @param highDegrees upper friction angle
 * @param basis basis of the row
 */
public record BaseFriction(
    String id, String ground, double lowDegrees, double highDegrees, String basis) {

  private static final List<BaseFriction> ROWS =
      SoilTable.load("aashto-table-c3-11-5-3-1.csv").rows().stream()
          .map(
              row ->
                  new BaseFriction(
                      row.text("id"),
                      row.text("ground"),
                      row.number("low-degrees"),
                      row.number("high-degrees"),
                      row.text("basis")))
          .toList();

  /** All rows. */
  public static List<BaseFriction> rows() {
    return ROWS;
  }

  /** The row of that id. */
  public static Optional<BaseFriction> find(String id) {
    return ROWS.stream().filter(row -> row.id().equals(id)).findFirst();
  }

  /** Coefficient of friction tan d at the lower end of the range, dimensionless. */
  public double lowCoefficient() {
    return Math.tan(Math.toRadians(lowDegrees));
  }
}
