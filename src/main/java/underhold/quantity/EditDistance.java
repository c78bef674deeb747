package underhold.quantity;

/**
 * How far two words are apart: letters put in, left out, changed or swapped with their neighbour
 * (optimal string alignment distance). For suggestions in messages only.
 */
public final class EditDistance {
  private EditDistance() {}

  /** The distance, 0 for equal words. */
  public static int between(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(int[][] cost, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
