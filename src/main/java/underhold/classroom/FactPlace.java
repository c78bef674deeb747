package underhold.classroom;

/**
 * A fact where it is stated.
 *
 * @param zone the zone; empty for the whole site
 * @param fact its name in the dictionary
 */
public record FactPlace(String zone, String fact) {
  /** The place in words: {@code footing width of gable}. */
  @Override
  public String toString() {
    return zone.isEmpty() ? fact : fact + " of " + zone;
  }
}
