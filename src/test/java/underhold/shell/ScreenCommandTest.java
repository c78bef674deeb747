package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ScreenCommandTest {
  private static final String DEMO = "cases/demo/riverside-estate.zones.csv";

  @TempDir Path folder;
  private final ShellClient shell = ShellClient.oneShot();

  private String out(String name) {
    return folder.resolve(name).toString();
  }

  private static List<CSVRecord> rows(Path file) throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  @Test
  @DisplayName(
      "The demo table: 12 zones in both systems of units, each with its answer and what it rests on")
  void the_demo_table_is_screened() throws Exception {
    ShellClient.Ran ran = shell.run("screen", DEMO, "--out", out("t.csv"), "--draws", "2");

    assertThat(ran.code()).isEqualTo(Exit.DONE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("12 zones").contains("licensed engineer");
    List<CSVRecord> rows = rows(folder.resolve("t.csv"));
    assertThat(rows).hasSize(12);
    assertThat(rows.get(0).get("zone")).isEqualTo("Mill Lane 2, gable");
    assertThat(rows.get(0).get("leader")).isEqualTo("pits");
    assertThat(rows.get(0).get("line")).isEqualTo("2");
    assertThat(rows.get(8).get("sheet asks for")).isEqualTo("columnLoad");
    assertThat(rows)
        .allSatisfy(
            row -> assertThat(row.get("rests on")).startsWith("Quick: ").contains("2 draws"));
    assertThat(rows).extracting(row -> row.get("row id")).doesNotHaveDuplicates();
    assertThat(rows)
        .extracting(row -> row.get("leader"))
        .contains("needles", "drilled-piles", "monitor");
    assertThat(folder.resolve("t.part.csv")).doesNotExist();
  }

  @Test
  void a_folder_and_a_file_go_into_one_json_table() throws Exception {
    Path sites = Files.createDirectory(folder.resolve("sites"));
    ShellClient.file(sites, "yard.site.json", ShellClient.SITE);
    ShellClient.file(sites, "note.txt", "no site");

    ShellClient.Ran ran =
        shell.run(
            "screen", sites.toString(), DEMO, "--out", out("t.json"), "--draws", "0", "--json");

    assertThat(ran.code()).isEqualTo(Exit.DONE);
    assertThat(JsonMapper.shared().readTree(ran.out()).get("zones").asInt()).isEqualTo(14);
    JsonNode table = JsonMapper.shared().readTree(Files.readString(folder.resolve("t.json")));
    assertThat(table.get("underhold").asString()).isEqualTo("screening/1");
    assertThat(table.get("quick").get("draws").asInt()).isZero();
    assertThat(table.get("quick").get("leftOut").size()).isEqualTo(3);
    assertThat(table.get("caution").asString()).contains("engineer");
    assertThat(table.get("zones").size()).isEqualTo(14);
    JsonNode first = table.get("zones").get(0);
    assertThat(first.get("zone").asString()).isEqualTo("party wall");
    assertThat(first.get("line").isNull()).isTrue();
    assertThat(first.get("answerStaysInDraws").isNull()).isTrue();
    assertThat(first.get("options").size()).isEqualTo(7);
    assertThat(StreamSupport.stream(table.get("zones").spliterator(), false))
        .allSatisfy(zone -> assertThat(zone.get("openFacts").isArray()).isTrue());
  }

  @Test
  void bad_rows_are_told_and_skipped_and_the_exit_code_says_so() throws Exception {
    String table =
        ShellClient.file(
            folder,
            "z.csv",
            "zone;loadPattern;excavationPosition;gapToExcavation\n=1+1;continuous;beside;\nb;wavy;beside;\n-4;area;beside;9 m\n");

    ShellClient.Ran ran = shell.run("screen", table, "--out", out("t.csv"), "--draws", "1");

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err())
        .contains("z.csv:3: \"b\" is skipped: column 2, loadPattern: \"wavy\"")
        .contains("2 zones, 1 skipped");
    assertThat(rows(folder.resolve("t.csv")))
        .extracting(row -> row.get("zone"))
        .containsExactly("'=1+1", "-4");
  }

  @Test
  void a_table_is_replaced_but_no_other_file() throws Exception {
    String table =
        ShellClient.file(folder, "z.csv", "zone,loadPattern,excavationPosition\na,area,beside\n");
    ShellClient.file(folder, "mine.csv", "day,hours\n1,8\n");

    assertThat(shell.run("screen", table, "--out", out("mine.csv")).err())
        .contains("nothing was written");
    assertThat(Files.readString(folder.resolve("mine.csv"))).isEqualTo("day,hours\n1,8\n");
    assertThat(shell.run("screen", table, "--out", table).err()).contains("which is to be read");
    assertThat(shell.run("screen", table, "--out", out("t.csv"), "--draws", "0").code()).isZero();
    assertThat(shell.run("screen", table, "--out", out("t.csv"), "--draws", "0").code()).isZero();
  }

  @Test
  void the_template_is_a_table_that_can_be_screened() throws Exception {
    String template = shell.run("screen", "--template").out();
    String file = ShellClient.file(folder, "mine.zones.csv", template);

    ShellClient.Ran ran = shell.run("screen", file, "--out", out("t.csv"), "--draws", "0");

    assertThat(ran.code()).isEqualTo(Exit.DONE);
    assertThat(rows(folder.resolve("t.csv")).get(0).get("zone")).isEqualTo("Plot 1, boundary wall");
    try (CSVParser parser = CSVParser.parse(new StringReader(template), CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().get(0).size()).isGreaterThan(100);
    }
  }

  @Test
  void wrong_command_lines_say_what_to_do() {
    assertThat(shell.run("screen").err()).contains("--out");
    assertThat(shell.run("screen", "--out", out("t.csv")).err()).contains("--template");
    assertThat(shell.run("screen", DEMO, "--out", out("t.txt")).err()).contains(".csv or .json");
    assertThat(shell.run("screen", DEMO, "--out", out("no/t.csv")).err())
        .contains("there is no folder");
    assertThat(shell.run("screen", out("gone.csv"), "--out", out("t.csv")).err())
        .contains("There is no file");
    assertThat(shell.run("screen", DEMO, "--out", out("t.csv"), "--draws", "-1").err())
        .contains("whole number from 0 to 1000");
    assertThat(shell.run("screen", "--help").out())
        .contains("Stopped or killed")
        .contains("--anew");
  }

  @Test
  void the_bar_tells_how_far_it_is_and_goes_away() {
    StringWriter terminal = new StringWriter();
    AtomicLong nanos = new AtomicLong();
    ProgressBar bar = new ProgressBar(new PrintWriter(terminal, true), nanos::get);
    bar.at(0, "0 zones");
    nanos.addAndGet(100_000_000);
    bar.at(0.1, "not drawn so soon");
    nanos.addAndGet(9_900_000_000L);
    bar.at(0.5, "500 zones, 1 skipped");
    bar.wipe();

    assertThat(terminal.toString())
        .contains("\r[############------------] 50 %  500 zones, 1 skipped, 10 s left")
        .doesNotContain("not drawn")
        .endsWith(" \r");
  }

  @Test
  @Timeout(20)
  void a_table_is_not_written_over_a_device_or_pipe() throws Exception {
    assumeTrue(Files.exists(Path.of("/dev/null")));
    Path link = Files.createSymbolicLink(folder.resolve("null.csv"), Path.of("/dev/null"));

    ShellClient.Ran ran = shell.run("screen", DEMO, "--out", link.toString());

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("a device or pipe");
  }
}
