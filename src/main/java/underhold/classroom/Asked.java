package underhold.classroom;

/**
 * A fact that a student asked for before its stage.
 *
 * @param student the student
 * @param of the case
 * @param zone the zone; empty for a fact of the whole site
 * @param fact the fact
 * @param stage the number of the last stage that was open then, from 0
 * @param days working days that it cost; 0 where the student had paid for that work already
 */
public record Asked(String student, String of, String zone, String fact, int stage, double days) {
  /** Where the fact is stated. */
  public FactPlace place() {
    return new FactPlace(zone, fact);
  }
}
