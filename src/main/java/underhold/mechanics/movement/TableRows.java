package underhold.mechanics.movement;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Rows of a resource whose cells are parted by bars; lines that start with # are remarks, the first
 * other line is the head.
 */
final class TableRows {
  private TableRows() {}

  static List<String[]> read(String resource, int cells) {
    try (InputStream stream =
        TableRows.class.getResourceAsStream("/underhold/mechanics/movement/" + resource)) {
      if (stream == null) {
        throw new IllegalStateException("the table " + resource + " is missing from the program");
      }
      return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .skip(1)
          .map(line -> cells(resource, line, cells))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String[] cells(String resource, String line, int count) {
    String[] cells = line.split("\\|", -1);
    if (cells.length != count) {
      throw new IllegalStateException(resource + ": a row does not fit its head: " + line);
    }
    for (int i = 0; i < count; i++) {
      cells[i] = cells[i].strip();
    }
    return cells;
  }
}
