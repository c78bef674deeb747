package underhold.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * What one student may see of a case. It is made from the site as that student knows it, so that
 * nothing else can get in.
 *
 * @param of the case
 * @param title the name of the job
 * @param story what is told first
 * @param student the student
 * @param stages the stages open
 * @param next what the next stages are and what they cost; no surprise among them
 * @param daysClass working days of the stages open
 * @param daysAsked working days that the student's own questions cost
 * @param site the site as the student knows it
 * @param questions questions of size and sequence, once the choice is marked
 * @param beside what stands beside a question, by its id: the pits, or the stages to be ordered
 * @param answers the student's answers
 * @param given the student's answers to questions
 */
public record StudentSheet(
    String of,
    String title,
    String story,
    String student,
    List<Told> stages,
    List<Told> next,
    double daysClass,
    double daysAsked,
    Site site,
    List<Question> questions,
    Map<String, List<String>> beside,
    List<Answer> answers,
    List<Given> given) {

  /**
   * A stage as a student sees it.
   *
   * @param title its name in words
   * @param days what it costs, in working days
   * @param tells what happened; empty for a stage to come
   */
  public record Told(String title, double days, String tells) {}

  /** The sheet of a student. */
  public static StudentSheet of(
      CaseStudy study, ClassFile file, CaseRef ref, String student, QuestionDesk desk) {
    int open = ref.open();
    List<Question> questions = questions(study, file, ref, student);
    Set<FactPlace> asked = file.askedBy(student, ref.name());
    List<Told> told =
        study.stages().subList(0, open + 1).stream()
            .map(stage -> new Told(stage.title(), stage.days(), stage.tells()))
            .toList();
    List<Told> next =
        study.stages().subList(open + 1, study.stages().size()).stream()
            .filter(stage -> !stage.surprise())
            .map(stage -> new Told(stage.title(), stage.days(), ""))
            .toList();
    return new StudentSheet(
        ref.name(),
        study.file().title(),
        study.file().story(),
        student,
        told,
        next,
        told.stream().mapToDouble(Told::days).sum(),
        file.daysAsked(student, ref.name()),
        study.known(open, asked),
        questions,
        beside(study, questions, desk),
        file.answers().stream()
            .filter(one -> one.student().equals(student) && one.of().equals(ref.name()))
            .toList(),
        file.given().stream()
            .filter(one -> one.student().equals(student) && one.of().equals(ref.name()))
            .toList());
  }

  private static Map<String, List<String>> beside(
      CaseStudy study, List<Question> questions, QuestionDesk desk) {
    Map<String, List<String>> beside = new LinkedHashMap<>();
    for (Question question : questions) {
      beside.put(question.id(), Sequence.beside(desk.of(study, question)));
    }
    return beside;
  }

  /**
   * The questions that a student may see. A question of size tells which method is meant, so it
   * comes only when its stage is open and the student's own choice for its zone, made then or
   * later, is marked.
   */
  static List<Question> questions(CaseStudy study, ClassFile file, CaseRef ref, String student) {
    List<Question> found = new ArrayList<>();
    for (Question question : study.file().questions()) {
      int stage = study.stage(question.stage()).orElseThrow();
      boolean chosen =
          file.marks().stream()
              .filter(mark -> mark.student().equals(student) && mark.of().equals(ref.name()))
              .anyMatch(mark -> mark.about().equals(question.zone()) && mark.stage() >= stage);
      if (stage <= ref.open() && chosen) {
        found.add(question);
      }
    }
    return found;
  }

  /** The value of a fact of the whole case, as typed there. */
  static String value(CaseStudy study, FactPlace place) {
    Map<String, StatedFact> facts =
        place.zone().isEmpty()
            ? study.full().facts()
            : study.zone(place.zone()).orElseThrow().facts();
    StatedFact stated = facts.get(place.fact());
    return stated == null || stated.value() == null ? "unknown" : stated.value().text();
  }

  /** The ground as known at a zone, its own or the site's. */
  public List<GroundLayer> layers(Zone zone) {
    GroundProfile ground = zone.ground().isEmpty() ? site.ground() : zone.ground();
    return ground.layers();
  }
}
