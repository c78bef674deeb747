package underhold.mechanics.soil;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A printed table kept as a resource: '#' lines are notes, then a header line, then rows; fields
 * are parted by '|'.
 *
 * @param rows the rows in file order
 */
public record SoilTable(List<Row> rows) {

  private static final String FOLDER = "/underhold/mechanics/soil/";

  public SoilTable {
    rows = List.copyOf(rows);
  }

  /**
   * Reads a table from the resources of this package.
   *
   * @throws IllegalStateException when the file is missing or a row does not fit the header
   */
  public static SoilTable load(String fileName) {
    InputStream stream = SoilTable.class.getResourceAsStream(FOLDER + fileName);
    if (stream == null) {
      throw new IllegalStateException("table not found: " + fileName);
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      List<String> lines =
          reader
              .lines()
              .map(String::strip)
              .filter(line -> !line.isEmpty() && !line.startsWith("#"))
              .toList();
      List<String> header = fields(lines.get(0));
      return new SoilTable(
          lines.stream().skip(1).map(line -> row(fileName, header, fields(line))).toList());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static List<String> fields(String line) {
    return List.of(line.split("\\|", -1)).stream().map(String::strip).toList();
  }

  private static Row row(String fileName, List<String> header, List<String> fields) {
    if (header.size() != fields.size()) {
      throw new IllegalStateException(fileName + ": row does not fit its header: " + fields);
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      cells.put(header.get(i), fields.get(i));
    }
    return new Row(cells);
  }

  /**
   * One row.
   *
   * @param cells text by column name
   */
  public record Row(Map<String, String> cells) {
    public Row {
      cells = Map.copyOf(cells);
    }

    /** The text of a cell. */
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalStateException("no column " + column);
      }
      return cell;
    }

    /** The number in a cell. */
    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    /** The number in a cell, empty when the cell is. */
    public OptionalDouble optionalNumber(String column) {
      return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
    }
  }
}
