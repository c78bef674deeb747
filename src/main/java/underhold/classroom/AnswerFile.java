package underhold.classroom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.review.file.RecordFile;

/**
 * The answers of a student to one case, as the student hands them in.
 *
 * @param underhold the form of the file
 * @param student the student
 * @param of the case
 * @param zones zone by zone
 * @param scheme how the methods of all zones go together
 * @param questions questions of size and sequence
 */
public record AnswerFile(
    String underhold,
    String student,
    String of,
    Optional<List<InZone>> zones,
    Optional<Together> scheme,
    Optional<List<ToQuestion>> questions) {
  /** The end of the name of every such file. */
  public static final String ENDING = ".answers.json";

  /** How such files are read and written. */
  public static final RecordFile<AnswerFile> FILES =
      new RecordFile<>(AnswerFile.class, "answers/1", "a file of answers");

  public AnswerFile {
    zones = zones.map(List::copyOf);
    questions = questions.map(List::copyOf);
  }

  /**
   * The answer for one zone; what is left out is taken for nothing named.
   *
   * @param zone the zone
   * @param method the id of the method, or none
   * @param because the facts that decided it
   * @param check what must be checked first
   * @param condition what the method asks for besides
   * @param danger the dangers
   */
  public record InZone(
      String zone,
      String method,
      Optional<List<String>> because,
      Optional<List<String>> check,
      Optional<List<String>> condition,
      Optional<List<String>> danger) {}

  /**
   * The answer for all zones together.
   *
   * @param methods the method of each zone, by its name
   * @param because the facts that decide it
   * @param order what must come before what
   */
  public record Together(
      Map<String, String> methods,
      Optional<List<String>> because,
      Optional<List<SchemeAnswer.Wanted>> order) {
    public Together {
      methods = Collections.unmodifiableMap(new LinkedHashMap<>(methods));
    }
  }

  /**
   * The answer to a question.
   *
   * @param question its id
   * @param gives the answer
   */
  public record ToQuestion(String question, String gives) {}
}
