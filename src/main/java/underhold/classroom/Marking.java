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

  /** The class with all its marks. */
  public ClassFile mark(ClassFile file) {
    List<Mark> marks = new ArrayList<>();
    for (Answer answer : file.answers()) {
      marks.add(mark(file, answer));
    }
    for (Given given : file.given()) {
      marks.add(mark(file, given));
    }
    return file.marked(marks);
  }

  private Mark mark(ClassFile file, Answer answer) {
    CaseStudy study = study(answer.of());
    Set<FactPlace> asked = file.askedBefore(answer);
    Key key = keys.of(study, answer.stage(), asked, answer.zone());
    Optional<Answer> before =
        file.answers().stream()
            .filter(other -> other.sameTask(answer) && other.stage() < answer.stage())
            .max(Comparator.comparingInt(Answer::stage));
    Set<String> fresh = before.map(last -> fresh(file, study, last, answer)).orElse(Set.of());
    return AnswerMarker.mark(answer, key, before, fresh);
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
    Set<FactPlace> known = new HashSet<>(file.askedBefore(answer));
    study.stages().subList(0, answer.stage() + 1).forEach(one -> known.addAll(one.places()));
    return known;
  }

  private Mark mark(ClassFile file, Given given) {
    CaseStudy study = study(given.of());
    Question question = study.question(given.question()).orElseThrow();
    MarkLine line = QuestionMarker.mark(question, given.gives(), questions.of(study, question));
    int stage = study.stage(question.stage()).orElseThrow();
    return new Mark(
        given.student(), given.of(), stage, question.id(), List.of(line), List.of(line.why()));
  }

  private CaseStudy study(String name) {
    CaseStudy found = studies.get(name);
    if (found == null) {
      throw new IllegalArgumentException("the case " + name + " was not read");
    }
    return found;
  }
}
