package underhold.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.NearestName;
import underhold.site.PlainText;
import underhold.site.Zone;

/** Looks up what a request to a class names and collects what is wrong with it. */
final class ClassRequest {
  private static final int MOST_LISTED = 20;

  private final ClassFile file;
  private final List<String> problems = new ArrayList<>();

  ClassRequest(ClassFile file) {
    this.file = file;
  }

  boolean wrong() {
    return !problems.isEmpty();
  }

  void problem(String text) {
    problems.add(text);
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
        "--zone", typed, study.zone(typed), study.full().zones().stream().map(Zone::name).toList());
  }

  Optional<FactDefinition> fact(String option, String typed) {
    return fact(option, typed, List.of(FactDictionary.standard()));
  }

  /** A fact of a zone or of two. */
  void factOfAny(String option, String typed) {
    fact(option, typed, List.of(FactDictionary.pairs(), FactDictionary.standard()));
  }

  private Optional<FactDefinition> fact(
      String option, String typed, List<FactDictionary> dictionaries) {
    List<FactDefinition> all =
        dictionaries.stream()
            .flatMap(dictionary -> dictionary.all().stream())
            .filter(one -> !one.derived())
            .toList();
    List<String> names = all.stream().map(FactDefinition::name).toList();
    Optional<FactDefinition> fact =
        all.stream().filter(one -> one.name().equals(typed.strip())).findFirst();
    return found(option, typed, fact, names);
  }

  void method(String option, String typed) {
    List<String> ids = new ArrayList<>(SupportOption.ids());
    ids.add(Expected.NO_METHOD);
    mustBeOne(option, typed, ids);
  }

  void word(String option, String typed, List<Named> allowed) {
    mustBeOne(option, typed, allowed.stream().map(Named::word).toList());
  }

  void mustBeOne(String option, String typed, List<String> allowed) {
    found(option, typed, Optional.of(typed).filter(allowed::contains), allowed);
  }

  /** An answer that was marked stays; a new stage brings a new one. */
  void notMarked(String student, CaseRef ref, String about) {
    boolean marked =
        file.marks().stream()
            .anyMatch(
                mark ->
                    mark.student().equals(student)
                        && mark.of().equals(ref.name())
                        && mark.stage() == ref.open()
                        && mark.about().equals(about));
    if (marked) {
      problems.add(
          "The answer of "
              + student
              + " for "
              + about
              + " at this stage is marked already; another can be given once the next stage is"
              + " open.");
    }
  }

  private <T> Optional<T> found(
      String option, String typed, Optional<T> what, List<String> allowed) {
    if (what.isEmpty()) {
      String near = NearestName.question(typed, allowed);
      problems.add(
          typed.isBlank()
              ? option + " is needed: " + listed(option, allowed) + "."
              : option
                  + " is "
                  + PlainText.quoted(typed)
                  + "; it must be "
                  + listed(option, allowed)
                  + (near.isEmpty() ? "." : "; " + near));
    }
    return what;
  }

  private static String listed(String option, List<String> allowed) {
    if (allowed.size() <= MOST_LISTED) {
      return "one of " + String.join(", ", allowed);
    }
    boolean words = option.equals("--danger") || option.equals("--condition");
    return words ? "a word that class rubric lists" : "a name that facts lists";
  }
}
