package underhold.sizing.needles;

import underhold.sizing.Amount;
import underhold.sizing.Check;

/**
 * One way in which a section could fail.
 *
 * @param id short name
 * @param words in words
 * @param demand what is asked, inside unit
 * @param capacity what there is
 * @param kind an amount of the same measure
 */
record Limb(String id, String words, double demand, double capacity, Amount kind) {
  boolean passes() {
    return Check.covers(demand, capacity);
  }

  /** Demand over capacity; without capacity a number above any that passes. */
  double utilisation() {
    if (demand <= 0) {
      return 0;
    }
    double ratio = demand / capacity;
    return capacity > 0 && ratio < NO_CAPACITY ? ratio : NO_CAPACITY;
  }

  private static final double NO_CAPACITY = 1e6;

  Amount demandAmount() {
    return kind.with(demand);
  }

  Amount capacityAmount() {
    return kind.with(capacity);
  }
}
