package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  /** The words of the levels, and what people say for them in the same order. */
  private static final List<String> LEVELS =
      List.of("first", "second", "third", "easy", "middle", "hard");

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
    Wish wish = wish(call);
    List<String> problems = new ArrayList<>();
    int tries = number(call, Options.TRIES, CaseMaker.USUAL_TRIES, 1, MOST_TRIES, problems);
    if (!problems.isEmpty()) {
      throw Refusal.usage(problems.toArray(String[]::new));
    }
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

  /** All that is wrong with the wish, or the wish. */
  private static Wish wish(Call call) {
    List<String> problems = new ArrayList<>();
    Optional<SupportOption> leader =
        found(call, LEADER, "Which method shall lead?", SupportOption.ids(), problems)
            .flatMap(SupportOption::find);
    Optional<Theme> theme =
        found(call, TEACHES, "What shall decide?", Theme.words(), problems).flatMap(Theme::find);
    Optional<Level> level =
        call.option(LEVEL).isEmpty()
            ? Optional.of(Level.FIRST)
            : found(call, LEVEL, "", LEVELS, problems).flatMap(ClassMakeCommand::level);
    int seed = number(call, Options.SEED, USUAL_SEED, 0, Integer.MAX_VALUE, problems);
    if (leader.isEmpty() || theme.isEmpty() || level.isEmpty() || !problems.isEmpty()) {
      throw Refusal.usage(problems.toArray(String[]::new));
    }
    return new Wish(leader.get(), level.get(), theme.get(), seed);
  }

  /**
   * The word of an option, with blanks for hyphens allowed; none, with a problem, if it is none.
   */
  private static Optional<String> found(
      Call call, String option, String question, List<String> words, List<String> problems) {
    Optional<String> typed = call.option(option);
    Optional<String> word =
        typed
            .map(text -> text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-"))
            .filter(words::contains);
    if (word.isEmpty()) {
      String all = String.join(", ", words) + ".";
      problems.add(
          typed
              .map(
                  text ->
                      "--"
                          + option
                          + " is \""
                          + text
                          + "\"; it must be one of "
                          + all
                          + Nearest.question(text, words))
              .orElse(question + " --" + option + " is needed, one of " + all));
    }
    return word;
  }

  private static Optional<Level> level(String word) {
    int place = LEVELS.indexOf(word);
    return Level.find(LEVELS.get(place % Level.values().length));
  }

  private static int number(
      Call call, String option, int usual, int least, int most, List<String> problems) {
    Optional<String> typed = call.option(option);
    if (typed.isEmpty()) {
      return usual;
    }
    String text = typed.get().strip();
    long number = text.matches("[0-9]{1,10}") ? Long.parseLong(text) : -1;
    if (number >= least && number <= most) {
      return (int) number;
    }
    problems.add(
        "--"
            + option
            + " is \""
            + text
            + "\"; it must be a whole number from "
            + least
            + " to "
            + most
            + ".");
    return usual;
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
