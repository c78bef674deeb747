package underhold.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.NearestName;
import underhold.site.PlainText;
import underhold.site.Zone;

/**
 * Does what is asked of a class: opens stages, tells facts, takes answers. Whatever is wrong with a
 * request is told at once, and the class stays as it was.
 */
public final class ClassDesk {
  private final ClassFile file;
  private final Map<String, CaseStudy> studies;
  private final RulePack pack;

  /**
   * A desk.
   *
   * @param studies the cases of the class, by name
   * @param pack the rules, for the words of the dangers
   */
  public ClassDesk(ClassFile file, Map<String, CaseStudy> studies, RulePack pack) {
    this.file = file;
    this.studies = Map.copyOf(studies);
    this.pack = pack;
  }

  /** A class of which nothing is done yet. */
  public static Doing start(String name, List<CaseRef> cases, List<String> students) {
    try {
      ClassFile file =
          new ClassFile(
              ClassFile.FORM, name, cases, students, List.of(), List.of(), List.of(), List.of());
      return new Doing.Done(file, List.of());
    } catch (IllegalArgumentException e) {
      return new Doing.Refused(List.of(String.valueOf(e.getMessage())));
    }
  }

  /** Opens the next stage of a case for everybody. */
  public Doing reveal(String of) {
    Request request = new Request();
    Optional<CaseRef> ref = request.caseOf(of);
    if (ref.isEmpty()) {
      return request.refused();
    }
    CaseStudy study = study(ref.get());
    int next = ref.get().open() + 1;
    if (next >= study.stages().size()) {
      request.problems.add(ref.get().name() + " has no further stage: all is known.");
      return request.refused();
    }
    CaseStage stage = study.stages().get(next);
    return new Doing.Done(
        file.opened(ref.get().next()),
        List.of(
            stage.title() + " (" + Days.of(stage.days()) + "): " + stage.tells(),
            "Known now: "
                + (stage.ground() ? "the ground; " : "")
                + String.join(", ", stage.places().stream().map(FactPlace::toString).toList())
                + "."));
  }

  /** Tells a student one fact before its stage, at what finding it out costs. */
  public Doing ask(String student, String of, String zone, String fact) {
    Request request = new Request();
    Optional<String> who = request.student(student);
    Optional<CaseRef> ref = request.caseOf(of);
    Optional<FactDefinition> definition = request.fact("FACT", fact);
    Optional<Zone> where = ref.flatMap(found -> request.zone(study(found), zone));
    if (request.wrong() || who.isEmpty() || ref.isEmpty() || where.isEmpty()) {
      return request.refused();
    }
    CaseStudy study = study(ref.get());
    String label = definition.map(FactDefinition::label).orElse(fact);
    Optional<FactPlace> place = study.place(where.get().name(), fact);
    int open = ref.get().open();
    Set<FactPlace> known = file.askedBy(who.get(), ref.get().name());
    if (place.isEmpty()) {
      request.problems.add(
          Words.first(label) + ": nobody on this job can tell it. It costs no time to have asked.");
    } else if (known.contains(place.get()) || study.stageOf(place.get()) <= open) {
      request.problems.add(Words.first(label) + " is known already; class sheet shows it.");
    } else if (study.stages().get(study.stageOf(place.get())).surprise()) {
      request.problems.add(
          Words.first(label) + ": nothing more of it can be found out before the work.");
    }
    if (request.wrong()) {
      return request.refused();
    }
    return asked(study, ref.get(), who.get(), place.orElseThrow(), known);
  }

  private Doing asked(
      CaseStudy study, CaseRef ref, String who, FactPlace place, Set<FactPlace> known) {
    int at = study.stageOf(place);
    CaseStage stage = study.stages().get(at);
    boolean paid = known.stream().anyMatch(one -> study.stageOf(one) == at);
    double days = paid ? 0 : stage.days();
    Asked one = new Asked(who, ref.name(), place.zone(), place.fact(), ref.open(), days);
    ClassFile now = file.with(one);
    Set<FactPlace> then = now.askedBy(who, ref.name());
    boolean sound =
        IntStream.range(ref.open(), study.stages().size())
            .allMatch(later -> study.consistent(later, then));
    if (!sound) {
      return new Doing.Refused(
          List.of(
              place
                  + " makes sense only together with other facts of the same stage: ask for those"
                  + " first, or wait for "
                  + stage.title()
                  + "."));
    }
    return new Doing.Done(
        now,
        List.of(
            place + ": " + StudentSheet.value(study, place) + ".",
            "It is found by: "
                + stage.title()
                + ", "
                + (paid ? "which you have paid for already." : Days.of(days) + ".")));
  }

  /** Takes what a student would do in a zone. */
  public Doing answer(
      String student,
      String of,
      String zone,
      String method,
      List<String> because,
      List<String> check,
      List<String> danger) {
    Request request = new Request();
    Optional<String> who = request.student(student);
    Optional<CaseRef> ref = request.caseOf(of);
    Optional<Zone> where = ref.flatMap(found -> request.zone(study(found), zone));
    request.method(method);
    because.forEach(fact -> request.fact("--because", fact));
    check.forEach(fact -> request.fact("--check", fact));
    List<String> dangers = DangerWords.of(pack);
    danger.forEach(word -> request.mustBeOne("--danger", word, dangers));
    ref.ifPresent(found -> request.notMarked(who.orElse(""), found, where));
    if (request.wrong() || who.isEmpty() || ref.isEmpty() || where.isEmpty()) {
      return request.refused();
    }
    Answer one =
        new Answer(
            who.get(),
            ref.get().name(),
            ref.get().open(),
            file.askedBy(who.get(), ref.get().name()).size(),
            where.get().name(),
            method,
            because,
            check,
            danger);
    return new Doing.Done(
        file.with(one),
        List.of(
            "Written for "
                + who.get()
                + ": "
                + one.zone()
                + ", "
                + method
                + ", at the stage "
                + study(ref.get()).stages().get(one.stage()).title()
                + "."));
  }

  /** Takes a student's answer to a question of size or sequence. */
  public Doing give(String student, String of, String question, String gives) {
    Request request = new Request();
    Optional<String> who = request.student(student);
    Optional<CaseRef> ref = request.caseOf(of);
    if (request.wrong() || who.isEmpty() || ref.isEmpty()) {
      return request.refused();
    }
    CaseStudy study = study(ref.get());
    List<String> asked =
        StudentSheet.questions(study, file, ref.get(), who.get()).stream()
            .map(Question::id)
            .toList();
    if (asked.isEmpty()) {
      return new Doing.Refused(
          List.of(
              "No question of "
                  + ref.get().name()
                  + " is open to "
                  + who.get()
                  + ": questions come once the choice of their stage is marked."));
    }
    request.mustBeOne("--question", question, asked);
    if (gives.isBlank() || gives.length() > PLAIN_LENGTH) {
      request.problems.add("An answer has 1 to " + PLAIN_LENGTH + " signs.");
    }
    boolean marked =
        file.marks().stream()
            .anyMatch(
                mark ->
                    mark.student().equals(who.get())
                        && mark.of().equals(ref.get().name())
                        && mark.about().equals(question));
    if (marked) {
      request.problems.add("The question " + question + " is marked already.");
    }
    if (!request.wrong()) {
      QuestionMarker.unreadable(study.question(question).orElseThrow(), gives)
          .ifPresent(request.problems::add);
    }
    return request.wrong()
        ? request.refused()
        : new Doing.Done(
            file.with(new Given(who.get(), ref.get().name(), question, gives)),
            List.of("Written for " + who.get() + ": " + question + ", " + gives + "."));
  }

  private static final int PLAIN_LENGTH = 200;

  private CaseStudy study(CaseRef ref) {
    CaseStudy found = studies.get(ref.name());
    if (found == null) {
      throw new IllegalArgumentException("the case " + ref.name() + " was not read");
    }
    return found;
  }

  /** Looks up what a request names and collects what is wrong with it. */
  private final class Request {
    private final List<String> problems = new ArrayList<>();

    boolean wrong() {
      return !problems.isEmpty();
    }

    Doing refused() {
      return new Doing.Refused(problems);
    }

    Optional<String> student(String typed) {
      return found("--by", typed, file.student(typed), file.students());
    }

    Optional<CaseRef> caseOf(String typed) {
      Optional<CaseRef> only =
          typed.isBlank() && file.cases().size() == 1
              ? Optional.of(file.cases().get(0))
              : file.find(typed);
      return found("--case", typed, only, file.cases().stream().map(CaseRef::name).toList());
    }

    Optional<Zone> zone(CaseStudy study, String typed) {
      return found(
          "--zone",
          typed,
          study.zone(typed),
          study.full().zones().stream().map(Zone::name).toList());
    }

    Optional<FactDefinition> fact(String option, String typed) {
      List<String> names =
          FactDictionary.standard().all().stream()
              .filter(one -> !one.derived())
              .map(FactDefinition::name)
              .toList();
      mustBeOne(option, typed, names);
      return names.contains(typed)
          ? Optional.of(FactDictionary.standard().require(typed))
          : Optional.empty();
    }

    void method(String typed) {
      List<String> ids = new ArrayList<>(SupportOption.ids());
      ids.add(Expected.NO_METHOD);
      mustBeOne("--method", typed, ids);
    }

    void mustBeOne(String option, String typed, List<String> allowed) {
      found(option, typed, Optional.of(typed).filter(allowed::contains), allowed);
    }

    /** An answer that was marked stays; a new stage brings a new one. */
    void notMarked(String student, CaseRef ref, Optional<Zone> zone) {
      boolean marked =
          file.marks().stream()
              .anyMatch(
                  mark ->
                      mark.student().equals(student)
                          && mark.of().equals(ref.name())
                          && mark.stage() == ref.open()
                          && zone.map(Zone::name).filter(mark.about()::equals).isPresent());
      if (marked) {
        problems.add(
            "The answer of this stage is marked already; another can be given once the next stage is"
                + " open.");
      }
    }

    private <T> Optional<T> found(
        String option, String typed, Optional<T> what, List<String> allowed) {
      if (what.isEmpty()) {
        String near = NearestName.question(typed, allowed);
        problems.add(
            option
                + " is "
                + PlainText.quoted(typed)
                + "; it must be "
                + (allowed.size() > MOST_LISTED
                    ? "a name that facts lists"
                    : "one of " + String.join(", ", allowed))
                + (near.isEmpty() ? "." : "; " + near));
      }
      return what;
    }
  }

  private static final int MOST_LISTED = 30;
}
