package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.shell.core.command.CommandRegistry;
import underhold.shell.ShellClient.Ran;

/** What the user gets to read when a command line or a file is wrong. */
class WrongCommandLinesTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "advize x | There is no command \"advize\". Did you mean advise?",
        "xyzzy | There are: advise, ask-next, class, compare",
        "rules | \"rules\" needs one more word.",
        "rules shwo | Did you mean show?",
        "site opn | Did you mean open?",
        "why | The command \"why\" needs METHOD.",
        "why pit | Did you mean pits?",
        "why pits | A site FILE is needed",
        "advise | A site FILE is needed",
        "advise a b | does not know what to do with \"b\"",
        "site schema - | does not know what to do with \"-\"",
        "rules list -- --x | does not know what to do with \"--x\"",
        "advise a --zon x | has no option --zon. Did you mean --zone?",
        "advise a -z | has no option -z",
        "advise a --zone | The option --zone needs a value.",
        "advise a --json=yes | The option --json takes no value.",
        "--json | A command is missing.",
        "help advize | Did you mean advise?",
        "rules show NIL-99 | There is no rule",
        "site open x | works in the interactive shell only",
        "site save | works in the interactive shell only",
        "site new x | A new site needs a name",
        "interview | interview needs a FILE",
      })
  void is_answered_with_what_exists(String line, String expected) {
    Ran ran = SHELL.run(line.split(" "));

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(expected).doesNotContain("Exception", "\tat ");
  }

  @Test
  void words_after_two_dashes_are_never_options() {
    Ran ran = SHELL.run("rules", "find", "--", "--nothing");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).contains("No rule holds \"--nothing\"");
  }

  @Test
  void a_file_that_is_missing_is_guessed_from_its_neighbours() {
    file(folder, "tannery.site.json", ShellClient.SITE);

    Ran ran = SHELL.run("advise", folder.resolve("tanery.site.json").toString());

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("Did you mean", "tannery.site.json");
    assertThat(SHELL.run("advise", folder.resolve("bridge.site.json").toString()).err())
        .contains("There is no file")
        .doesNotContain("Did you mean");
  }

  @Test
  void every_problem_of_a_site_is_listed_with_its_place() {
    String bad =
        file(
            folder,
            "bad.site.json",
            """
            { "underhold": "site/1", "name": "X",
              "zones": [ { "name": "w", "facts": { "loadPattern": "continous",
                "excavationPosition": "beside", "gapToExcavation": "0.6" } } ] }
            """);

    Ran ran = SHELL.run("advise", bad);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(2);
    assertThat(ran.err())
        .contains("bad.site.json:2:", "zones[0].facts.loadPattern", "did you mean")
        .contains("zones[0].facts.gapToExcavation", "has no unit");
  }

  @Test
  void a_fault_of_the_program_is_one_line_without_a_stack_trace() {
    CommandRegistry registry = new CommandRegistry(new java.util.HashSet<>());
    Output output = new Captured().output;
    Session session = new Session(false, (prompt, words) -> java.util.Optional.empty(), output);
    registry.registerCommand(
        new ShellCommand(
            "fail",
            Commands.GENERAL,
            "fails",
            java.util.List.of(),
            java.util.List.of(),
            call -> {
              throw new IllegalStateException("lost\nthe thread");
            }));
    Captured captured = new Captured();
    Dispatcher dispatcher = new Dispatcher(registry, session, () -> captured.output);

    assertThat(dispatcher.run(java.util.List.of("fail"))).isEqualTo(Exit.FAULT);
    assertThat(captured.text().lines()).hasSize(1);
    assertThat(captured.text()).contains("lost the thread", "--debug");
    assertThat(dispatcher.run(java.util.List.of("fail", "--debug"))).isEqualTo(Exit.FAULT);
    assertThat(captured.text()).contains("    at underhold.");
  }

  /** An output that keeps what is said. */
  private static final class Captured {
    private final java.io.StringWriter said = new java.io.StringWriter();
    private final Output output =
        new Output(
            new java.io.PrintWriter(said),
            new java.io.PrintWriter(said),
            new java.io.PrintWriter(said),
            underhold.report.Look.PLAIN,
            false);

    private String text() {
      return said.toString();
    }
  }
}
