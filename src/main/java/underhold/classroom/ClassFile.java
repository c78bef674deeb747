package underhold.classroom;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import underhold.review.file.RecordFile;
import underhold.site.PlainText;

/**
 * What a class file holds.
 *
 * @param underhold its form
 * @param name the name of the class
 * @param cases its cases, each with the stage that is open
 * @param students their names
 * @param asked facts asked for before their stage
 * @param answers answers zone by zone, in the order given; of several by one student for one zone
 *     at one stage the last counts, and the others stay as a record
 * @param schemes answers for all zones together, likewise
 * @param given answers to questions, likewise
 * @param marks the marks of the last marking
 */
public record ClassFile(
    String underhold,
    String name,
    List<CaseRef> cases,
    List<String> students,
    List<Asked> asked,
    List<Answer> answers,
    List<SchemeAnswer> schemes,
    List<Given> given,
    List<Mark> marks) {
  /** The end of the name of every such file. */
  public static final String ENDING = ".class.json";

  /** What stands at the beginning of the file. */
  public static final String FORM = "class/2";

  /** How such files are read and written. */
  public static final RecordFile<ClassFile> FILES =
      new RecordFile<>(ClassFile.class, FORM, "a class");

  public ClassFile {
    cases = List.copyOf(cases);
    students = List.copyOf(students);
    asked = List.copyOf(asked);
    answers = List.copyOf(answers);
    schemes = List.copyOf(schemes);
    given = List.copyOf(given);
    marks = List.copyOf(marks);
    mustDiffer("case", cases.stream().map(CaseRef::name).toList());
    mustDiffer("student", students);
    if (cases.isEmpty() || students.isEmpty()) {
      throw new IllegalArgumentException("a class has at least one case and one student");
    }
    for (String student : students) {
      Optional<String> wrong = PlainText.whyNoName(student);
      if (wrong.isPresent()) {
        throw new IllegalArgumentException(
            PlainText.quoted(student) + " cannot be the name of a student: " + wrong.get());
      }
    }
    List<String> here = students;
    Set<String> known = Set.copyOf(cases.stream().map(CaseRef::name).toList());
    answers.forEach(one -> mustBeHere(one.student(), one.of(), here, known));
    schemes.forEach(one -> mustBeHere(one.student(), one.of(), here, known));
    asked.forEach(one -> mustBeHere(one.student(), one.of(), here, known));
    given.forEach(one -> mustBeHere(one.student(), one.of(), here, known));
    marks.forEach(one -> mustBeHere(one.student(), one.of(), here, known));
  }

  private static void mustDiffer(String what, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new IllegalArgumentException(
            "two of the class have the "
                + what
                + " name "
                + PlainText.quoted(name)
                + "; tell them apart by another word or a number");
      }
    }
  }

  private static void mustBeHere(
      String student, String of, List<String> students, Set<String> cases) {
    if (!students.contains(student)) {
      throw new IllegalArgumentException(
          "there is no student " + PlainText.quoted(student) + " in the class");
    }
    if (!cases.contains(of)) {
      throw new IllegalArgumentException("there is no case " + PlainText.quoted(of) + " in it");
    }
  }

  /** The case of that name. */
  public Optional<CaseRef> find(String wanted) {
    return cases.stream().filter(one -> one.name().equalsIgnoreCase(wanted)).findFirst();
  }

  /** The student of that name. */
  public Optional<String> student(String wanted) {
    return students.stream().filter(one -> one.equalsIgnoreCase(wanted.strip())).findFirst();
  }

  /** The facts that a student asked for. */
  public Set<FactPlace> askedBy(String student, String of) {
    return own(student, of).map(Asked::place).collect(Collectors.toUnmodifiableSet());
  }

  /** The facts that a student had asked for when the first so many were told. */
  public Set<FactPlace> askedBefore(String student, String of, int count) {
    return own(student, of).limit(count).map(Asked::place).collect(Collectors.toUnmodifiableSet());
  }

  private Stream<Asked> own(String student, String of) {
    return asked.stream().filter(one -> one.student().equals(student) && one.of().equals(of));
  }

  /** The working days that a student's own questions cost. */
  public double daysAsked(String student, String of) {
    return asked.stream()
        .filter(one -> one.student().equals(student) && one.of().equals(of))
        .mapToDouble(Asked::days)
        .sum();
  }

  /** The answers that count: of one turn the last. */
  public List<Answer> counting() {
    return last(answers, Answer::sameTurn);
  }

  /** The answers for all zones together that count. */
  public List<SchemeAnswer> countingSchemes() {
    return last(schemes, SchemeAnswer::sameTurn);
  }

  /** The answers to questions that count. */
  public List<Given> countingGiven() {
    return last(given, Given::sameQuestion);
  }

  private static <T> List<T> last(List<T> all, BiPredicate<T, T> same) {
    return IntStream.range(0, all.size())
        .filter(
            i ->
                all.subList(i + 1, all.size()).stream()
                    .noneMatch(one -> same.test(all.get(i), one)))
        .mapToObj(all::get)
        .toList();
  }

  /** The same class with another stage open. */
  ClassFile opened(CaseRef other) {
    List<CaseRef> refs =
        cases.stream().map(one -> one.name().equals(other.name()) ? other : one).toList();
    return new ClassFile(underhold, name, refs, students, asked, answers, schemes, given, marks);
  }

  /** The same class with a fact asked for. */
  ClassFile with(Asked one) {
    return new ClassFile(
        underhold, name, cases, students, added(asked, one), answers, schemes, given, marks);
  }

  /** The same class with an answer after those that are there. */
  ClassFile with(Answer one) {
    return new ClassFile(
        underhold, name, cases, students, asked, added(answers, one), schemes, given, marks);
  }

  /** The same class with an answer for all zones together. */
  ClassFile with(SchemeAnswer one) {
    return new ClassFile(
        underhold, name, cases, students, asked, answers, added(schemes, one), given, marks);
  }

  /** The same class with an answer to a question. */
  ClassFile with(Given one) {
    return new ClassFile(
        underhold, name, cases, students, asked, answers, schemes, added(given, one), marks);
  }

  /** The same class with its marks. */
  ClassFile marked(List<Mark> all) {
    return new ClassFile(underhold, name, cases, students, asked, answers, schemes, given, all);
  }

  private static <T> List<T> added(List<T> all, T one) {
    List<T> more = new ArrayList<>(all);
    more.add(one);
    return more;
  }
}
