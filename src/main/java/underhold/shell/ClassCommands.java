package underhold.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import underhold.classroom.AnswerFile;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassDesk;
import underhold.classroom.ClassFile;
import underhold.classroom.DangerWords;
import underhold.classroom.Doing;
import underhold.classroom.Mark;
import underhold.classroom.Marking;
import underhold.classroom.QuestionDesk;
import underhold.classroom.StudentSheet;
import underhold.report.ClassJson;
import underhold.report.ClassMarksText;
import underhold.report.ClassSheetText;
import underhold.report.ClassTable;
import underhold.report.ClassText;
import underhold.report.Json;
import underhold.report.Look;
import underhold.review.file.FileReading;
import underhold.site.SavedState;

/** {@code class ...}: cases for a class, opened stage by stage, answered and marked. */
final class ClassCommands {
  private final Session session;

  private ClassCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    ClassCommands commands = new ClassCommands(session);
    Parameter file = Parameter.needed("FILE.class.json", ClassFiles::here);
    CommandOption of = ClassOptions.CASE_OPTION;
    CommandOption by = ClassOptions.STUDENT_OPTION;
    return List.of(
        command(
            "class list",
            "the cases of a folder, level by level",
            List.of(Parameter.optional("DIR", List::of)),
            List.of(ClassOptions.KEY_OPTION),
            commands::list),
        command(
            "class start",
            "begins a class with the cases of a folder, or with one case",
            List.of(file, Parameter.needed("CASES", List::of)),
            List.of(ClassOptions.STUDENTS_OPTION, Options.NAME_OPTION),
            commands::start),
        command(
            "class reveal",
            "opens the next stage of a case for everybody",
            List.of(file),
            List.of(of),
            call -> commands.done(call, desk -> desk.reveal(option(call, ClassOptions.CASE)))),
        command(
            "class ask",
            "tells a student one fact before its stage, and what it costs",
            List.of(file, Parameter.needed("FACT", List::of)),
            List.of(of, by, Options.ZONE_OPTION),
            call ->
                commands.done(
                    call,
                    desk ->
                        desk.ask(
                            student(call),
                            option(call, ClassOptions.CASE),
                            option(call, Options.ZONE),
                            call.needed(1)))),
        command(
            "class answer",
            "takes a student's answer for a zone or to a question, or files of answers",
            List.of(file, new Parameter("FILE.answers.json", false, true, List::of)),
            ClassOptions.ANSWER,
            commands::answer),
        command(
            "class mark",
            "marks all answers, with reasons, and keeps the marks",
            List.of(file),
            List.of(ClassOptions.ONE_STUDENT_OPTION),
            commands::mark),
        command(
            "class show",
            "where the class stands",
            List.of(file),
            List.of(ClassOptions.KEY_OPTION),
            commands::show),
        command(
            "class sheet",
            "what a student knows of a case and is asked; nothing else",
            List.of(file),
            List.of(of, by),
            commands::sheet),
        command(
            "class scores",
            "the points",
            List.of(file),
            List.of(ClassOptions.CSV_OPTION),
            commands::scores),
        command(
            "class rubric",
            "what is given points, and the words for dangers",
            List.of(),
            List.of(),
            commands::rubric));
  }

  private static ShellCommand command(
      String name,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      ShellCommand.Action action) {
    return new ShellCommand(name, Commands.CLASSROOM, summary, parameters, options, action);
  }

  /** Something done to a class. */
  private interface Deed {
    Doing on(ClassDesk desk);
  }

  private int list(Call call) {
    List<CaseStudy> studies =
        List.copyOf(ClassFiles.cases(call.word(0).orElse(ClassFiles.USUAL_FOLDER)).values());
    boolean key = call.has(ClassOptions.KEY);
    session
        .output()
        .answer(look -> ClassText.list(studies, key, look), () -> ClassJson.list(studies, key));
    return Exit.DONE;
  }

  private int start(Call call) {
    Path path = SiteFiles.path(call.needed(0));
    if (!path.toString().endsWith(ClassFile.ENDING)) {
      throw Refusal.usage("The name of a class file ends with " + ClassFile.ENDING + ".");
    }
    List<String> students = ClassOptions.words(call, ClassOptions.STUDENTS);
    if (students.isEmpty()) {
      throw Refusal.usage("Who takes part? --students \"NAME, NAME\" is needed.");
    }
    List<CaseRef> refs = new ArrayList<>();
    for (Map.Entry<Path, CaseStudy> one : ClassFiles.cases(call.needed(1)).entrySet()) {
      refs.add(new CaseRef(one.getValue().name(), ClassFiles.seenFrom(path, one.getKey()), 0));
    }
    String name =
        call.option(Options.NAME)
            .orElse(String.valueOf(path.getFileName()).replace(ClassFile.ENDING, ""));
    Doing.Done done = ok(ClassDesk.start(name, refs, students));
    ClassFiles.write(path, done.file(), SavedState.NO_FILE);
    says(
        List.of(
            path
                + " is begun: cases "
                + String.join(", ", refs.stream().map(CaseRef::name).toList())
                + ". Of each the first stage is open."));
    return Exit.DONE;
  }

  private int done(Call call, Deed deed) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    Doing.Done done = ok(deed.on(desk(opened, opened.file())));
    ClassFiles.write(opened.path(), done.file(), opened.state());
    says(done.says());
    return Exit.DONE;
  }

  private ClassDesk desk(ClassFiles.Opened opened, ClassFile file) {
    return new ClassDesk(file, opened.studies(), session.pack());
  }

  private static Doing.Done ok(Doing doing) {
    if (doing instanceof Doing.Refused refused) {
      throw Refusal.usage(refused.problems().toArray(String[]::new));
    }
    return (Doing.Done) doing;
  }

  private void says(List<String> sentences) {
    session
        .output()
        .answer(look -> ClassText.says(sentences, look), () -> Json.object("says", sentences));
  }

  private int answer(Call call) {
    if (call.word(1).isPresent()) {
      return answers(call);
    }
    Optional<String> question = call.option(ClassOptions.QUESTION);
    if (question.isPresent() == call.option(ClassOptions.METHOD).isPresent()) {
      throw Refusal.usage("Give either --method, for a zone, or --question with --gives.");
    }
    return done(
        call,
        desk ->
            question
                .map(
                    id ->
                        desk.give(
                            student(call),
                            option(call, ClassOptions.CASE),
                            id,
                            option(call, ClassOptions.GIVES)))
                .orElseGet(
                    () ->
                        desk.answer(
                            student(call),
                            option(call, ClassOptions.CASE),
                            option(call, Options.ZONE),
                            option(call, ClassOptions.METHOD),
                            ClassOptions.words(call, ClassOptions.BECAUSE),
                            ClassOptions.words(call, ClassOptions.CHECK),
                            ClassOptions.words(call, ClassOptions.DANGER))));
  }

  /** All answers of all files, or none and everything that is wrong with them. */
  private int answers(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    ClassFile file = opened.file();
    List<String> problems = new ArrayList<>();
    List<String> says = new ArrayList<>();
    for (String typed : call.words().subList(1, call.words().size())) {
      Path path = SiteFiles.path(typed);
      SiteFiles.existing(path);
      FileReading<AnswerFile> reading = AnswerFile.FILES.read(path);
      problems.addAll(reading.messages());
      for (Deed deed : reading.content().map(ClassCommands::deeds).orElse(List.of())) {
        Doing doing = deed.on(desk(opened, file));
        if (doing instanceof Doing.Done done) {
          file = done.file();
          says.addAll(done.says());
        } else if (doing instanceof Doing.Refused refused) {
          refused.problems().stream()
              .map(one -> path + ": " + one)
              .filter(one -> !problems.contains(one))
              .forEach(problems::add);
        }
      }
    }
    if (!problems.isEmpty()) {
      throw Refusal.site(problems);
    }
    ClassFiles.write(opened.path(), file, opened.state());
    says(says);
    return Exit.DONE;
  }

  private static List<Deed> deeds(AnswerFile answers) {
    List<Deed> deeds = new ArrayList<>();
    for (AnswerFile.InZone one : answers.zones()) {
      deeds.add(
          desk ->
              desk.answer(
                  answers.student(),
                  answers.of(),
                  one.zone(),
                  one.method(),
                  one.because(),
                  one.check(),
                  one.danger()));
    }
    for (AnswerFile.ToQuestion one : answers.questions().orElse(List.of())) {
      deeds.add(desk -> desk.give(answers.student(), answers.of(), one.question(), one.gives()));
    }
    return deeds;
  }

  private int mark(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    Optional<String> wanted = call.option(Options.BY);
    wanted.ifPresent(name -> known(opened.file(), name));
    ClassFile marked = new Marking(opened.studies(), session.consultant()).mark(opened.file());
    ClassFiles.write(opened.path(), marked, opened.state());
    List<Mark> shown =
        marked.marks().stream()
            .filter(mark -> wanted.map(mark.student()::equalsIgnoreCase).orElse(true))
            .toList();
    session
        .output()
        .answer(
            look -> ClassMarksText.marks(shown, opened.studies(), look),
            () -> ClassJson.marks(shown));
    return Exit.DONE;
  }

  private int show(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    boolean key = call.has(ClassOptions.KEY);
    session
        .output()
        .answer(
            look -> ClassText.show(opened.file(), opened.studies(), key, look),
            () -> ClassJson.show(opened.file(), opened.studies(), key));
    return Exit.DONE;
  }

  private int sheet(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    String student = known(opened.file(), student(call));
    String typed = option(call, ClassOptions.CASE);
    List<CaseRef> refs =
        opened.file().cases().stream()
            .filter(ref -> typed.isBlank() || ref.name().equalsIgnoreCase(typed))
            .toList();
    if (refs.isEmpty()) {
      throw Refusal.usage(
          "--case is \""
              + typed
              + "\"; the class has "
              + String.join(", ", opened.file().cases().stream().map(CaseRef::name).toList())
              + ".");
    }
    QuestionDesk questions = new QuestionDesk(session.consultant());
    List<StudentSheet> sheets = new ArrayList<>();
    for (CaseRef ref : refs) {
      CaseStudy study = opened.studies().get(ref.name());
      if (study != null) {
        sheets.add(StudentSheet.of(study, opened.file(), ref, student, questions));
      }
    }
    session
        .output()
        .answer(look -> text(sheets, look), () -> sheets.stream().map(ClassJson::sheet).toList());
    return Exit.DONE;
  }

  private static String text(List<StudentSheet> sheets, Look look) {
    return String.join("\n", sheets.stream().map(sheet -> ClassSheetText.of(sheet, look)).toList());
  }

  private int scores(Call call) {
    ClassFile file = ClassFiles.read(call.needed(0)).file();
    boolean table = call.has(ClassOptions.CSV);
    session
        .output()
        .answer(
            look -> table ? ClassTable.of(file) : ClassMarksText.scores(file, look),
            () -> ClassJson.marks(file.marks()));
    return Exit.DONE;
  }

  private int rubric(Call call) {
    List<String> dangers = DangerWords.of(session.pack());
    session
        .output()
        .answer(look -> ClassText.rubric(dangers, look), () -> ClassJson.rubric(dangers));
    return Exit.DONE;
  }

  private static String known(ClassFile file, String typed) {
    return file.student(typed)
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--by is \""
                        + typed
                        + "\"; the students are "
                        + String.join(", ", file.students())
                        + "."));
  }

  private static String student(Call call) {
    return call.option(Options.BY)
        .orElseThrow(() -> Refusal.usage("Which student? --by STUDENT is needed."));
  }

  private static String option(Call call, String name) {
    return call.option(name).orElse("");
  }
}
