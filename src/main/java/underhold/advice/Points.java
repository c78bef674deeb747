package underhold.advice;

/**
 * What each strength counts, in a sweep over weights.
 *
 * @param decisive points of a decisive finding
 * @param major points of a major finding
 * @param moderate points of a moderate finding
 * @param minor points of a minor finding
 */
public record Points(double decisive, double major, double moderate, double minor) {
  /** The weights of a pack. */
  public static Points of(RulePack.Weights weights) {
    return new Points(
        weights.of(Strength.DECISIVE),
        weights.of(Strength.MAJOR),
        weights.of(Strength.MODERATE),
        weights.of(Strength.MINOR));
  }

  /** The points of a strength. */
  public double of(Strength strength) {
    return switch (strength) {
      case DECISIVE -> decisive;
      case MAJOR -> major;
      case MODERATE -> moderate;
      case MINOR -> minor;
    };
  }

  /** All points together. */
  public double sum() {
    return decisive + major + moderate + minor;
  }
}
