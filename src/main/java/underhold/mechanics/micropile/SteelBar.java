package underhold.mechanics.micropile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A threaded bar of the table (ASTM A615 Grade 75, ASTM A722 Grade 150). Basis: from memory,
 * verify.
 *
 * @param name as ordered
 * @param areaSquareMetres Ab
 * @param yieldKilopascals Fy
 * @param ultimateKilopascals Fu
 * @param outsideDiameterMetres over the thread
 */
public record SteelBar(
    String name,
    double areaSquareMetres,
    double yieldKilopascals,
    double ultimateKilopascals,
    double outsideDiameterMetres) {
  private static final Map<String, SteelBar> TABLE = load();

  public SteelBar {
    Require.positive("bar area", areaSquareMetres);
    Require.positive("bar yield", yieldKilopascals);
    Require.positive("bar strength", ultimateKilopascals);
    Require.positive("bar diameter", outsideDiameterMetres);
  }

  /** The bar of that name. */
  public static Optional<SteelBar> named(String name) {
    return Optional.ofNullable(TABLE.get(name));
  }

  /** All bars, in the order of the table. */
  public static List<SteelBar> table() {
    return List.copyOf(TABLE.values());
  }

  private static Map<String, SteelBar> load() {
    Map<String, SteelBar> bars = new LinkedHashMap<>();
    for (List<String> row : TableRows.read("bars.csv")) {
      bars.put(
          row.get(0),
          new SteelBar(
              row.get(0),
              TableRows.number(row, 1) * Units.INCH * Units.INCH,
              TableRows.number(row, 2) * Units.KSI,
              TableRows.number(row, 3) * Units.KSI,
              TableRows.number(row, 4) * Units.INCH));
    }
    return bars;
  }
}
