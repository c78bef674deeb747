package underhold.review.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A covering array of strength two: rows of values such that each two values of any two parameters
 * stand together in at least one row. Made greedily, so it is not the shortest.
 */
final class Pairwise {
  private final int[] sizes;
  private final Set<Long> open = new HashSet<>();

  private Pairwise(int[] sizes) {
    this.sizes = sizes;
    for (int p = 0; p < sizes.length; p++) {
      for (int q = p + 1; q < sizes.length; q++) {
        for (int v = 0; v < sizes[p]; v++) {
          for (int w = 0; w < sizes[q]; w++) {
            open.add(key(p, v, q, w));
          }
        }
      }
    }
  }

  /**
   * The rows: the index of a value for each parameter.
   *
   * @param sizes how many values each parameter has, each at least 1
   */
  static List<int[]> rows(int[] sizes) {
    Pairwise pairwise = new Pairwise(sizes.clone());
    List<int[]> rows = new ArrayList<>();
    while (!pairwise.open.isEmpty()) { // ends: each row covers the pair it starts from
      rows.add(pairwise.row());
    }
    return rows.isEmpty() ? List.of(new int[sizes.length]) : rows;
  }

  private static long key(int p, int v, int q, int w) {
    return p < q ? ((((long) p << 12) | v) << 24) | ((long) q << 12) | w : key(q, w, p, v);
  }

  private int[] row() {
    int[] row = new int[sizes.length];
    Arrays.fill(row, -1);
    long pair = open.iterator().next();
    row[(int) (pair >> 36)] = (int) ((pair >> 24) & 0xfff);
    row[(int) ((pair >> 12) & 0xfff)] = (int) (pair & 0xfff);
    for (int p = 0; p < sizes.length; p++) {
      if (row[p] < 0) {
        row[p] = best(p, row);
      }
    }
    for (int p = 0; p < sizes.length; p++) {
      for (int q = p + 1; q < sizes.length; q++) {
        open.remove(key(p, row[p], q, row[q]));
      }
    }
    return row;
  }

  /** The value that covers most open pairs with what the row has already. */
  private int best(int p, int[] row) {
    int best = 0;
    int most = -1;
    for (int v = 0; v < sizes[p]; v++) {
      int covers = 0;
      for (int q = 0; q < sizes.length; q++) {
        boolean covered = q != p && row[q] >= 0 && open.contains(key(p, v, q, row[q]));
        covers += covered ? 1 : 0;
      }
      if (covers > most) {
        most = covers;
        best = v;
      }
    }
    return best;
  }
}
