package underhold.sizing;

import java.util.OptionalDouble;

/**
 * A demand against a capacity, in the same measure. A required factor of safety is part of the
 * demand.
 *
 * @param id unique on its sheet
 * @param title what is checked
 * @param demand what is asked
 * @param capacity what there is
 * @param verdict outcome
 * @param source limit's source and basis
 * @param note what a reader must know; may be empty
 */
public record Check(
    String id,
    String title,
    Amount demand,
    Amount capacity,
    Verdict verdict,
    Source source,
    Phrase note) {

  /** Excess that still passes: rounding of sums only. */
  private static final double TOLERANCE = 1e-9;

  public Check {
    if (demand.measure() != capacity.measure()) {
      throw new IllegalArgumentException(id + ": demand and capacity are of different measures");
    }
    if (verdict == Verdict.PASSES && !covers(demand.si(), capacity.si())) {
      throw new IllegalArgumentException(id + ": a demand above the capacity cannot pass");
    }
  }

  /** Whether a capacity covers a demand. */
  public static boolean covers(double demand, double capacity) {
    return demand <= capacity + TOLERANCE * Math.abs(capacity);
  }

  /** Whether more is asked than there is, whatever the verdict. */
  public boolean exceeds() {
    return !covers(demand.si(), capacity.si());
  }

  /** Demand over capacity; empty where there is no capacity. No demand gives 0. */
  public OptionalDouble utilisation() {
    if (demand.si() <= 0) {
      return OptionalDouble.of(0);
    }
    double ratio = demand.si() / capacity.si();
    return capacity.si() > 0 && Double.isFinite(ratio)
        ? OptionalDouble.of(ratio)
        : OptionalDouble.empty();
  }
}
