package underhold.sizing.pits.order;

import java.util.Collection;

/**
 * What may be open together.
 *
 * <p>A pit counts as open from its first cut until its concrete and dry pack have their strength.
 * Two neighbours are never open together. Open pits keep a clear distance of so many pit widths (of
 * the wider one). The open length keeps within a share of the wall; one pit alone is always
 * allowed, since no smaller step exists.
 *
 * @param clearWidths clear distance between open pits, in pit widths
 * @param openShare greatest share of the wall open at once
 * @param crews pits that can be dug at the same time
 * @param times working days of a pit
 */
public record OrderRules(double clearWidths, double openShare, int crews, PitTimes times) {
  /** Lengths that differ by less than this, relative, count as equal: rounding of widths only. */
  static final double RELATIVE_TOLERANCE = 1e-9;

  public OrderRules {
    if (!(clearWidths >= 0) || Double.isInfinite(clearWidths)) {
      throw new IllegalArgumentException(
          "clear spacing is " + clearWidths + ", it must not be below 0");
    }
    if (!(openShare > 0 && openShare <= 1)) {
      throw new IllegalArgumentException(
          "open share is " + openShare + ", it must be above 0 and at most 1");
    }
    if (crews < 1) {
      throw new IllegalArgumentException("there are " + crews + " crews, at least 1 is needed");
    }
  }

  /** Whether two different pits must not be open together. */
  boolean conflict(PitRow row, int one, int other) {
    if (Math.abs(one - other) == 1) {
      return true;
    }
    double needed = clearWidths * Math.max(row.width(one), row.width(other));
    return row.clearDistance(one, other) < needed * (1 - RELATIVE_TOLERANCE);
  }

  /** Whether that many metres may be open together. */
  boolean shareKept(PitRow row, double openMetres) {
    return openMetres <= openShare * row.lengthMetres() * (1 + RELATIVE_TOLERANCE);
  }

  /** Whether a pit may be opened beside those already open. */
  boolean mayOpen(PitRow row, Collection<Integer> open, int pit) {
    if (open.isEmpty()) {
      return true;
    }
    for (int other : open) {
      if (conflict(row, other, pit)) {
        return false;
      }
    }
    return shareKept(row, row.lengthOf(open) + row.width(pit));
  }
}
