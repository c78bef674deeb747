package underhold.mechanics.masonry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Allowable compression of masonry in bearing and in arches.
 *
 * <p>Source: TMS 402-13 Table A.4 (empirical design). Basis: from memory, verify. Old lime mortar:
 * reduce and test.
 *
 * @param name kind of masonry
 * @param strongMortarKilopascals with mortar M or S
 * @param ordinaryMortarKilopascals with mortar N
 */
public record MasonryBearing(
    String name, double strongMortarKilopascals, double ordinaryMortarKilopascals) {
  private static final double KILOPASCALS_PER_PSI = 6.894757293168361;

  /** Share of the prism strength allowed under a concentrated load, TMS 402 ASD (from memory). */
  private static final double CONCENTRATED_SHARE = 0.33;

  private static final Map<String, MasonryBearing> TABLE = load();

  public MasonryBearing {
    Require.positive("allowable compression", strongMortarKilopascals);
    Require.positive("allowable compression", ordinaryMortarKilopascals);
  }

  /** The row of that name. */
  public static Optional<MasonryBearing> named(String name) {
    return Optional.ofNullable(TABLE.get(name));
  }

  /** All names, in the order of the table. */
  public static List<String> names() {
    return List.copyOf(TABLE.keySet());
  }

  /** Allowable stress under a concentrated load, 0.33 f'm sqrt(A2/A1), the root at most 2, kPa. */
  public static double concentrated(
      double prismStrengthKilopascals, double loadedArea, double supportArea) {
    Require.positive("prism strength", prismStrengthKilopascals);
    Require.positive("loaded area", loadedArea);
    Require.positive("support area", supportArea);
    return CONCENTRATED_SHARE
        * prismStrengthKilopascals
        * Math.min(2, Math.sqrt(Math.max(1, supportArea / loadedArea)));
  }

  private static Map<String, MasonryBearing> load() {
    String resource = "/underhold/mechanics/masonry/allowable-compression.csv";
    try (InputStream stream = MasonryBearing.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the table " + resource + " is missing from the program");
      }
      Map<String, MasonryBearing> table = new LinkedHashMap<>();
      new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .forEach(
              cell -> table.put(cell[0], new MasonryBearing(cell[0], psi(cell[1]), psi(cell[2]))));
      return table;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double psi(String cell) {
    return Double.parseDouble(cell) * KILOPASCALS_PER_PSI;
  }
}
