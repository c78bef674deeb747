package underhold.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import underhold.advice.RulePack;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassDesk;
import underhold.classroom.ClassFile;
import underhold.classroom.Doing;
import underhold.classroom.Mark;
import underhold.classroom.Marking;
import underhold.report.ClassJson;
import underhold.report.ClassMarksText;
import underhold.report.ClassTable;
import underhold.report.ClassText;
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
            call ->
                ClassAnswerCommand.done(
                    session, call, desk -> desk.reveal(option(call, ClassOptions.CASE)))),
        command(
            "class ask",
            "tells a student one fact before its stage, and what it costs",
            List.of(file, Parameter.needed("FACT", List::of)),
            List.of(of, by, Options.ZONE_OPTION),
            call ->
                ClassAnswerCommand.done(
                    session,
                    call,
                    desk ->
                        desk.ask(
                            student(call),
                            option(call, ClassOptions.CASE),
                            option(call, Options.ZONE),
                            call.needed(1)))),
        ClassAnswerCommand.of(session),
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
        ClassHandoutCommands.sheet(session),
        ClassHandoutCommands.key(session),
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

  static ShellCommand command(
      String name,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      ShellCommand.Action action) {
    return new ShellCommand(name, Commands.CLASSROOM, summary, parameters, options, action);
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
    Doing.Done done = ClassAnswerCommand.ok(ClassDesk.start(name, refs, students));
    ClassFiles.write(path, done.file(), SavedState.NO_FILE);
    ClassAnswerCommand.says(
        session,
        List.of(
            path
                + (refs.size() == 1 ? " is begun: case " : " is begun: cases ")
                + String.join(", ", refs.stream().map(CaseRef::name).toList())
                + (refs.size() == 1 ? ". The" : ". Of each the")
                + " first stage is open.",
            "class sheet shows a student what is known; class answer takes answers; class reveal"
                + " opens the next stage."));
    return Exit.DONE;
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

  private int scores(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    ClassFile file = opened.file();
    boolean table = call.has(ClassOptions.CSV);
    session
        .output()
        .answer(
            look ->
                table ? ClassTable.of(file) : ClassMarksText.scores(file, opened.studies(), look),
            () -> ClassJson.marks(file.marks()));
    return Exit.DONE;
  }

  private int rubric(Call call) {
    RulePack pack = session.pack();
    session.output().answer(look -> ClassText.rubric(pack, look), () -> ClassJson.rubric(pack));
    return Exit.DONE;
  }

  static String known(ClassFile file, String typed) {
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

  static String student(Call call) {
    return call.option(Options.BY)
        .orElseThrow(() -> Refusal.usage("Which student? --by STUDENT is needed."));
  }

  static String option(Call call, String name) {
    return call.option(name).orElse("");
  }
}
