package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.COLUMN;

import java.util.ArrayList;
import java.util.List;

/**
 * Every layout worth trying, fewest piles first; one where the number is set. Each is reckoned when
 * it is first asked for, since mostly one of the first will do.
 */
final class Layouts {
  private final PileCase site;
  private final boolean column;
  private final int set;
  private final int most;
  private final List<PileLayout> found = new ArrayList<>();

  /** The least number of piles of the next layout. */
  private int next;

  private boolean ended;

  Layouts(PileCase site) {
    this.site = site;
    this.column = site.pattern().equals(COLUMN);
    this.set = (int) Math.round(site.get(GroupNumbers.PILES));
    this.most =
        (int)
            Math.round(site.get(column ? GroupNumbers.MOST_COLUMN_PILES : GroupNumbers.MOST_PILES));
    this.next = set > 0 ? set : 1;
  }

  /** Whether there is a layout in that place. */
  boolean has(int place) {
    while (found.size() <= place && !ended) {
      find();
    }
    return place < found.size();
  }

  PileLayout get(int place) {
    return found.get(place);
  }

  /** The layout with the most piles. */
  PileLayout last() {
    while (!ended) {
      find();
    }
    return found.get(found.size() - 1);
  }

  private void find() {
    PileLayout layout = PileLayout.of(site, next);
    // Under a column it is the same layout up to as many piles as it has.
    next = column ? Math.max(next, layout.piles()) + 1 : next + 1;
    ended = set > 0 || next > most;
    boolean known = !found.isEmpty() && found.get(found.size() - 1).piles() >= layout.piles();
    if (!known) {
      boolean crowded = layout.leastSpacingMetres() < site.leastSpacing() - 1e-9;
      if (found.isEmpty() || !crowded) {
        found.add(layout);
      }
      ended |= crowded || layout.piles() >= most;
    }
  }
}
