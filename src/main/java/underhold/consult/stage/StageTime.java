package underhold.consult.stage;

/**
 * How long a stage takes.
 *
 * @param days working days, at least 0
 * @param source where that comes from, with its basis
 */
public record StageTime(double days, String source) {
  public StageTime {
    if (!(days >= 0) || Double.isInfinite(days)) {
      throw new IllegalArgumentException("a stage takes " + days + " days, it must be 0 or more");
    }
  }

  /** This and then another. */
  StageTime and(StageTime other) {
    return new StageTime(days + other.days, source + "; then " + other.source);
  }
}
