package underhold.site;

import underhold.quantity.Measure;
import underhold.quantity.Quantity;

/**
 * Whether two values of one fact say the same. Judgement: lengths of the ground and the works agree
 * within 50 mm or 2 %, whichever is more; other amounts, and small lengths such as movements,
 * within 2 %; words only if they are the same.
 */
final class Agreement {
  /** Relative tolerance; judgement. */
  static final double SHARE = 0.02;

  /** Tolerance of lengths, metres; judgement: levels are seldom known better. */
  static final double LENGTH_METRES = 0.05;

  private Agreement() {}

  static boolean agree(FactDefinition definition, FactValue one, FactValue other) {
    if (one instanceof FactValue.Amount first && other instanceof FactValue.Amount second) {
      double difference = Math.abs(first.quantity().si() - second.quantity().si());
      return difference <= tolerance(definition, first.quantity(), second.quantity());
    }
    return one.text().equals(other.text());
  }

  /** Whether the first amount is below the second by more than the tolerance. */
  static boolean clearlyLess(FactDefinition definition, Quantity less, Quantity more) {
    return more.si() - less.si() > tolerance(definition, less, more);
  }

  private static double tolerance(FactDefinition definition, Quantity one, Quantity other) {
    FactDefinition.Range range = definition.requireRange();
    double relative = SHARE * Math.max(Math.abs(one.si()), Math.abs(other.si()));
    return range.measure() == Measure.LENGTH && !range.fine()
        ? Math.max(LENGTH_METRES, relative)
        : relative;
  }
}
