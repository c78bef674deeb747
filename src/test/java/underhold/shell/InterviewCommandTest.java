package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.shell.ShellClient.Ran;
import underhold.site.FactDictionary;

/** The interview as typed at the command line; the sites are our own cases. */
class InterviewCommandTest {
  @TempDir Path folder;

  @Test
  void every_answer_is_in_the_file_when_the_input_ends_and_the_next_one_goes_on()
      throws IOException {
    Path file = folder.resolve("mill.site.json");

    Ran first =
        ShellClient.typing("Mill Row", "north wall", "continuous")
            .run("interview", file.toString());
    assertThat(first.code()).isZero();
    assertThat(first.err())
        .contains("Question 1, about", "1  concentrated", "Stopped. All your answers are in");
    assertThat(Files.readString(file)).contains("\"loadPattern\": \"continuous\"");

    Ran second = ShellClient.typing("?", "beside", "stop").run("interview", file.toString());
    assertThat(second.err())
        .contains("Going on with", "Where is the new excavation in plan", "find out")
        .contains("hangs on it");
    assertThat(Files.readString(file)).contains("\"excavationPosition\": \"beside\"");
  }

  @Test
  void a_finished_interview_ends_with_the_advice() {
    String answered =
        Names.statable().stream()
            .filter(name -> !FactDictionary.standard().require(name).required())
            .map(name -> "\"" + name + "\": \"unknown\", ")
            .collect(Collectors.joining());
    String site =
        """
        { "underhold": "site/1", "name": "Dock Row", "zones": [ { "name": "wall", "facts": { %s
          "loadPattern": "continuous", "excavationPosition": "beside" } } ] }
        """
            .formatted(answered);
    String file = file(folder, "dock.site.json", site);

    Ran ran = ShellClient.typing("").run("interview", file);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).contains("Going on with", "Is there another part of the structure");
    assertThat(ran.out()).contains("Dock Row: wall", "a licensed engineer must check");
  }

  @Test
  void a_file_with_another_problem_is_refused_with_all_of_them() {
    String file = file(folder, "bad.site.json", "{ \"underhold\": \"site/1\", \"nam\": \"X\" }");

    Ran ran = ShellClient.typing("x").run("interview", file);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err().lines().count()).isGreaterThan(1);
  }

  @Test
  void nothing_is_written_before_the_first_answer() {
    Path file = folder.resolve("none.site.json");

    Ran ran = ShellClient.typing("stop").run("interview", file.toString());

    assertThat(ran.err()).contains("no file was made");
    assertThat(file).doesNotExist();
  }

  @Test
  void ctrl_c_says_where_the_answers_are() {
    Path file = folder.resolve("cut.site.json");
    java.io.StringWriter said = new java.io.StringWriter();
    java.io.PrintWriter writer = new java.io.PrintWriter(said);
    Output output = new Output(writer, writer, writer, underhold.report.Look.PLAIN, false);
    java.util.Iterator<String> typed = java.util.List.of("Mill Row").iterator();
    Lines lines =
        (prompt, words) -> {
          if (typed.hasNext()) {
            return java.util.Optional.of(typed.next());
          }
          throw new Lines.Interrupted();
        };
    Session session = new Session(false, lines, output);
    Dispatcher dispatcher = new Dispatcher(Commands.registry(session), session, () -> output);

    int code = dispatcher.run(java.util.List.of("interview", file.toString()));

    assertThat(code).isEqualTo(Exit.INTERRUPTED);
    assertThat(said.toString()).contains("Interrupted. All your answers are in");
    assertThat(file).exists();
  }

  @Test
  void no_line_of_the_interview_is_wider_than_the_screen() {
    Path file = folder.resolve("wide.site.json");

    Ran ran =
        ShellClient.typing("Mill Row", "north wall", "1", "?", "2", "?", "1", "?", "0.4", "0.4 m")
            .run("interview", file.toString());

    assertThat(ran.err().lines().filter(line -> !line.contains(folder.toString())))
        .allMatch(line -> line.length() <= 80);
  }
}
