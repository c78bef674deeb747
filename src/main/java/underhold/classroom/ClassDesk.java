package underhold.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import underhold.advice.RulePack;
import underhold.site.FactDefinition;
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
              ClassFile.FORM,
              name,
              cases,
              students,
              List.of(),
              List.of(),
              List.of(),
              List.of(),
              List.of());
      return new Doing.Done(file, List.of());
    } catch (IllegalArgumentException e) {
      return new Doing.Refused(List.of(Words.first(String.valueOf(e.getMessage())) + "."));
    }
  }

  /** Opens the next stage of a case for everybody. */
  public Doing reveal(String of) {
    ClassRequest request = new ClassRequest(file);
    Optional<CaseRef> ref = request.caseOf(of);
    if (ref.isEmpty()) {
      return request.refused();
    }
    CaseStudy study = study(ref.get());
    int next = ref.get().open() + 1;
    if (next >= study.stages().size()) {
      request.problem(ref.get().name() + " has no further stage: all is known.");
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
                + ". class sheet shows the values."));
  }

  /** Tells a student one fact before its stage, at what finding it out costs. */
  public Doing ask(String student, String of, String zone, String fact) {
    ClassRequest request = new ClassRequest(file);
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
    if (place.isPresent() && isKnown(study, ref.get(), known, place.get())) {
      request.problem(Words.first(label) + " is known already; class sheet shows it.");
    } else if (place.isEmpty() || study.stages().get(study.stageOf(place.get())).surprise()) {
      // one sentence for both: a surprise must not be told from what nobody ever finds out
      request.problem(
          Words.first(label)
              + ": nobody on this job can tell it now. It costs no time to have asked.");
    }
    if (request.wrong()) {
      return request.refused();
    }
    return asked(study, ref.get(), who.get(), place.orElseThrow(), known);
  }

  /** Whether the sheet shows it: told, asked for, or taken for true as far as anybody knows. */
  private static boolean isKnown(
      CaseStudy study, CaseRef ref, Set<FactPlace> asked, FactPlace place) {
    boolean surprise = study.stages().get(study.stageOf(place)).surprise();
    boolean believed =
        study.stages().subList(0, ref.open() + 1).stream()
            .flatMap(stage -> stage.believed().stream())
            .anyMatch(one -> one.place().equals(place));
    return asked.contains(place) || study.stageOf(place) <= ref.open() || (surprise && believed);
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
      List<String> condition,
      List<String> danger) {
    ClassRequest request = new ClassRequest(file);
    Optional<String> who = request.student(student);
    Optional<CaseRef> ref = request.caseOf(of);
    Optional<Zone> where = ref.flatMap(found -> request.zone(study(found), zone));
    request.method("--method", method);
    because.forEach(fact -> request.fact("--because", fact));
    check.forEach(fact -> request.fact("--check", fact));
    condition.forEach(word -> request.word("--condition", word, ConditionWords.of(pack)));
    danger.forEach(word -> request.word("--danger", word, DangerWords.of(pack)));
    where.ifPresent(
        found -> ref.ifPresent(one -> request.notMarked(who.orElse(""), one, found.name())));
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
            condition,
            danger);
    List<Answer> earlier = file.answers().stream().filter(one::sameTurn).toList();
    String said =
        who.get() + ": " + one.zone() + ", " + method + ", at the stage " + title(ref.get());
    if (!earlier.isEmpty() && earlier.get(earlier.size() - 1).equals(one)) {
      return new Doing.Done(file, List.of("Written already for " + said + "."));
    }
    return new Doing.Done(
        file.with(one), written(said, earlier.stream().map(Answer::method).toList()));
  }

  private String title(CaseRef ref) {
    return study(ref).stages().get(ref.open()).title();
  }

  /** What is written, and that it takes the place of what was answered before. */
  private static List<String> written(String said, List<String> earlier) {
    List<String> says = new ArrayList<>(List.of("Written for " + said + "."));
    if (!earlier.isEmpty()) {
      says.add(
          "It was answered before at this stage ("
              + String.join(", ", earlier)
              + "): the last answer counts, and what was answered before stays in the record.");
    }
    return says;
  }

  /**
   * Takes how a student would marry the methods of all zones.
   *
   * @param methods the method of each zone, by its name
   */
  public Doing scheme(
      String student,
      String of,
      Map<String, String> methods,
      List<String> because,
      List<SchemeAnswer.Wanted> order) {
    ClassRequest request = new ClassRequest(file);
    Optional<String> who = request.student(student);
    Optional<CaseRef> ref = request.caseOf(of);
    because.forEach(fact -> request.factOfAny("--because", fact));
    Map<String, String> named = new LinkedHashMap<>();
    ref.ifPresent(found -> named.putAll(methods(request, study(found), methods)));
    ref.ifPresent(
        found -> order.forEach(one -> zones(study(found), one).forEach(request::problem)));
    ref.ifPresent(found -> request.notMarked(who.orElse(""), found, SchemeAnswer.ABOUT));
    if (request.wrong() || who.isEmpty() || ref.isEmpty()) {
      return request.refused();
    }
    SchemeAnswer one =
        new SchemeAnswer(
            who.get(),
            ref.get().name(),
            ref.get().open(),
            file.askedBy(who.get(), ref.get().name()).size(),
            named,
            because,
            order.stream().map(typed -> exact(study(ref.get()), typed)).toList());
    List<SchemeAnswer> earlier = file.schemes().stream().filter(one::sameTurn).toList();
    String said =
        who.get()
            + ": "
            + SchemeAnswer.ABOUT
            + ", "
            + joined(one)
            + ", at the stage "
            + title(ref.get());
    if (!earlier.isEmpty() && earlier.get(earlier.size() - 1).equals(one)) {
      return new Doing.Done(file, List.of("Written already for " + said + "."));
    }
    return new Doing.Done(
        file.with(one), written(said, earlier.stream().map(ClassDesk::joined).toList()));
  }

  private static String joined(SchemeAnswer one) {
    return String.join(
        ", ",
        one.methods().entrySet().stream()
            .map(zone -> zone.getKey() + " " + zone.getValue())
            .toList());
  }

  /** The methods under the zones' own names, in the order of the site. */
  private static Map<String, String> methods(
      ClassRequest request, CaseStudy study, Map<String, String> typed) {
    Map<String, String> found = new LinkedHashMap<>();
    List<Zone> zones = study.full().zones();
    if (zones.size() < 2) {
      request.problem(study.name() + " has one zone: answer it with --method.");
    }
    typed.forEach(
        (name, method) -> {
          request.zone(study, name).ifPresent(zone -> found.put(zone.name(), method));
          request.method("the method of " + PlainText.shown(name), method);
        });
    Map<String, String> ordered = new LinkedHashMap<>();
    for (Zone zone : zones) {
      String method = found.get(zone.name());
      if (method == null) {
        request.problem("Of " + zone.name() + " no method is named: say none where none leads.");
      } else {
        ordered.put(zone.name(), method);
      }
    }
    return ordered;
  }

  private static List<String> zones(CaseStudy study, SchemeAnswer.Wanted order) {
    List<String> names = study.full().zones().stream().map(Zone::name).toList();
    return Stream.of(order.first(), order.second())
        .filter(zone -> study.zone(zone).isEmpty())
        .map(
            zone ->
                "--order names the zone "
                    + PlainText.quoted(zone)
                    + "; there are "
                    + String.join(", ", names)
                    + ".")
        .toList();
  }

  private static SchemeAnswer.Wanted exact(CaseStudy study, SchemeAnswer.Wanted typed) {
    return new SchemeAnswer.Wanted(
        study.zone(typed.first()).orElseThrow().name(),
        typed.order(),
        study.zone(typed.second()).orElseThrow().name());
  }

  /** Takes a student's answer to a question of size or sequence. */
  public Doing give(String student, String of, String question, String gives) {
    ClassRequest request = new ClassRequest(file);
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
      request.problem("An answer has 1 to " + PLAIN_LENGTH + " signs.");
    }
    boolean marked =
        file.marks().stream()
            .anyMatch(
                mark ->
                    mark.student().equals(who.get())
                        && mark.of().equals(ref.get().name())
                        && mark.about().equals(question));
    if (marked) {
      request.problem("The question " + question + " is marked already.");
    }
    if (!request.wrong()) {
      QuestionMarker.unreadable(study.question(question).orElseThrow(), gives)
          .ifPresent(request::problem);
    }
    if (request.wrong()) {
      return request.refused();
    }
    Given one = new Given(who.get(), ref.get().name(), question, gives);
    List<Given> earlier = file.given().stream().filter(one::sameQuestion).toList();
    String said = who.get() + ": " + question + ", " + gives;
    return !earlier.isEmpty() && earlier.get(earlier.size() - 1).equals(one)
        ? new Doing.Done(file, List.of("Written already for " + said + "."))
        : new Doing.Done(
            file.with(one), written(said, earlier.stream().map(Given::gives).toList()));
  }

  private static final int PLAIN_LENGTH = 200;

  private CaseStudy study(CaseRef ref) {
    CaseStudy found = studies.get(ref.name());
    if (found == null) {
      throw new IllegalArgumentException("the case " + ref.name() + " was not read");
    }
    return found;
  }
}
