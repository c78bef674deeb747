package underhold.mechanics.movement;

import java.util.List;
import java.util.Optional;

/**
 * Maximum allowable average settlement of structures on their own footings.
 *
 * <p>Source: USACE, EM 1110-1-1904, Settlement Analysis, Table 2-1 (secondary copy). Average, not
 * differential: beside an excavation, where the near end moves and the far end does not, it is a
 * comparison only.
 *
 * @param id short name
 * @param structure what it is for
 * @param settlementMetres limit, m
 */
public record AverageSettlementLimit(String id, String structure, double settlementMetres) {
  private static final double METRES_PER_INCH = 0.0254;

  /** Where the table stands. */
  public static final Citation CITATION =
      new Citation(
          "USACE, EM 1110-1-1904, Settlement Analysis, Table 2-1 (secondary)",
          Provenance.PUBLISHED);

  private static final List<AverageSettlementLimit> ROWS =
      TableRows.read("average-settlement-limits.csv", 3).stream()
          .map(
              cell ->
                  new AverageSettlementLimit(
                      cell[0], cell[1], Double.parseDouble(cell[2]) * METRES_PER_INCH))
          .toList();

  /** All rows. */
  public static List<AverageSettlementLimit> rows() {
    return ROWS;
  }

  /** The row of that id. */
  public static Optional<AverageSettlementLimit> find(String id) {
    return ROWS.stream().filter(row -> row.id().equals(id)).findFirst();
  }
}
