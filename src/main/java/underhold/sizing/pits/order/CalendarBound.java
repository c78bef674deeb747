package underhold.sizing.pits.order;

import java.util.List;

/**
 * Days below which no order of digging can go, whatever its cleverness.
 *
 * <p>The greatest of three: pits that all stand too close to each other are open one after another;
 * if the open share holds k pits, n pits take n / k turns, rounded up; c crews take n / c turns of
 * digging, rounded up, and the last pit then waits for its strength. Statics of counting; no source
 * needed.
 */
final class CalendarBound {
  private CalendarBound() {}

  /** The bound, working days. */
  static double days(PitRow row, OrderRules rules) {
    double open = rules.times().openDays();
    double crew = rules.times().crewDays();
    double byShare = turns(row.count(), pitsWithinShare(row, rules)) * open;
    double byCrews = turns(row.count(), rules.crews()) * crew + open - crew;
    return Math.max(crowd(row, rules) * open, Math.max(byShare, byCrews));
  }

  private static int turns(int pits, int atOnce) {
    return (pits + atOnce - 1) / atOnce;
  }

  /** Most pits that the share can hold: the narrowest ones; at least one. */
  private static int pitsWithinShare(PitRow row, OrderRules rules) {
    List<Double> narrowFirst = row.widthsMetres().stream().sorted().toList();
    double sum = 0;
    int pits = 0;
    for (double width : narrowFirst) {
      sum += width;
      if (!rules.shareKept(row, sum)) {
        break;
      }
      pits++;
    }
    return Math.max(1, pits);
  }

  /** Largest number of neighbouring pits of which no two may be open together. */
  private static int crowd(PitRow row, OrderRules rules) {
    int largest = 1;
    for (int first = 0; first < row.count(); first++) {
      int next = first + 1;
      while (next < row.count() && conflictsWithAll(row, rules, first, next)) {
        next++;
      }
      largest = Math.max(largest, next - first);
    }
    return largest;
  }

  private static boolean conflictsWithAll(PitRow row, OrderRules rules, int first, int pit) {
    for (int other = first; other < pit; other++) {
      if (!rules.conflict(row, other, pit)) {
        return false;
      }
    }
    return true;
  }
}
