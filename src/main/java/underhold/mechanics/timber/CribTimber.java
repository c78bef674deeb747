package underhold.mechanics.timber;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Stress across the grain of timbers used in cribs and mats.
 *
 * @param name species, or the kind of work that the value is for
 * @param acrossGrainKilopascals Fc-perp
 * @param source who says so
 */
public record CribTimber(String name, double acrossGrainKilopascals, String source) {
  private static final Map<String, CribTimber> TABLE = load();

  public CribTimber {
    TableRows.requirePositive("Fc-perp", acrossGrainKilopascals);
  }

  /** The row of that name. */
  public static Optional<CribTimber> named(String name) {
    return Optional.ofNullable(TABLE.get(name));
  }

  /** All names, in the order of the table. */
  public static List<String> names() {
    return List.copyOf(TABLE.keySet());
  }

  private static Map<String, CribTimber> load() {
    Map<String, CribTimber> table = new LinkedHashMap<>();
    for (String[] cell : TableRows.read("crib-timber.csv")) {
      table.put(
          cell[0],
          new CribTimber(
              cell[0], Double.parseDouble(cell[1]) * TableRows.KILOPASCALS_PER_PSI, cell[2]));
    }
    return table;
  }
}
