package underhold.sizing.pits.order;

/**
 * Working days of one pit, in the order they pass. The wall is without support over the pit from
 * the first to the last.
 *
 * @param digDays digging and sheeting
 * @param concreteDays placing concrete
 * @param waitBeforeDryPackDays until the concrete has set and taken its first shrinkage
 * @param dryPackDays ramming the gap
 * @param waitBeforeNeighbourDays until concrete and dry pack have the strength to let a neighbour
 *     start
 */
public record PitTimes(
    double digDays,
    double concreteDays,
    double waitBeforeDryPackDays,
    double dryPackDays,
    double waitBeforeNeighbourDays) {

  public PitTimes {
    if (!(digDays > 0) || Double.isInfinite(digDays)) {
      throw new IllegalArgumentException("digging takes " + digDays + " days, it must be above 0");
    }
    double[] others = {concreteDays, waitBeforeDryPackDays, dryPackDays, waitBeforeNeighbourDays};
    for (double days : others) {
      if (!(days >= 0) || Double.isInfinite(days)) {
        throw new IllegalArgumentException("a time of " + days + " days must not be below 0");
      }
    }
  }

  /** Days a crew is bound to the pit: digging and concreting. */
  public double crewDays() {
    return digDays + concreteDays;
  }

  /** Days from the first cut until the pit carries. */
  public double openDays() {
    return crewDays() + waitBeforeDryPackDays + dryPackDays + waitBeforeNeighbourDays;
  }
}
