package underhold.classroom;

import java.util.List;

/**
 * What a student would do in a zone, and why.
 *
 * @param student the student
 * @param of the case
 * @param stage the number of the last stage that was open then, from 0
 * @param asked how many facts of the case the student had asked for by then
 * @param zone the zone
 * @param method the id of the method; {@value Expected#NO_METHOD} for no choice yet
 * @param because the facts that decided it, the weightiest first, by their names
 * @param check what must be checked first: names of facts
 * @param condition what the method asks for besides, by the words of {@link ConditionWords}
 * @param danger the dangers, by the words of {@link DangerWords}
 */
public record Answer(
    String student,
    String of,
    int stage,
    int asked,
    String zone,
    String method,
    List<String> because,
    List<String> check,
    List<String> condition,
    List<String> danger) {
  public Answer {
    because = List.copyOf(because);
    check = List.copyOf(check);
    condition = List.copyOf(condition);
    danger = List.copyOf(danger);
    Expected.mustBeMethod(method);
  }

  /** Whether both are of one student, case and zone. */
  boolean sameTask(Answer other) {
    return student.equals(other.student) && of.equals(other.of) && zone.equals(other.zone);
  }

  /** Whether both are of one student, case, zone and stage, so that only the later one counts. */
  boolean sameTurn(Answer other) {
    return sameTask(other) && stage == other.stage;
  }
}
