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

  /** Lines of a list, or of a table with its head, that are still moved to the next page. */
  private static final int LINES = 12;

  /** Letters of running words in a line of paper. */
  private static final int LETTERS = 105;

  /** A line of a table on paper, and the blank of a row [mm]. */
  private static final double LINE = 3.25;

  private static final double ROW_BLANK = 0.6;

  /** The name of a table with the blank above it [mm]. */
  private static final double NAME = 5.5;

  /** No table asks for more of a page than this, whatever its rows hold [mm]. */
  private static final double MOST = 60;

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

  /** The height with which a table begins: its name, its head and two rows [mm]. */
  static double beginning(Block.Table table) {
    double height = NAME + LINE * SideBySide.headLines(table, ColumnWidths.PAPER);
    for (int lines : rows(table).stream().limit(2).toList()) {
      height += LINE * lines + ROW_BLANK;
    }
    return Math.min(MOST, height);
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
