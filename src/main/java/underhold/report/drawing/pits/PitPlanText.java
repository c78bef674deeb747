package underhold.report.drawing.pits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.pits.PitLayout.Pit;
import underhold.report.drawing.text.TextGrid;
import underhold.sizing.Sheet;

/** The row of pits sketched for a terminal: a cell a pit, its number over its round. */
public final class PitPlanText {
  private static final int LEAST_CELL = 5;
  private static final int WIDEST_CELL = 12;

  private final PitLayout layout;
  private final UnitSystem units;

  PitPlanText(PitLayout layout, UnitSystem units) {
    this.layout = layout;
    this.units = units;
  }

  /** The sketch of a sheet's pits; empty where it holds none. */
  public static Optional<PitPlanText> of(Sheet sheet, UnitSystem units) {
    return PitLayout.of(sheet).map(layout -> new PitPlanText(layout, units));
  }

  /** The sketch, no line longer than that many columns; box signs beyond ASCII. */
  public List<String> lines(int columns) {
    int count = layout.pits().size();
    int room = columns - 1;
    int cell = Math.max(LEAST_CELL, Math.min(WIDEST_CELL, room / count));
    int fit = Math.max(1, room / cell);
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < count; from += fit) {
      lines.addAll(strip(layout.pits().subList(from, Math.min(count, from + fit)), cell));
    }
    return lines;
  }

  private List<String> strip(List<Pit> pits, int cell) {
    TextGrid grid = new TextGrid(pits.size() * cell + 1, 4);
    for (int i = 0; i < pits.size(); i++) {
      int left = i * cell;
      edge(grid, left, i == 0);
      for (int column = left + 1; column < left + cell; column++) {
        grid.put(column, 0, '─');
        grid.put(column, 3, '─');
      }
      centre(grid, left + 1, 1, cell - 1, String.valueOf(pits.get(i).number()));
      centre(grid, left + 1, 2, cell - 1, "R" + pits.get(i).round());
    }
    int right = pits.size() * cell;
    grid.put(right, 0, '┐');
    grid.put(right, 1, '│');
    grid.put(right, 2, '│');
    grid.put(right, 3, '┘');
    return grid.lines();
  }

  private static void edge(TextGrid grid, int column, boolean first) {
    grid.put(column, 0, first ? '┌' : '┬');
    grid.put(column, 1, '│');
    grid.put(column, 2, '│');
    grid.put(column, 3, first ? '└' : '┴');
  }

  private static void centre(TextGrid grid, int column, int row, int room, String words) {
    grid.write(column + (room - words.length()) / 2, row, words);
  }

  /** The rounds, and the widths where they change, in words. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    for (int round = 1; round <= layout.rounds().size(); round++) {
      words.add("R" + round + ": " + pits(layout, round) + ".");
    }
    words.addAll(widths());
    words.add("All pits together: " + layout.wall().in(units) + " of wall.");
    return words;
  }

  /** "pits 1, 5 and 9". */
  static String pits(PitLayout layout, int round) {
    List<Integer> pits = layout.round(round);
    String last = String.valueOf(pits.get(pits.size() - 1));
    if (pits.size() == 1) {
      return "pit " + last;
    }
    return "pits "
        + pits.subList(0, pits.size() - 1).stream()
            .map(String::valueOf)
            .collect(Collectors.joining(", "))
        + " and "
        + last;
  }

  /** Runs of pits of one width: "Pits 2 to 10: each 1.167 m wide". */
  private List<String> widths() {
    List<String> words = new ArrayList<>();
    List<Pit> pits = layout.pits();
    int from = 0;
    for (int i = 1; i <= pits.size(); i++) {
      String width = pits.get(from).width().in(units);
      if (i == pits.size() || !pits.get(i).width().in(units).equals(width)) {
        words.add(
            i - from == 1
                ? "Pit " + pits.get(from).number() + ": " + width + " wide."
                : "Pits "
                    + pits.get(from).number()
                    + " to "
                    + pits.get(i - 1).number()
                    + ": each "
                    + width
                    + " wide.");
        from = i;
      }
    }
    return words;
  }
}
