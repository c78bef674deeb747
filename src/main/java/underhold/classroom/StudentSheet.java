package underhold.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
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
 * @param student the student; empty on a sheet for anybody
 * @param stages the stages open
 * @param next what the next stages are and what they cost; no surprise among them
 * @param daysClass working days of the stages open
 * @param daysAsked working days that the student's own questions cost
 * @param site the site as the student knows it
 * @param questions questions of size and sequence, once the choice is marked
 * @param beside what stands beside a question, by its id: the pits, or the stages to be ordered
 * @param answers the student's answers, those that do not count any more among them
 * @param schemes the student's answers for all zones together, likewise
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
    List<SchemeAnswer> schemes,
    List<Given> given) {
  public StudentSheet {
    stages = List.copyOf(stages);
    next = List.copyOf(next);
    questions = List.copyOf(questions);
    beside = Map.copyOf(beside);
    answers = List.copyOf(answers);
    schemes = List.copyOf(schemes);
    given = List.copyOf(given);
  }

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
    List<Question> questions = questions(study, file, ref, student);
    StudentSheet bare =
        bare(
            study,
            ref.open(),
            student,
            file.askedBy(student, ref.name()),
            file.daysAsked(student, ref.name()));
    return new StudentSheet(
        bare.of,
        bare.title,
        bare.story,
        student,
        bare.stages,
        bare.next,
        bare.daysClass,
        bare.daysAsked,
        bare.site,
        questions,
        beside(study, questions, desk),
        own(file.answers(), one -> one.student().equals(student) && one.of().equals(ref.name())),
        own(file.schemes(), one -> one.student().equals(student) && one.of().equals(ref.name())),
        own(file.given(), one -> one.student().equals(student) && one.of().equals(ref.name())));
  }

  /**
   * A sheet for anybody, to be handed out on paper: what all know, and no question of size or
   * sequence, for such a question tells which method is meant.
   *
   * @param open the last stage that is open, from 0
   */
  public static StudentSheet of(CaseStudy study, int open) {
    return bare(study, open, "", Set.of(), 0);
  }

  private static StudentSheet bare(
      CaseStudy study, int open, String student, Set<FactPlace> asked, double daysAsked) {
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
        study.name(),
        study.file().title(),
        study.file().story(),
        student,
        told,
        next,
        told.stream().mapToDouble(Told::days).sum(),
        daysAsked,
        study.known(open, asked),
        List.of(),
        Map.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static <T> List<T> own(List<T> all, Predicate<T> own) {
    return all.stream().filter(own).toList();
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

  /** Whether an answer of the student still counts: no later one was given at its stage. */
  public boolean counts(Answer answer) {
    int last = answers.lastIndexOf(answer);
    return answers.subList(last + 1, answers.size()).stream().noneMatch(answer::sameTurn);
  }
}
