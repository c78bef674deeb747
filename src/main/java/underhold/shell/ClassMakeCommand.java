package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.Level;
import underhold.classroom.making.CaseMaker;
import underhold.classroom.making.Making;
import underhold.classroom.making.Theme;
import underhold.classroom.making.Wish;
import underhold.report.Json;
import underhold.review.file.RecordTree;
import underhold.site.SavedState;

/** {@code class make}: makes a case to order, into a file or to standard output. */
final class ClassMakeCommand {
  private static final String LEADER = "leader";
  private static final String LEVEL = "level";
  private static final String TEACHES = "teaches";
  private static final int USUAL_SEED = 1;
  private static final int MOST_TRIES = 100_000;

  /** What people say for the levels. */
  private static final Map<String, Level> ALSO =
      Map.of("easy", Level.FIRST, "middle", Level.SECOND, "hard", Level.THIRD);

  private static final CommandOption LEADER_OPTION =
      valued(LEADER, "METHOD", "the method that shall lead once all is known");
  private static final CommandOption LEVEL_OPTION =
      valued(
          LEVEL,
          "first|second|third",
          "how much it asks of its student; first unless set; easy, middle and hard will do");
  private static final CommandOption TEACHES_OPTION =
      valued(TEACHES, "THEME", "what shall decide: " + String.join(", ", Theme.words()));
  private static final CommandOption SEED_OPTION =
      valued(
          Options.SEED,
          "N",
          "where the search starts, " + USUAL_SEED + " unless set: the same seed, the same case");
  private static final CommandOption TRIES_OPTION =
      valued(
          Options.TRIES,
          "N",
          "how many sites are tried at most; " + CaseMaker.USUAL_TRIES + " unless set");
  private static final CommandOption OUT_OPTION =
      valued(Options.OUT, "NAME.case.json", "the file to write; it must not be there yet");

  private final Session session;

  private ClassMakeCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    return new ShellCommand(
        "class make",
        Commands.CLASSROOM,
        "makes a case to order: the method that leads, the level, what decides, a seed",
        List.of(),
        List.of(LEADER_OPTION, LEVEL_OPTION, TEACHES_OPTION, SEED_OPTION, TRIES_OPTION, OUT_OPTION),
        new ClassMakeCommand(session)::make);
  }

  private int make(Call call) {
    Wish wish =
        new Wish(
            leader(call),
            level(call),
            theme(call),
            number(call, Options.SEED, USUAL_SEED, 0, Integer.MAX_VALUE));
    int tries = number(call, Options.TRIES, CaseMaker.USUAL_TRIES, 1, MOST_TRIES);
    Optional<Path> out = call.option(Options.OUT).map(ClassMakeCommand::free);
    Making making = new CaseMaker(session.consultant()).make(wish, tries);
    if (making instanceof Making.Nothing nothing) {
      throw Refusal.site(nothing.says());
    }
    Making.Found found = (Making.Found) making;
    session
        .output()
        .say(
            "Made: "
                + wish.words()
                + ", from seed "
                + wish.seed()
                + ", at try "
                + found.tries()
                + ".");
    if (out.isEmpty()) {
      session
          .output()
          .answer(look -> CaseFile.FILES.text(found.file()), () -> RecordTree.of(found.file()));
      return Exit.DONE;
    }
    write(out.get(), found.file());
    return Exit.DONE;
  }

  private void write(Path file, CaseFile made) {
    CaseFile.FILES
        .write(file, made, SavedState.NO_FILE)
        .fold(
            written -> file,
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
    if (session.output().json()) {
      session
          .output()
          .tree(
              Json.object(
                  "written", file.toString(), "title", made.title(), "level", made.level()));
    } else {
      session.output().say(file + " is written: " + made.title() + ".");
    }
  }

  /** A name for a file that is not there yet. */
  private static Path free(String typed) {
    Path file = SiteFiles.path(typed);
    if (!file.toString().endsWith(CaseFile.ENDING)) {
      throw Refusal.usage("The name of a case ends with " + CaseFile.ENDING + ".");
    }
    if (Files.exists(file)) {
      throw Refusal.site("There is a file " + file + " already; nothing was written.");
    }
    return file;
  }

  private static SupportOption leader(Call call) {
    String typed =
        call.option(LEADER)
            .orElseThrow(
                () ->
                    Refusal.usage(
                        "Which method shall lead? --leader is needed, one of "
                            + String.join(", ", SupportOption.ids())
                            + "."));
    return SupportOption.find(typed.strip())
        .orElseThrow(() -> wrong(LEADER, typed, SupportOption.ids()));
  }

  private static Theme theme(Call call) {
    String typed =
        call.option(TEACHES)
            .orElseThrow(
                () ->
                    Refusal.usage(
                        "What shall decide? --teaches is needed, one of "
                            + String.join(", ", Theme.words())
                            + "."));
    return Theme.find(typed).orElseThrow(() -> wrong(TEACHES, typed, Theme.words()));
  }

  private static Level level(Call call) {
    String typed = call.option(LEVEL).orElse(Level.FIRST.word()).strip();
    Optional<Level> said = Optional.ofNullable(ALSO.get(typed));
    List<String> words = new ArrayList<>(Arrays.stream(Level.values()).map(Level::word).toList());
    words.addAll(ALSO.keySet().stream().sorted().toList());
    return said.or(() -> Level.find(typed)).orElseThrow(() -> wrong(LEVEL, typed, words));
  }

  private static Refusal wrong(String option, String typed, List<String> words) {
    return Refusal.usage(
        "--"
            + option
            + " is \""
            + typed
            + "\"; it must be one of "
            + String.join(", ", words)
            + "."
            + Nearest.question(typed, words));
  }

  private static int number(Call call, String option, int usual, int least, int most) {
    Optional<String> typed = call.option(option);
    if (typed.isEmpty()) {
      return usual;
    }
    String text = typed.get().strip();
    long number = text.matches("[0-9]{1,10}") ? Long.parseLong(text) : -1;
    if (number >= least && number <= most) {
      return (int) number;
    }
    throw Refusal.usage(
        "--"
            + option
            + " is \""
            + text
            + "\"; it must be a whole number from "
            + least
            + " to "
            + most
            + ".");
  }

  private static CommandOption valued(String name, String value, String description) {
    return CommandOption.with()
        .longName(name)
        .defaultValue(value)
        .description(description)
        .type(String.class)
        .build();
  }
}
