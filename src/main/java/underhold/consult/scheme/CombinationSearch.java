package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best combinations of methods: one for each zone, the sum of the zones' own points and
 * of the pairs' points greatest.
 *
 * <p>Branch and bound, depth first in the order of the site. The bound of a branch is what it has,
 * plus for every zone still open the most that any of its options brings by itself, plus for every
 * pair with an open zone the most that any two of their options bring together. No completion of
 * the branch can exceed it, so what is cut could not have been among the best kept: the answer is
 * exact. Ranked by points, where asked for after those that no open rule between zones holds; equal
 * points keep the order in which the zones' own rankings put the options.
 *
 * <p>Valid up to {@link #MOST_ZONES} zones of {@link ZoneChoice#MOST_TRIED} options each (3^12,
 * some half a million leaves before anything is cut).
 */
final class CombinationSearch {
  /** More zones than these are not compared in one scheme. */
  static final int MOST_ZONES = 12;

  private static final Comparator<Combination> MOST_POINTS = Comparator.comparing(c -> -c.points());
  private static final Comparator<Combination> HELD_LAST =
      Comparator.comparing(Combination::held).thenComparing(MOST_POINTS);

  private final List<List<ZoneChoice>> options;
  private final PairScreen screen;
  private final int kept;
  private final boolean heldLast;

  /** Most that the zones from this one on, and their pairs with all zones, can still bring. */
  private final int[] ahead;

  private final List<Combination> best = new ArrayList<>();
  private long ruledOut;

  /**
   * A search among options.
   *
   * @param options what may be chosen for each zone
   * @param screen the rules between zones
   * @param kept how many combinations are kept
   * @param heldLast whether one that an open rule holds comes after all that none holds
   */
  CombinationSearch(List<List<ZoneChoice>> options, PairScreen screen, int kept, boolean heldLast) {
    if (options.size() > MOST_ZONES) {
      throw new IllegalArgumentException("at most " + MOST_ZONES + " zones are compared");
    }
    this.options = options;
    this.screen = screen;
    this.kept = kept;
    this.heldLast = heldLast;
    this.ahead = new int[options.size() + 1];
    for (int zone = options.size() - 1; zone >= 0; zone--) {
      ahead[zone] = ahead[zone + 1] + mostOf(zone) + mostWithEarlier(zone);
    }
  }

  /** The best combinations, at most as many as are kept; empty where every one is ruled out. */
  List<Combination> run() {
    branch(new ArrayList<>(), 0);
    return List.copyOf(best);
  }

  /** How many whole combinations were looked at and ruled out, for messages. */
  long ruledOut() {
    return ruledOut;
  }

  private void branch(List<ZoneChoice> chosen, int points) {
    int zone = chosen.size();
    if (full() && points + ahead[zone] <= worst().points() && !(heldLast && worst().held())) {
      return;
    }
    if (zone == options.size()) {
      keep(chosen);
      return;
    }
    for (ZoneChoice choice : options.get(zone)) {
      int gained = choice.points();
      boolean out = false;
      for (ZoneChoice earlier : chosen) {
        PairVerdict verdict = screen.of(earlier, choice);
        gained += verdict.points();
        out |= verdict.ruledOut();
      }
      if (out) {
        ruledOut++;
        continue;
      }
      chosen.add(choice);
      branch(chosen, points + gained);
      chosen.remove(zone);
    }
  }

  private void keep(List<ZoneChoice> chosen) {
    Optional<Combination> made = Combination.of(chosen, screen);
    if (made.isEmpty()) {
      ruledOut++;
      return;
    }
    Combination combination = made.get();
    int place = best.size();
    while (place > 0 && order().compare(combination, best.get(place - 1)) < 0) {
      place--;
    }
    best.add(place, combination);
    if (best.size() > kept) {
      best.remove(kept);
    }
  }

  private Comparator<Combination> order() {
    return heldLast ? HELD_LAST : MOST_POINTS;
  }

  private boolean full() {
    return best.size() == kept;
  }

  private Combination worst() {
    return best.get(best.size() - 1);
  }

  private int mostOf(int zone) {
    return options.get(zone).stream().mapToInt(ZoneChoice::points).max().orElse(0);
  }

  private int mostWithEarlier(int zone) {
    int sum = 0;
    for (int earlier = 0; earlier < zone; earlier++) {
      int most = Integer.MIN_VALUE;
      for (ZoneChoice one : options.get(earlier)) {
        for (ZoneChoice other : options.get(zone)) {
          most = Math.max(most, screen.of(one, other).points());
        }
      }
      sum += most;
    }
    return sum;
  }
}
