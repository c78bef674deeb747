package underhold.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.site.FactDictionary;
import underhold.site.PlainText;

/** Holds a class file, which a hand may have changed, to its cases. */
public final class ClassChecks {
  private final ClassFile file;
  private final Map<String, CaseStudy> studies;
  private final List<String> problems = new ArrayList<>();

  private ClassChecks(ClassFile file, Map<String, CaseStudy> studies) {
    this.file = file;
    this.studies = studies;
  }

  /**
   * All that the file says of its cases and that is not so, each with its place.
   *
   * @param studies its cases, by name; those that could not be read are passed over
   */
  public static List<String> problems(ClassFile file, Map<String, CaseStudy> studies) {
    ClassChecks checks = new ClassChecks(file, studies);
    checks.cases();
    if (checks.problems.isEmpty()) {
      checks.asked();
      checks.answers();
      checks.schemes();
      checks.given();
      checks.marks();
    }
    return List.copyOf(checks.problems);
  }

  private void cases() {
    for (int i = 0; i < file.cases().size(); i++) {
      CaseRef ref = file.cases().get(i);
      CaseStudy study = studies.get(ref.name());
      if (study != null && ref.open() >= study.stages().size()) {
        add(
            "cases[" + i + "].open",
            ref.name()
                + " has "
                + study.stages().size()
                + " stages, and "
                + (ref.open() + 1)
                + " are said to be open");
      }
    }
  }

  private void asked() {
    for (int i = 0; i < file.asked().size(); i++) {
      Asked one = file.asked().get(i);
      String at = "asked[" + i + "]";
      stage(at, one.of(), one.stage());
      CaseStudy study = studies.get(one.of());
      if (study != null
          && study.place(one.zone(), one.fact()).filter(one.place()::equals).isEmpty()) {
        add(at, "the case has no fact " + PlainText.shown(one.place().toString()));
      }
      if (!(one.days() >= 0)) {
        add(at + ".days", "it cannot be " + one.days());
      }
    }
  }

  private void answers() {
    for (int i = 0; i < file.answers().size(); i++) {
      Answer one = file.answers().get(i);
      String at = "answers[" + i + "]";
      stage(at, one.of(), one.stage());
      zone(at, one.of(), one.zone());
      asked(at, one.student(), one.of(), one.asked());
      Stream.concat(one.because().stream(), one.check().stream())
          .filter(fact -> FactDictionary.standard().find(fact).isEmpty())
          .forEach(fact -> add(at, "there is no fact " + PlainText.quoted(fact)));
    }
  }

  private void schemes() {
    for (int i = 0; i < file.schemes().size(); i++) {
      SchemeAnswer one = file.schemes().get(i);
      String at = "schemes[" + i + "]";
      stage(at, one.of(), one.stage());
      asked(at, one.student(), one.of(), one.asked());
      Stream.concat(
              one.methods().keySet().stream(),
              one.order().stream().flatMap(order -> Stream.of(order.first(), order.second())))
          .distinct()
          .forEach(zone -> zone(at, one.of(), zone));
      one.because().stream()
          .filter(fact -> FactDictionary.pairs().find(fact).isEmpty())
          .filter(fact -> FactDictionary.standard().find(fact).isEmpty())
          .forEach(fact -> add(at, "there is no fact " + PlainText.quoted(fact)));
    }
  }

  private void asked(String at, String student, String of, int said) {
    int asked = file.askedBy(student, of).size();
    if (said < 0 || said > asked) {
      add(at + ".asked", "it is " + said + "; the student asked for " + asked);
    }
  }

  private void given() {
    for (int i = 0; i < file.given().size(); i++) {
      Given one = file.given().get(i);
      CaseStudy study = studies.get(one.of());
      if (study != null && study.question(one.question()).isEmpty()) {
        add("given[" + i + "]", "there is no question " + PlainText.quoted(one.question()));
      }
    }
  }

  private void marks() {
    for (int i = 0; i < file.marks().size(); i++) {
      Mark one = file.marks().get(i);
      String at = "marks[" + i + "]";
      stage(at, one.of(), one.stage());
      CaseStudy study = studies.get(one.of());
      if (study != null
          && study.question(one.about()).isEmpty()
          && !one.about().equals(SchemeAnswer.ABOUT)) {
        zone(at, one.of(), one.about());
      }
    }
  }

  private void stage(String at, String of, int stage) {
    int open = file.find(of).map(CaseRef::open).orElse(0);
    if (stage < 0 || stage > open) {
      add(
          at + ".stage",
          "it is " + stage + "; of " + of + " the stages 0 to " + open + " are open");
    }
  }

  private void zone(String at, String of, String zone) {
    Optional<CaseStudy> study = Optional.ofNullable(studies.get(of));
    boolean wrong =
        study.isPresent()
            && study.get().full().zones().stream().noneMatch(one -> one.name().equals(zone));
    if (wrong) {
      add(at, "the case has no zone " + PlainText.quoted(zone));
    }
  }

  private void add(String place, String message) {
    problems.add(place + ": " + message);
  }
}
