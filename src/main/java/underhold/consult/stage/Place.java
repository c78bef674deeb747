package underhold.consult.stage;

/**
 * Something that must be held at every moment: a length of structure, or a face or a row of piles
 * that soil holds sideways until it is dug.
 *
 * @param zone the zone it is in
 * @param name what it is
 * @param number its number along the wall where it is a pit, from 1; else 0
 * @param metres length of wall over it, m; 0 where it is not counted
 */
public record Place(String zone, String name, int number, double metres) {

  /** A place that is not counted in metres of wall. */
  static Place of(String zone, String name) {
    return new Place(zone, name, 0, 0);
  }

  /** Whether it is the pit next to another along the same wall. */
  boolean isBeside(Place other) {
    return number > 0
        && other.number > 0
        && zone.equals(other.zone)
        && Math.abs(number - other.number) == 1;
  }
}
