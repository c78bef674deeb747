package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.report.Look;
import underhold.shell.ShellClient.Ran;

/** What was typed, or stands in a file, steers no terminal; and an answer that is lost is told. */
class PrintableTest {
  @TempDir Path folder;

  @Test
  void a_message_is_one_line_without_control_signs() {
    assertThat(Printable.line("a\u001b[2J\nb\u009bm\u202ec"))
        .isEqualTo("a<U+001B>[2J<U+000A>b<U+009B>m<U+202E>c");
  }

  @Test
  void tints_pass_only_where_colour_is_wanted_and_nothing_else_passes() {
    assertThat(Printable.page("\u001b[1mbold\u001b[0m\n", true))
        .isEqualTo("\u001b[1mbold\u001b[0m\n");
    assertThat(Printable.page("\u001b[1mbold", false)).isEqualTo("<U+001B>[1mbold");
    assertThat(Printable.page("\u001b]0;title\u0007\u001b[2J", true))
        .isEqualTo("<U+001B>]0;title<U+0007><U+001B>[2J");
  }

  @Test
  void line_ends_and_tabs_stay_and_a_bare_return_does_not() {
    assertThat(Printable.page("a\tb\r\nc\n\u00e9\ud83d\ude80\u0007", false))
        .isEqualTo("a\tb\r\nc\n\u00e9\ud83d\ude80<U+0007>");
    assertThat(Printable.page("shown\rhidden", false)).isEqualTo("shown<U+000D>hidden");
  }

  @Test
  void words_of_the_command_line_come_back_harmless() {
    Ran ran = ShellClient.oneShot(new Look(80, true, StandardCharsets.UTF_8)).run("\u001b[2Jx");

    assertThat(ran.err()).contains("There is no command \"<U+001B>[2Jx\"").doesNotContain("\u001b");
  }

  @Test
  void a_link_that_leads_nowhere_is_called_so() throws IOException {
    Path link = folder.resolve("a.site.json");
    Files.createSymbolicLink(link, link);

    Ran ran = ShellClient.oneShot().run("advise", link.toString());

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("is a link that leads to no file");
  }

  /** No fingerprint can be taken of half a character, which JSON can write. */
  @Test
  void half_a_character_in_a_record_is_refused_where_it_stands() {
    String name =
        file(
            folder,
            "a.class.json",
            """
            { "underhold": "class/2", "name": "a", "cases": [
                { "name": "b", "file": "a\\ud800", "open": 0 } ],
              "students": [ "A" ], "asked": [], "answers": [], "schemes": [], "given": [], "marks": [] }
            """);

    assertThat(ShellClient.oneShot().run("class", "show", name).err())
        .contains("a.class.json:2:", "cases[0].file", "a text holds half a character");
  }

  /** A device that never ends would be read to see whether it is an earlier report. */
  @Test
  void a_report_is_never_written_over_a_device() throws IOException {
    Path device = Path.of("/dev/zero");
    Assumptions.assumeTrue(Files.exists(device));
    Path link = Files.createSymbolicLink(folder.resolve("a.html"), device);

    Ran ran =
        ShellClient.oneShot()
            .run("report", file(folder, "a.site.json", ShellClient.SITE), "--out", link.toString());

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("is a device or pipe");
  }

  @Test
  void a_class_file_that_names_an_impossible_file_is_refused_in_words() {
    String name =
        file(
            folder,
            "a.class.json",
            """
            { "underhold": "class/2", "name": "a", "cases": [
                { "name": "b", "file": "a\\u0000b", "open": 0 } ],
              "students": [ "A" ], "asked": [], "answers": [], "schemes": [], "given": [], "marks": [] }
            """);

    Ran ran = ShellClient.oneShot().run("class", "show", name);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("\"a?b\" cannot be the name of a file");
  }

  @Test
  void an_interview_ends_in_words_where_its_file_was_changed_meanwhile() throws IOException {
    Path file = folder.resolve("a.site.json");
    String[] typed = {"Yard", "wall"};
    ShellClient.typing(typed).run("interview", file.toString());
    Lines lines =
        (prompt, words) -> {
          try {
            Files.writeString(file, "theirs");
            return Optional.of("continuous");
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        };
    StringWriter told = new StringWriter();
    PrintWriter writer = new PrintWriter(told);
    Output output = new Output(writer, writer, writer, Look.PLAIN, false);
    Session session = new Session(false, lines, output);

    int code =
        new Dispatcher(Commands.registry(session), session, () -> output)
            .run(List.of("interview", file.toString()));

    assertThat(code).isEqualTo(Exit.SITE);
    assertThat(told.toString())
        .contains("has changed since it was read", "The last answer was not kept");
    assertThat(file).hasContent("theirs");
  }

  @Test
  void a_full_disk_is_told_and_a_reader_that_has_read_enough_is_not() {
    assertThat(writing("No space left on device").failure()).contains("No space left on device");
    assertThat(writing("Broken pipe").failure()).isEmpty();
  }

  private static StandardOutput writing(String failure) {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int signal) throws IOException {
            throw new IOException(failure);
          }
        };
    StandardOutput output = new StandardOutput(full);
    output.write(new byte[] {1, 2}, 0, 2);
    output.write(3);
    return output;
  }

  /** Seen: an interview that went on to read a hundred megabytes of Java itself as answers. */
  @Test
  void a_file_of_java_in_the_place_of_the_input_is_no_input() {
    assertThat(Console.closed(Path.of(System.getProperty("java.home"), "lib", "modules"))).isTrue();
    assertThat(Console.closed(folder)).isFalse();
    assertThat(Console.closed(folder.resolve("none"))).isFalse();
  }

  @Test
  void an_input_that_fails_has_ended() {
    Reader closed =
        new Reader() {
          @Override
          public int read(char[] signs, int from, int length) throws IOException {
            throw new IOException("Bad file descriptor");
          }

          @Override
          public void close() {}
        };
    Lines lines = Lines.of(new BufferedReader(closed), prompt -> {});

    assertThat(lines.read("> ", List.of())).isEmpty();
  }
}
