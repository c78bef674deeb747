package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.shell.ShellClient.Ran;

/** Reports as files, whole sheets, links, and reports by other rules. */
class ReportFilesTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final Pattern TARGET = Pattern.compile("]\\(#([^)]+)\\)");
  private static final Pattern ANCHOR = Pattern.compile("<a id=\"([^\"]+)\"></a>");

  private static final String ONE_ZONE =
      ShellClient.SITE.replaceFirst("(?s),\\s*\\{ \"name\": \"corner column\".*", " ] }");

  @TempDir Path folder;
  private String site = "";

  @BeforeEach
  void site() {
    site = file(folder, "yard.site.json", ONE_ZONE);
  }

  private static Ran done(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran;
  }

  @ParameterizedTest
  @ValueSource(strings = {".html", ".pdf", ".md", ".json"})
  void an_earlier_report_is_replaced_whole_and_kept_where_the_new_one_fails(String ending)
      throws IOException {
    Path out = folder.resolve("yard" + ending);
    done("report", site, "--out", out.toString(), "--for", "client");
    byte[] metres = Files.readAllBytes(out);
    done("report", site, "--out", out.toString(), "--for", "client", "--units", "US");
    byte[] feet = Files.readAllBytes(out);
    assertThat(feet).isNotEqualTo(metres);
    assertThat(ReportFormat.of("x" + ending).orElseThrow().isReport(feet)).isTrue();

    Files.writeString(Path.of(site), "{ \"underhold\": \"site/1\", \"name\": 3 }");
    Ran failed = SHELL.run("report", site, "--out", out.toString());
    assertThat(failed.code()).isEqualTo(Exit.SITE);
    assertThat(Files.readAllBytes(out)).isEqualTo(feet);
    assertThat(names()).containsExactlyInAnyOrder("yard.site.json", "yard" + ending);
  }

  @ParameterizedTest
  @ValueSource(strings = {".html", ".pdf", ".md", ".json"})
  void a_file_of_another_kind_is_left_alone_whatever_its_ending(String ending) throws IOException {
    Path out = folder.resolve("yard" + ending);
    byte[] own = "{ \"mine\": \"<p>%PDF # own\" }".getBytes(StandardCharsets.UTF_8);
    Files.write(out, own);
    Ran ran = SHELL.run("report", site, "--out", out.toString());
    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("is no report of Underhold, so nothing was written");
    assertThat(Files.readAllBytes(out)).isEqualTo(own);
  }

  @Test
  void with_all_sheets_every_link_leads_somewhere() {
    String all = done("report", site, "--sheets", "all").out();
    assertThat(found(TARGET, all)).isNotEmpty().isSubsetOf(found(ANCHOR, all));
    assertThat(all).contains("Nothing is left out of this package.");
    Ran wrong = SHELL.run("report", site, "--sheets", "al");
    assertThat(wrong.code()).isEqualTo(Exit.USAGE);
    assertThat(wrong.err()).contains("--sheets is \"al\"", "Did you mean all?");
    assertThat(wrong.out()).isEmpty();
  }

  @Test
  void a_report_by_other_rules_or_limits_says_so_first() throws IOException {
    Path pack = Files.createDirectory(folder.resolve("house"));
    file(
        pack,
        "pack.json",
        "{ \"name\": \"House rules\", \"version\": \"3\", \"extends\": \"built-in\","
            + " \"remove\": [\"ANY-21\"] }");
    String house = done("report", site, "--rules", pack.toString(), "--for", "client").out();
    assertThat(house).contains("House rules 3", "ANY-21");
    assertThat(house.indexOf("House rules"))
        .isPositive()
        .isLessThan(house.indexOf("## What is recommended"));
    String tried = done("report", site, "--limit", "berm-width=2.5 m", "--for", "client").out();
    assertThat(tried).contains("berm-width");
    assertThat(tried.indexOf("berm-width")).isLessThan(tried.indexOf("## What is recommended"));
    Ran wrong = SHELL.run("report", site, "--limit", "berm-wdth=2.5 m");
    assertThat(wrong.code()).isNotEqualTo(Exit.DONE);
    assertThat(wrong.err()).contains("berm-wdth");
  }

  private static Set<String> found(Pattern pattern, String text) {
    Set<String> found = new LinkedHashSet<>();
    pattern.matcher(text).results().forEach(one -> found.add(one.group(1)));
    return found;
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).toList();
    }
  }
}
