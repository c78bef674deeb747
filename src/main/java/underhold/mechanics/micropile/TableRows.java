package underhold.mechanics.micropile;

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
  private TableRows() {}

  static List<List<String>> read(String resource) {
    try (InputStream stream =
        TableRows.class.getResourceAsStream("/underhold/mechanics/micropile/" + resource)) {
      if (stream == null) {
        throw new IllegalStateException("the table " + resource + " is missing from the program");
      }
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
      return reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> List.of(line.split(",", -1)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(List<String> row, int column) {
    return Double.parseDouble(row.get(column).strip());
  }
}
