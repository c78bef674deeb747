package underhold.mechanics.soil.pressure;

import java.util.List;
import java.util.Optional;
import underhold.mechanics.soil.SoilTable;

/**
 * Lateral soil load as an equivalent fluid, by soil class.
 *
 * <p>Use the at-rest value for a wall held at its top, the active one for a wall free to move.
 * Valid range: moist soil of the class at its optimum density; not submerged, no surcharge (from
 * memory, verify). Accuracy: a convention. Source: International Building Code (2021 family), Table
 * 1610.1; basis: each row carries its own.
 *
 * @param soilClass class of the Unified Soil Classification System
 * @param activeKilopascalsPerMetre active pressure per metre of depth
 * @param atRestKilopascalsPerMetre at-rest pressure per metre of depth
 * @param basis basis of the row
 */
public record EquivalentFluid(
    String soilClass,
    double activeKilopascalsPerMetre,
    double atRestKilopascalsPerMetre,
    String basis) {

  /** 1 pound-force per square foot and foot in kPa per metre. */
  private static final double KILOPASCALS_PER_METRE = 0.04788025898 / 0.3048;

  private static final List<EquivalentFluid> ROWS =
      SoilTable.load("ibc-table-1610-1.csv").rows().stream()
          .map(
              row ->
                  new EquivalentFluid(
                      row.text("class"),
                      row.number("active-psf-per-foot") * KILOPASCALS_PER_METRE,
                      row.number("at-rest-psf-per-foot") * KILOPASCALS_PER_METRE,
                      row.text("basis")))
          .toList();

  /** All rows. */
  public static List<EquivalentFluid> rows() {
    return ROWS;
  }

  /** The row of that soil class. */
  public static Optional<EquivalentFluid> find(String soilClass) {
    return ROWS.stream().filter(row -> row.soilClass().equals(soilClass)).findFirst();
  }
}
