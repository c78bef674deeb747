package underhold.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.consult.Consultant;

/**
 * Marks all answers of a class. Each is held against what the rules say of the facts that its
 * student knew then; the same class and rules give the same marks.
 */
public final class Marking {
  private final Map<String, CaseStudy> studies;
  private final KeyMaker keys;
  private final QuestionDesk questions;

  /** Marks by the rules of a consultant. */
  public Marking(Map<String, CaseStudy> studies, Consultant consultant) {
    this.studies = Map.copyOf(studies);
    this.keys = new KeyMaker(consultant);
    this.questions = new QuestionDesk(consultant);
  }

  /** The class with the marks of all answers that count, student by student and case by case. */
  public ClassFile mark(ClassFile file) {
    List<Mark> marks = new ArrayList<>();
    for (Answer answer : file.counting()) {
      marks.add(mark(file, answer));
    }
    for (SchemeAnswer answer : file.countingSchemes()) {
      marks.add(mark(file, answer));
    }
    for (Given given : file.countingGiven()) {
      marks.add(mark(file, given));
    }
    marks.sort(order(file));
    return file.marked(marks);
  }

  /** By student and case as the class has them, by stage, zones before schemes and questions. */
  private Comparator<Mark> order(ClassFile file) {
    List<String> cases = file.cases().stream().map(CaseRef::name).toList();
    return Comparator.comparing((Mark mark) -> file.students().indexOf(mark.student()))
        .thenComparing(mark -> cases.indexOf(mark.of()))
        .thenComparing(Mark::stage)
        .thenComparing(mark -> study(mark.of()).turn(mark.about()));
  }

  private Mark mark(ClassFile file, Answer answer) {
    CaseStudy study = study(answer.of());
    Set<FactPlace> asked = file.askedBefore(answer.student(), answer.of(), answer.asked());
    Key key = keys.of(study, answer.stage(), asked, answer.zone());
    Optional<Answer> before =
        file.counting().stream()
            .filter(other -> other.sameTask(answer) && other.stage() < answer.stage())
            .max(Comparator.comparingInt(Answer::stage));
    Set<String> fresh = before.map(last -> fresh(file, study, last, answer)).orElse(Set.of());
    Mark mark = AnswerMarker.mark(answer, key, before, fresh);
    List<String> earlier =
        file.answers().stream().filter(answer::sameTurn).map(Answer::method).toList();
    return mark.after(earlier);
  }

  private Mark mark(ClassFile file, SchemeAnswer answer) {
    Set<FactPlace> asked = file.askedBefore(answer.student(), answer.of(), answer.asked());
    SchemeKey key = keys.together(study(answer.of()), answer.stage(), asked);
    List<String> earlier =
        file.schemes().stream()
            .filter(answer::sameTurn)
            .map(one -> String.join(" and ", one.methods().values()))
            .toList();
    return SchemeMarker.mark(answer, key).after(earlier);
  }

  /** The facts of the zone that are known, or known better, since an earlier answer. */
  private static Set<String> fresh(ClassFile file, CaseStudy study, Answer last, Answer answer) {
    Set<FactPlace> now = known(file, study, answer);
    now.removeAll(known(file, study, last));
    return now.stream()
        .filter(place -> place.zone().isEmpty() || place.zone().equals(answer.zone()))
        .map(FactPlace::fact)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Set<FactPlace> known(ClassFile file, CaseStudy study, Answer answer) {
    Set<FactPlace> known =
        new HashSet<>(file.askedBefore(answer.student(), answer.of(), answer.asked()));
    study.stages().subList(0, answer.stage() + 1).forEach(one -> known.addAll(one.places()));
    return known;
  }

  private Mark mark(ClassFile file, Given given) {
    CaseStudy study = study(given.of());
    Question question = study.question(given.question()).orElseThrow();
    MarkLine line = QuestionMarker.mark(question, given.gives(), questions.of(study, question));
    int stage = study.stage(question.stage()).orElseThrow();
    List<String> earlier =
        file.given().stream().filter(given::sameQuestion).map(Given::gives).toList();
    return new Mark(
            given.student(), given.of(), stage, question.id(), List.of(line), List.of(line.why()))
        .after(earlier);
  }

  private CaseStudy study(String name) {
    CaseStudy found = studies.get(name);
    if (found == null) {
      throw new IllegalArgumentException("the case " + name + " was not read");
    }
    return found;
  }
}
