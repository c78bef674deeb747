package underhold.sizing.pits;

import java.util.Collections;
import underhold.sizing.pits.order.PitRow;

/**
 * Pits along the wall.
 *
 * @param row pits from end to end
 */
record Layout(PitRow row) {
  /** Widest pit, m. */
  double widest() {
    return Collections.max(row.widthsMetres());
  }

  /** Number of pits. */
  int count() {
    return row.count();
  }
}
