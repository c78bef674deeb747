package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;

/**
 * Shares of a table's width for its columns. A column gets at least its longest word, or its
 * longest amount, within reason; what is left is dealt out by how much text a column holds on the
 * whole, until each has its whole text, so that the table grows least in height.
 *
 * @param shares the share of each column in hundredths of a percent, together 10,000
 * @param letters how many letters wide the table must be lest it breaks words
 */
record ColumnWidths(List<Integer> shares, int letters) {
  /** Letters of table text in a line as wide as the page of a screen. */
  static final int SCREEN = 104;

  /** The same in small letters on paper. */
  static final int PAPER = 120;

  /** Blank beside each cell, in letters. */
  static final int PADDING = 3;

  /** Letters more that a bold head takes. */
  private static final int BOLD = 1;

  /** An amount with its unit stands on one line up to this many letters; longer are words. */
  private static final int WIDEST_AMOUNT = 18;

  /** Letters in whose place a name, a number to call or a signature is written by hand. */
  private static final int WRITTEN = 18;

  /** Letters that the sign of a row takes before its first word. */
  private static final int SIGN = 2;

  private static final int WIDEST_WORD = 24;
  private static final int WIDEST_TEXT = 160;

  /** The widths for what stands in a table that has so many letters in a line. */
  static ColumnWidths of(Block.Table table, int line) {
    int count = table.columns().size();
    double[] least = new double[count];
    double[] wanted = new double[count];
    double[] holds = new double[count];
    for (int i = 0; i < count; i++) {
      Block.Column column = table.columns().get(i);
      least[i] = longestWord(column.title()) + BOLD;
      wanted[i] = least[i];
      for (Block.Row row : table.rows()) {
        String text = row.cells().get(i).text();
        int whole = Math.min(text.length(), WIDEST_TEXT);
        boolean amount = column.amounts() && whole <= WIDEST_AMOUNT;
        int word = longestWord(text) + (i == 0 && row.tone() != Block.Tone.PLAIN ? SIGN : 0);
        least[i] = Math.max(least[i], amount ? whole : word);
        wanted[i] = Math.max(wanted[i], whole);
        holds[i] += text.length();
      }
      if (table.toWriteIn(i)) {
        least[i] = Math.max(least[i], WRITTEN);
        wanted[i] = 2 * WRITTEN;
        holds[i] = WRITTEN * table.rows().size();
      }
      holds[i] = PADDING + holds[i] / Math.max(1, table.rows().size());
      least[i] = Math.min(least[i], WIDEST_WORD) + PADDING;
      wanted[i] = Math.max(least[i], wanted[i] + PADDING);
    }
    List<Integer> shares = shares(least, wanted, holds, line);
    double letters = 0;
    for (int i = 0; i < count; i++) {
      letters = Math.max(letters, 10_000 * least[i] / Math.max(1, shares.get(i)));
    }
    return new ColumnWidths(shares, (int) Math.ceil(letters));
  }

  private static List<Integer> shares(double[] least, double[] wanted, double[] holds, int line) {
    double[] widths = least.clone();
    double left = line - sum(least);
    boolean anyWants = true;
    while (left > 0.01 && anyWants) {
      double wanting = 0;
      for (int i = 0; i < widths.length; i++) {
        wanting += wanted[i] > widths[i] ? holds[i] : 0;
      }
      anyWants = wanting > 0;
      double each = anyWants ? left / wanting : 0;
      for (int i = 0; i < widths.length; i++) {
        double given = Math.max(0, Math.min(each * holds[i], wanted[i] - widths[i]));
        widths[i] += given;
        left -= given;
      }
    }
    double all = sum(widths);
    List<Integer> shares = new ArrayList<>();
    int rest = 10_000;
    for (int i = 0; i < widths.length; i++) {
      int share = i == widths.length - 1 ? rest : (int) Math.floor(10_000 * widths[i] / all);
      shares.add(share);
      rest -= share;
    }
    return shares;
  }

  private static int longestWord(String text) {
    int longest = 0;
    int length = 0;
    for (int i = 0; i < text.length(); i++) {
      length = Character.isWhitespace(text.charAt(i)) ? 0 : length + 1;
      longest = Math.max(longest, length);
    }
    return longest;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
