package underhold.classroom;

import java.util.List;
import java.util.Optional;
import underhold.review.file.RecordFile;

/**
 * The answers of a student to one case, as the student hands them in.
 *
 * @param underhold the form of the file
 * @param student the student
 * @param of the case
 * @param zones zone by zone
 * @param questions questions of size and sequence
 */
public record AnswerFile(
    String underhold,
    String student,
    String of,
    List<InZone> zones,
    Optional<List<ToQuestion>> questions) {
  /** The end of the name of every such file. */
  public static final String ENDING = ".answers.json";

  /** How such files are read and written. */
  public static final RecordFile<AnswerFile> FILES =
      new RecordFile<>(AnswerFile.class, "answers/1", "a file of answers");

  public AnswerFile {
    zones = List.copyOf(zones);
    questions = questions.map(List::copyOf);
  }

  /**
   * The answer for one zone.
   *
   * @param zone the zone
   * @param method the id of the method, or none
   * @param because the facts that decided it
   * @param check what must be checked first
   * @param danger the dangers
   */
  public record InZone(
      String zone, String method, List<String> because, List<String> check, List<String> danger) {}

  /**
   * The answer to a question.
   *
   * @param question its id
   * @param gives the answer
   */
  public record ToQuestion(String question, String gives) {}
}
