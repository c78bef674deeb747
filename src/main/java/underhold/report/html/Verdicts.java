package underhold.report.html;

import org.jspecify.annotations.Nullable;
import underhold.report.document.Block;

/**
 * What a row of checks comes to, in words. On the narrow screen of a telephone the column that says
 * so has no room beside the others, so the style repeats it below the name of the check.
 */
final class Verdicts {
  /** The title of the column that says what a row comes to. */
  private static final String COLUMN = "Verdict";

  private Verdicts() {}

  /** The verdict of a check; none where the row is none, or has its verdict first. */
  static @Nullable String of(Block.Table table, Block.Row row) {
    if (row.tone() == Block.Tone.PLAIN) {
      return null;
    }
    for (int i = 1; i < table.columns().size(); i++) {
      if (table.columns().get(i).title().equals(COLUMN)) {
        String words = row.cells().get(i).text();
        return words.isBlank() ? null : words;
      }
    }
    return null;
  }
}
