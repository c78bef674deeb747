package underhold.report.drawing.text;

import java.util.Arrays;
import java.util.List;

/** A sheet of squared paper: one sign in each square, nothing drawn beyond its edges. */
public final class TextGrid {
  private final int columns;
  private final int[][] squares;

  /** An empty sheet. */
  public TextGrid(int columns, int rows) {
    this.columns = columns;
    this.squares = new int[rows][columns];
    for (int[] row : squares) {
      Arrays.fill(row, ' ');
    }
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return squares.length;
  }

  /** One sign. */
  public void put(int column, int row, int sign) {
    if (row >= 0 && row < squares.length && column >= 0 && column < columns) {
      squares[row][column] = sign;
    }
  }

  /** The sign there; a blank beyond the edges. */
  public int at(int column, int row) {
    return row >= 0 && row < squares.length && column >= 0 && column < columns
        ? squares[row][column]
        : ' ';
  }

  /** Words from a square to the right; cut at the edge. */
  public void write(int column, int row, String words) {
    int[] points = words.codePoints().toArray();
    for (int i = 0; i < points.length; i++) {
      put(column + i, row, points[i]);
    }
  }

  /** The same sign in a rectangle, from square to square, both in it. */
  public void fill(int left, int top, int right, int bottom, int sign) {
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        put(column, row, sign);
      }
    }
  }

  /** The words cut to that many columns, the last an ellipsis. */
  public static String fit(String words, int columns) {
    int[] points = words.codePoints().toArray();
    return points.length <= columns
        ? words
        : new String(points, 0, Math.max(0, columns - 1)).stripTrailing() + "…";
  }

  /** Its lines, without blanks at their ends. */
  public List<String> lines() {
    return Arrays.stream(squares)
        .map(row -> new String(row, 0, row.length).stripTrailing())
        .toList();
  }
}
