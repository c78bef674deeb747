package underhold.consult.screening;

import java.util.List;

/**
 * One row of a file, as it stands there.
 *
 * @param line the line on which it begins, from 1
 * @param cells its cells, without their quotation marks; empty where it could not be split
 * @param problem why it could not be split; empty where it could
 * @param last whether nothing after it can be read
 */
record CsvRecord(int line, List<String> cells, String problem, boolean last) {
  CsvRecord {
    cells = List.copyOf(cells);
  }

  /** Whether there is nothing in it. */
  boolean blank() {
    return problem.isEmpty() && cells.stream().allMatch(String::isBlank);
  }
}
