package underhold.classroom;

/**
 * What a student answered to a question.
 *
 * @param student the student
 * @param of the case
 * @param question the id of the question
 * @param gives the answer as typed
 */
public record Given(String student, String of, String question, String gives) {

  /** Whether both are of one student, case and question, so that only the later one counts. */
  boolean sameQuestion(Given other) {
    return student.equals(other.student) && of.equals(other.of) && question.equals(other.question);
  }
}
