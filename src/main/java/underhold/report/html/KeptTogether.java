package underhold.report.html;

import java.util.List;
import java.util.stream.IntStream;
import underhold.report.document.Block;

/**
 * What a page of paper never parts: a short list or table stands whole, and a longer table begins
 * with two of its rows, so that neither a line nor a row stands alone at the edge of a page. It is
 * reckoned by letters before anything is set, so it is a little out where words are long.
 */
final class KeptTogether {
  private static final int FEW = 3;

  /** Lines of a list, or of the rows of a table, that are still moved to the next page. */
  private static final int LINES = 4;

  /** Rows of a table that is not kept whole and still ends with two rows on one page. */
  private static final int MANY = 4;

  /** Lines of two rows that are kept together: a row of many lines may stand alone. */
  private static final int TWO_ROWS = 5;

  /** Letters of running words in a line of paper. */
  private static final int LETTERS = 105;

  /** A line of a table on paper, and the blank of a row [mm]. */
  private static final double LINE = 3.25;

  private static final double ROW_BLANK = 0.6;

  /** The name of a table with the blank above it [mm]. */
  private static final double NAME = 5.5;

  /** The least with which a table begins on a page [mm]. */
  private static final double LEAST = 24;

  private KeptTogether() {}

  /** Whether a list is so short that it stands whole on one page. */
  static boolean whole(Block.Listing listing) {
    int lines =
        listing.items().stream().mapToInt(item -> lines(item.text().length(), LETTERS)).sum();
    return listing.items().size() <= FEW && lines <= LINES;
  }

  /** Whether a table is so short that it stands whole on one page. */
  static boolean whole(Block.Table table) {
    List<Integer> rows = rows(table);
    return rows.size() <= FEW && rows.stream().mapToInt(Integer::intValue).sum() <= LINES;
  }

  /** Whether the last two rows of a longer table are so low that they stand on one page. */
  static boolean endsWithTwo(Block.Table table) {
    List<Integer> rows = rows(table);
    int count = rows.size();
    return count >= MANY && rows.get(count - 2) + rows.get(count - 1) <= TWO_ROWS;
  }

  /** The height with which a table begins: its name, its head and two low rows [mm]. */
  static double beginning(Block.Table table) {
    List<Integer> two = rows(table).stream().limit(2).toList();
    int lines = two.stream().mapToInt(Integer::intValue).sum();
    int head = SideBySide.headLines(table, ColumnWidths.PAPER);
    boolean low = two.size() == 2 && lines <= TWO_ROWS;
    return low ? Math.max(LEAST, NAME + LINE * (head + lines) + 2 * ROW_BLANK) : LEAST;
  }

  /** The lines of each row with its note. */
  private static List<Integer> rows(Block.Table table) {
    List<Integer> lines = SideBySide.lines(table, ColumnWidths.PAPER);
    return IntStream.range(0, lines.size())
        .mapToObj(
            row ->
                lines.get(row)
                    + lines(table.rows().get(row).note().text().length(), ColumnWidths.PAPER))
        .toList();
  }

  private static int lines(int letters, int line) {
    return (letters + line - 1) / line;
  }
}
