package underhold.mechanics.timber;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Rows of a comma-separated resource; lines that start with # are remarks, the first other line is
 * the head.
 */
final class TableRows {
  /** 1 lbf/in2 in kPa (exact by the definitions of the pound and the inch). */
  static final double KILOPASCALS_PER_PSI = 6.894757293168361;

  /** 1 ft in m, exact. */
  static final double METRES_PER_FOOT = 0.3048;

  /** 1 in in m, exact. */
  static final double METRES_PER_INCH = 0.0254;

  private TableRows() {}

  static List<String[]> read(String resource) {
    try (InputStream stream =
        TableRows.class.getResourceAsStream("/underhold/mechanics/timber/" + resource)) {
      if (stream == null) {
        throw new IllegalStateException("the table " + resource + " is missing from the program");
      }
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
      return reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void requirePositive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must be above 0");
    }
  }

  static void requireNotNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " is " + value + ", it must not be below 0");
    }
  }
}
