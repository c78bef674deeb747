package underhold.mechanics.soil.bearing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.mechanics.soil.SoilTable;

/**
 * Presumptive load-bearing values of the International Building Code, Table 1806.2.
 *
 * <p>Valid range: where no site investigation gives more; not for the ground listed by {@link
 * #exclusions()}. The increase of one third is for the alternative allowable-stress load
 * combinations with wind or earthquake only (1806.1). Accuracy: a convention, not a measurement.
 * Source: International Building Code (2021 family), 1806.1, 1806.2; basis: each value carries its
 * own.
 *
 * @param id short name of the row
 * @param material class of materials as the table words it
 * @param verticalKilopascals vertical foundation pressure
 * @param lateralKilopascalsPerMetre lateral bearing pressure per metre of depth below natural grade
 * @param frictionCoefficient coefficient of sliding friction, empty for clay
 * @param cohesionKilopascals sliding resistance per area, for clay only
 * @param verticalBasis basis of the vertical value
 * @param lateralBasis basis of the other values
 */
public record PresumptiveBearing(
    String id,
    String material,
    double verticalKilopascals,
    double lateralKilopascalsPerMetre,
    OptionalDouble frictionCoefficient,
    OptionalDouble cohesionKilopascals,
    String verticalBasis,
    String lateralBasis) {

  /** 1 pound-force per square foot in kPa. */
  private static final double KILOPASCALS_PER_PSF = 0.04788025898;

  /** 1 foot in metres, exact. */
  private static final double METRES_PER_FOOT = 0.3048;

  private static final List<PresumptiveBearing> ROWS =
      SoilTable.load("ibc-table-1806-2.csv").rows().stream().map(PresumptiveBearing::of).toList();

  private static final List<Exclusion> EXCLUSIONS =
      SoilTable.load("ibc-table-1806-2-exclusions.csv").rows().stream()
          .map(
              row ->
                  new Exclusion(
                      row.text("id"), row.text("ground"), row.text("source"), row.text("basis")))
          .toList();

  /**
   * Ground for which presumptive values must not be used.
   *
   * @param id short name
   * @param ground what it is
   * @param source who says so
   * @param basis whether that was seen
   */
  public record Exclusion(String id, String ground, String source, String basis) {}

  /** All rows, strongest first. */
  public static List<PresumptiveBearing> rows() {
    return ROWS;
  }

  /** The row of that id. */
  public static Optional<PresumptiveBearing> find(String id) {
    return ROWS.stream().filter(row -> row.id().equals(id)).findFirst();
  }

  /** Ground for which the values must not be used. */
  public static List<Exclusion> exclusions() {
    return EXCLUSIONS;
  }

  private static PresumptiveBearing of(SoilTable.Row row) {
    OptionalDouble cohesion = row.optionalNumber("cohesion-psf");
    return new PresumptiveBearing(
        row.text("id"),
        row.text("material"),
        row.number("vertical-psf") * KILOPASCALS_PER_PSF,
        row.number("lateral-psf-per-foot") * KILOPASCALS_PER_PSF / METRES_PER_FOOT,
        row.optionalNumber("friction"),
        cohesion.isPresent()
            ? OptionalDouble.of(cohesion.getAsDouble() * KILOPASCALS_PER_PSF)
            : OptionalDouble.empty(),
        row.text("vertical-basis"),
        row.text("lateral-basis"));
  }
}
