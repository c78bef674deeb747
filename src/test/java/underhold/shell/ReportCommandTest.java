package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.shell.core.command.CommandOption;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Look;
import underhold.report.json.JsonWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.shell.ShellClient.Ran;

/** The report as files: what is written, what is refused, and that nothing else is touched. */
class ReportCommandTest {
  private static final String DEMO = "cases/demo/alder-row-party-wall.site.json";
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--out plan.txt | --out is plan.txt; its ending says the format and must be .html, .pdf, .md or .json.",
        "--out plan | must be .html, .pdf, .md or .json.",
        "--out my.site.json | --out is my.site.json, the name of a site file; a report ends in .html, .pdf, .md or .json.",
        "--out MY.SITE.JSON | the name of a site file",
        "--for revewer | --for is \"revewer\"; it must be one of: reviewer, site, client. Did you mean reviewer?",
        "--units metric | --units is \"metric\"; it must be SI or US",
        "--zone attic | attic",
        "--set crews=3 | --set \"crews=3\" does not say whose setting it is; write METHOD.NAME=VALUE, such as pits.crews=2",
        "--set pits.crws=3 | pits: there is no setting \"crws\" for pits",
        "--set pits.crews=900 | pits: crews is 900; it must be from",
        "--set stages.rigs=many | stages: rigs is \"many\"",
        "--set refer.x=1 | There are: pits, needles, drilled-piles, bracket-piles, edge-pits, monitor, stages"
      })
  void a_wrong_command_line_says_what_to_do_and_nothing_is_written(String words, String message)
      throws IOException {
    String[] line = words.replace("--out ", "--out " + folder + "/").split(" ");
    Ran ran = SHELL.run(all("report", DEMO, line));

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().replace(folder + "/", ""))
        .contains(message)
        .doesNotContain("failed; this");
    assertThat(names()).isEmpty();
  }

  @Test
  void what_is_no_report_is_never_written_over() throws IOException {
    String notes = file(folder, "notes.md", "# My own notes\n");
    String data = file(folder, "data.json", "{}\n");
    Path deep = folder.resolve("none/report.md");
    Path shut = Files.createDirectory(folder.resolve("folder.md"));

    assertThat(SHELL.run("report", DEMO, "--out", notes).err())
        .contains(
            "notes.md is there already and is no report of Underhold, so nothing was written");
    assertThat(SHELL.run("report", DEMO, "--out", data).code()).isEqualTo(Exit.SITE);
    assertThat(SHELL.run("report", DEMO, "--out", deep.toString()).err())
        .contains("there is no folder", "make it first");
    assertThat(SHELL.run("report", DEMO, "--out", shut.toString()).err())
        .contains("a folder; name a file in it");
    assertThat(Path.of(notes)).hasContent("# My own notes");
    assertThat(Path.of(data)).hasContent("{}");
    assertThat(names()).containsExactlyInAnyOrder("notes.md", "data.json", "folder.md");
  }

  @Test
  void a_site_with_problems_gives_no_report() throws IOException {
    String bad = file(folder, "bad.site.json", "{ \"underhold\": 1, \"name\": \"x\" }");
    Ran ran = SHELL.run("report", bad, "--out", folder.resolve("r.md").toString());

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(names()).containsExactly("bad.site.json");
    assertThat(SHELL.run("report", folder + "/none.site.json").err()).contains("There is no file");
  }

  @Test
  void a_report_is_written_whole_and_an_earlier_one_replaced() throws IOException {
    Path out = folder.resolve("alder.md");
    Ran first = SHELL.run("report", DEMO, "--out", out.toString(), "--for", "client");
    String client = Files.readString(out);
    Ran second =
        SHELL.run(
            "report", DEMO, "--out", out.toString(), "--set", "pits.crews=3", "--units", "US");
    String reviewer = Files.readString(out);

    assertThat(first.code()).as(first.err()).isZero();
    assertThat(first.out()).isEmpty();
    assertThat(first.err())
        .contains("alder.md is written: Alder Row, party wall: summary for the client.")
        .contains("For review: not for construction.");
    assertThat(client).startsWith(MarkdownWriter.MARK).contains("Who must sign");
    assertThat(second.code()).as(second.err()).isZero();
    assertThat(reviewer)
        .contains("calculation package", "Register of assumptions", " kip", " ft")
        .contains("- **Settings given**: beside those of the site file: `pits.crews=3`")
        .contains(
            "| 3 (count) | set by user (default by judgement)",
            "single changes of fact were tried.")
        .doesNotContain("Who must sign");
    assertThat(names()).containsExactly("alder.md");
  }

  @Test
  void json_has_the_document_and_the_data() throws IOException {
    Path out = folder.resolve("alder.json");
    Ran ran =
        SHELL.run(
            "report",
            DEMO,
            "--out",
            out.toString(),
            "--json",
            "--zone",
            "PARTY wall",
            "--for",
            "site");
    JsonNode said = JsonMapper.shared().readTree(ran.out());
    JsonNode report = JsonMapper.shared().readTree(Files.readString(out));

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(said.get("written").asString()).isEqualTo(out.toString());
    assertThat(said.get("bytes").asLong()).isEqualTo(Files.size(out));
    assertThat(report.propertyNames()).first().isEqualTo(JsonWriter.MARK);
    assertThat(report.get("document").get("cover").toString())
        .contains("Only a part", "One zone taken alone, party wall.");
    assertThat(report.get("data").propertyNames())
        .containsExactly("advice", "scheme", "stages", "sheets");
    assertThat(report.get("data").get("sheets").get(0).get("sheet").get("method").asString())
        .isEqualTo("pits");
  }

  @Test
  void without_a_file_it_is_printed_with_the_date_of_the_clock() {
    StringWriter answers = new StringWriter();
    PrintWriter out = new PrintWriter(answers);
    Session session =
        new Session(
            false,
            Lines.of(new BufferedReader(new StringReader("")), prompt -> {}),
            new Output(out, out, out, Look.PLAIN, false));
    Clock clock = Clock.fixed(Instant.parse("2031-02-03T04:05:06Z"), ZoneOffset.UTC);
    CommandOption audience =
        CommandOption.with().longName(Options.FOR).value("site").type(String.class).build();

    int code = new ReportCommand(session, clock).run(new Call(List.of(DEMO), List.of(audience)));

    assertThat(code).isZero();
    assertThat(answers.toString())
        .startsWith(MarkdownWriter.MARK)
        .contains("- **Date**: 2031-02-03", "## Hold points", "## Order of pits")
        .doesNotContain("## Appendix");
  }

  private static String[] all(String command, String site, String[] line) {
    String[] words = new String[line.length + 2];
    words[0] = command;
    words[1] = site;
    System.arraycopy(line, 0, words, 2, line.length);
    return words;
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).toList();
    }
  }
}
