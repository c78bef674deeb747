package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.shell.ShellClient.Ran;

/** The program in a process of its own, piped. */
class ProgramTest {
  @TempDir Path folder;

  private Ran program(String input, String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
    command.add("underhold.shell.Underhold");
    command.addAll(List.of(words));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Path in = Path.of(ShellClient.file(folder, "in", input));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().putAll(Map.of("TERM", "xterm-256color", "LC_ALL", "C"));
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    int code = builder.start().waitFor();
    return new Ran(code, text(out), text(err));
  }

  private static String text(Path file) throws IOException {
    return java.nio.file.Files.readString(file, StandardCharsets.UTF_8);
  }

  @Test
  void a_pipe_gets_plain_text_and_only_the_answer() throws Exception {
    ShellClient.file(folder, "yard.site.json", ShellClient.SITE);

    Ran ran = program("", "advise", "yard.site.json");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).matches("[\\n\\x20-\\x7e]+").contains("Underpinning pits lead");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_piped_shell_runs_line_by_line_and_ends_with_the_last_failure() throws Exception {
    Ran ran = program("version\nadvize\nexit\n");

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).startsWith("Underhold ");
    assertThat(ran.err()).contains("Did you mean advise?").doesNotContain("Exception", "WARN");
  }

  @Test
  void a_piped_interview_keeps_what_was_typed() throws Exception {
    Ran ran = program("Mill Row\nnorth wall\n1\n", "interview", "mill.site.json");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).contains("Stopped. All your answers are in mill.site.json");
    assertThat(text(folder.resolve("mill.site.json"))).contains("concentrated");
  }
}
