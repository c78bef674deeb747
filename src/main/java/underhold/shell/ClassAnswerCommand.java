package underhold.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.classroom.AnswerFile;
import underhold.classroom.ClassDesk;
import underhold.classroom.ClassFile;
import underhold.classroom.Doing;
import underhold.classroom.OrderWords;
import underhold.classroom.SchemeAnswer;
import underhold.report.ClassText;
import underhold.report.Json;
import underhold.review.file.FileReading;

/** {@code class answer}: one answer by its options, or files of answers. */
final class ClassAnswerCommand {
  private final Session session;

  private ClassAnswerCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    return ClassCommands.command(
        "class answer",
        "takes a student's answer for a zone, for all together or to a question, or files of them",
        List.of(
            Parameter.needed("FILE.class.json", ClassFiles::here),
            new Parameter("FILE" + AnswerFile.ENDING, false, true, List::of)),
        ClassOptions.ANSWER,
        call -> new ClassAnswerCommand(session).run(call));
  }

  /** Something done to a class. */
  interface Deed {
    Doing on(ClassDesk desk);
  }

  /** Does something to a class and says what it was. */
  static int done(Session session, Call call, Deed deed) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    Doing.Done done = ok(deed.on(new ClassDesk(opened.file(), opened.studies(), session.pack())));
    ClassFiles.write(opened.path(), done.file(), opened.state());
    says(session, done.says());
    return Exit.DONE;
  }

  static Doing.Done ok(Doing doing) {
    if (doing instanceof Doing.Refused refused) {
      throw Refusal.usage(refused.problems().toArray(String[]::new));
    }
    return (Doing.Done) doing;
  }

  static void says(Session session, List<String> sentences) {
    session
        .output()
        .answer(look -> ClassText.says(sentences, look), () -> Json.object("says", sentences));
  }

  private int run(Call call) {
    if (call.word(1).isPresent()) {
      return files(call);
    }
    long ways =
        Stream.of(ClassOptions.METHOD, ClassOptions.SCHEME, ClassOptions.QUESTION)
            .filter(call::has)
            .count();
    if (ways != 1) {
      throw Refusal.usage(
          "Give either --method, for a zone, or --scheme, for all zones together, or --question with"
              + " --gives, or files of answers.");
    }
    if (call.has(ClassOptions.METHOD)) {
      return done(session, call, desk -> zone(call, desk));
    }
    return call.has(ClassOptions.SCHEME)
        ? done(session, call, desk -> scheme(call, desk))
        : done(session, call, desk -> question(call, desk));
  }

  private static Doing zone(Call call, ClassDesk desk) {
    return desk.answer(
        ClassCommands.student(call),
        ClassCommands.option(call, ClassOptions.CASE),
        ClassCommands.option(call, Options.ZONE),
        ClassCommands.option(call, ClassOptions.METHOD),
        ClassOptions.words(call, ClassOptions.BECAUSE),
        ClassOptions.words(call, ClassOptions.CHECK),
        ClassOptions.words(call, ClassOptions.CONDITION),
        ClassOptions.words(call, ClassOptions.DANGER));
  }

  private static Doing question(Call call, ClassDesk desk) {
    return desk.give(
        ClassCommands.student(call),
        ClassCommands.option(call, ClassOptions.CASE),
        ClassCommands.option(call, ClassOptions.QUESTION),
        ClassCommands.option(call, ClassOptions.GIVES));
  }

  private static Doing scheme(Call call, ClassDesk desk) {
    Map<String, String> methods = new LinkedHashMap<>();
    for (String typed : ClassOptions.words(call, ClassOptions.SCHEME)) {
      int equals = typed.lastIndexOf('=');
      if (equals < 1) {
        throw Refusal.usage(
            "--scheme has \"" + typed + "\"; it must be ZONE=METHOD, with commas between.");
      }
      methods.put(typed.substring(0, equals).strip(), typed.substring(equals + 1).strip());
    }
    return desk.scheme(
        ClassCommands.student(call),
        ClassCommands.option(call, ClassOptions.CASE),
        methods,
        ClassOptions.words(call, ClassOptions.BECAUSE),
        ClassOptions.words(call, ClassOptions.ORDER).stream()
            .map(ClassAnswerCommand::order)
            .toList());
  }

  /** {@code ZONE WORD ZONE}: the word is looked for between the names. */
  private static SchemeAnswer.Wanted order(String typed) {
    List<String> words = OrderWords.all().stream().map(one -> one.word()).toList();
    for (String word : words) {
      int at = typed.indexOf(" " + word + " ");
      if (at > 0) {
        return new SchemeAnswer.Wanted(
            typed.substring(0, at).strip(), word, typed.substring(at + word.length() + 2).strip());
      }
    }
    throw Refusal.usage(
        "--order is \""
            + typed
            + "\"; it must be ZONE WORD ZONE, where WORD is one of "
            + String.join(", ", words)
            + ".");
  }

  /** All answers of all files, or none and everything that is wrong with them. */
  private int files(Call call) {
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    ClassFile file = opened.file();
    List<String> problems = new ArrayList<>();
    List<String> says = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String typed : call.words().subList(1, call.words().size())) {
      Path path = SiteFiles.path(typed);
      SiteFiles.existing(path);
      FileReading<AnswerFile> reading = AnswerFile.FILES.read(path);
      problems.addAll(reading.messages());
      reading
          .content()
          .flatMap(answers -> twice(answers, seen))
          .ifPresent(what -> problems.add(path + ": " + what));
      for (Deed deed : reading.content().map(ClassAnswerCommand::deeds).orElse(List.of())) {
        Doing doing = deed.on(new ClassDesk(file, opened.studies(), session.pack()));
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
      List<String> all = new ArrayList<>(problems);
      all.add("Nothing was taken of any file; put this right and give all of them again.");
      throw Refusal.site(all);
    }
    ClassFiles.write(opened.path(), file, opened.state());
    says(session, says);
    return Exit.DONE;
  }

  /** Files of one call have no order, so that of one student and task there can be one answer. */
  private static Optional<String> twice(AnswerFile answers, Set<String> seen) {
    List<String> tasks = new ArrayList<>();
    answers.zones().ifPresent(all -> all.forEach(one -> tasks.add("the zone " + one.zone())));
    answers.scheme().ifPresent(one -> tasks.add("all zones together"));
    answers
        .questions()
        .ifPresent(all -> all.forEach(one -> tasks.add("the question " + one.question())));
    return tasks.stream()
        .filter(task -> !seen.add(String.join("\n", answers.student(), answers.of(), task)))
        .findFirst()
        .map(
            task ->
                answers.student()
                    + " answers "
                    + task
                    + " of "
                    + answers.of()
                    + " twice in these files; keep one of the two.");
  }

  private static List<Deed> deeds(AnswerFile answers) {
    List<Deed> deeds = new ArrayList<>();
    for (AnswerFile.InZone one : answers.zones().orElse(List.of())) {
      deeds.add(
          desk ->
              desk.answer(
                  answers.student(),
                  answers.of(),
                  one.zone(),
                  one.method(),
                  one.because().orElse(List.of()),
                  one.check().orElse(List.of()),
                  one.condition().orElse(List.of()),
                  one.danger().orElse(List.of())));
    }
    answers
        .scheme()
        .ifPresent(
            one ->
                deeds.add(
                    desk ->
                        desk.scheme(
                            answers.student(),
                            answers.of(),
                            one.methods(),
                            one.because().orElse(List.of()),
                            one.order().orElse(List.of()))));
    for (AnswerFile.ToQuestion one : answers.questions().orElse(List.of())) {
      deeds.add(desk -> desk.give(answers.student(), answers.of(), one.question(), one.gives()));
    }
    return deeds;
  }
}
