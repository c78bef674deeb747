package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;
import underhold.report.document.Prose;

/**
 * Long tables of short rows, which would leave half of a page of paper empty: two rows are set side
 * by side, read across.
 */
final class SideBySide {
  private static final int FEWEST_ROWS = 6;
  private static final int MOST_COLUMNS = 3;

  /** Share of the width between the halves, in hundredths of a percent. */
  private static final int GAP = 300;

  private static final int HALF = ColumnWidths.PAPER * (10_000 - GAP) / 20_000;

  /** It must spare a seventh of the height at least. */
  private static final double WORTH = 0.85;

  private SideBySide() {}

  /** Whether the table is lower with its rows in pairs. */
  static boolean saves(Block.Table table) {
    if (table.rows().size() < FEWEST_ROWS
        || table.columns().size() > MOST_COLUMNS
        || table.noted()) {
      return false;
    }
    List<Integer> whole = lines(table, ColumnWidths.PAPER);
    List<Integer> half = lines(table, HALF);
    int single = whole.stream().mapToInt(Integer::intValue).sum();
    int paired = 0;
    for (int i = 0; i < half.size(); i += 2) {
      paired += Math.max(half.get(i), i + 1 < half.size() ? half.get(i + 1) : 0);
    }
    return paired < WORTH * single;
  }

  /** The shares of the columns of one half, the gap, and those of the other half. */
  static List<Integer> shares(Block.Table table) {
    List<Integer> one = new ArrayList<>();
    for (int share : ColumnWidths.of(table, HALF).shares()) {
      one.add(share * (10_000 - GAP) / 20_000);
    }
    List<Integer> all = new ArrayList<>(one);
    all.add(10_000 - 2 * one.stream().mapToInt(Integer::intValue).sum());
    all.addAll(one);
    return all;
  }

  /** How many lines each row takes, in a table that has so many letters in a line. */
  static List<Integer> lines(Block.Table table, int line) {
    List<Integer> shares = ColumnWidths.of(table, line).shares();
    return table.rows().stream().map(row -> lines(row, shares, line)).toList();
  }

  /** How many lines the head takes. */
  static int headLines(Block.Table table, int line) {
    List<String> titles = table.columns().stream().map(Block.Column::title).toList();
    return lines(titles, ColumnWidths.of(table, line).shares(), line);
  }

  private static int lines(Block.Row row, List<Integer> shares, int line) {
    return lines(row.cells().stream().map(Prose::text).toList(), shares, line);
  }

  private static int lines(List<String> cells, List<Integer> shares, int line) {
    int most = 1;
    for (int i = 0; i < shares.size(); i++) {
      double letters = Math.max(1, shares.get(i) * line / 10_000.0 - ColumnWidths.PADDING);
      most = Math.max(most, (int) Math.ceil(cells.get(i).length() / letters));
    }
    return most;
  }
}
