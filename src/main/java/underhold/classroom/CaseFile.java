package underhold.classroom;

import java.util.List;
import java.util.Optional;
import underhold.review.file.Raw;
import underhold.review.file.RecordFile;
import underhold.site.PlainText;

/**
 * What a case file holds.
 *
 * @param underhold its form
 * @param title the name of the job; invented
 * @param level the word of a {@link Level}
 * @param teaches what it teaches, in a few words; students do not see it
 * @param lesson the same in sentences, for the close; students do not see it
 * @param basis what the lesson rests on
 * @param story what the student is told first
 * @param expects what should lead, zone by zone
 * @param site all the facts, as a site file holds them
 * @param stages in their order, the first being what is known on day one
 * @param questions of size and sequence
 * @param made how it came about, where the program made it
 */
public record CaseFile(
    String underhold,
    String title,
    String level,
    String teaches,
    String lesson,
    String basis,
    String story,
    List<Expected> expects,
    Raw site,
    List<CaseStage> stages,
    List<Question> questions,
    Optional<Made> made) {
  /** The end of the name of every such file. */
  public static final String ENDING = ".case.json";

  /** How such files are read and written. */
  public static final RecordFile<CaseFile> FILES =
      new RecordFile<>(CaseFile.class, "case/1", "a case for the classroom");

  private static final List<String> BASES =
      List.of("standard", "published", "common practice", "judgement", "from memory, verify");

  public CaseFile {
    expects = List.copyOf(expects);
    stages = List.copyOf(stages);
    questions = List.copyOf(questions);
    if (Level.find(level).isEmpty()) {
      throw new IllegalArgumentException(
          "there is no level "
              + PlainText.quoted(level)
              + "; there are "
              + String.join(", ", Level.words()));
    }
    if (!BASES.contains(basis)) {
      throw new IllegalArgumentException(
          "a lesson rests on one of "
              + String.join(", ", BASES)
              + ", not on "
              + PlainText.quoted(basis));
    }
    if (stages.isEmpty()) {
      throw new IllegalArgumentException("a case has at least the stage of day one");
    }
  }
}
