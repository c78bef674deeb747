package underhold.shell;

import java.util.Arrays;
import java.util.List;
import org.springframework.shell.core.command.CommandOption;

/** The options of the commands of a class. */
final class ClassOptions {
  static final String CASE = "case";
  static final String STUDENTS = "students";
  static final String METHOD = "method";
  static final String BECAUSE = "because";
  static final String CHECK = "check";
  static final String CONDITION = "condition";
  static final String DANGER = "danger";
  static final String SCHEME = "scheme";
  static final String ORDER = "order";
  static final String STAGE = "stage";
  static final String QUESTION = "question";
  static final String GIVES = "gives";
  static final String KEY = "key";
  static final String CSV = "csv";

  static final CommandOption CASE_OPTION =
      valued(CASE, "CASE", "the case; not needed where the class has one");
  static final CommandOption STUDENTS_OPTION =
      valued(STUDENTS, "NAMES", "the students, with commas between");
  static final CommandOption STUDENT_OPTION = valued(Options.BY, "STUDENT", "the student");
  static final CommandOption ONE_STUDENT_OPTION =
      valued(Options.BY, "STUDENT", "only the marks of that student");
  static final List<CommandOption> ANSWER =
      List.of(
          CASE_OPTION,
          STUDENT_OPTION,
          Options.ZONE_OPTION,
          valued(METHOD, "METHOD", "the method, or none"),
          valued(BECAUSE, "FACTS", "the facts that decide, with commas between"),
          valued(CHECK, "FACTS", "the facts to find out first, with commas between"),
          valued(CONDITION, "WORDS", "what it asks for besides, with commas between"),
          valued(DANGER, "WORDS", "the dangers, with commas between"),
          valued(
              SCHEME,
              "ZONE=METHOD, ...",
              "the methods of all zones together, in place of --zone and --method"),
          valued(
              ORDER,
              "ZONE WORD ZONE",
              "with --scheme: what comes before what; may stand several times"),
          valued(QUESTION, "ID", "a question of size or sequence, in place of a method"),
          valued(GIVES, "ANSWER", "the answer to that question"));
  static final CommandOption KEY_OPTION =
      CommandOption.with()
          .longName(KEY)
          .description("show what the cases teach; not for students")
          .type(boolean.class)
          .build();

  static final CommandOption STAGE_OPTION =
      valued(STAGE, "STAGE", "of a case file: the last stage that is open; day one unless set");
  static final CommandOption OUT_OPTION =
      valued(Options.OUT, "NAME", "the handout to write: .html, .pdf or .md by its ending");

  static final CommandOption CSV_OPTION =
      CommandOption.with()
          .longName(CSV)
          .description("answer as a table with commas between (RFC 4180), a line a mark")
          .type(boolean.class)
          .build();

  private ClassOptions() {}

  /** The words of a list with commas between; none where it is not given. */
  static List<String> words(Call call, String option) {
    return call.all(option).stream()
        .flatMap(typed -> Arrays.stream(typed.split(",")))
        .map(String::strip)
        .filter(word -> !word.isEmpty())
        .toList();
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
