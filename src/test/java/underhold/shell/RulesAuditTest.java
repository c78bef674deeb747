package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** The command that audits the rules. */
class RulesAuditTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir static Path folder;

  @Test
  void one_section_is_the_agreement_with_published_jobs() {
    Ran ran = SHELL.run("rules", "audit", "--section", "published");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Agreement with published jobs");
  }

  @Test
  void a_section_is_summed_up_and_told() {
    Ran ran = SHELL.run("rules", "audit", "--section", "circles", "--section", "shadowed");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .startsWith("Audit of the rules")
        .contains("No open defect")
        .contains("Circles: ", "Shadowed: ", "Accepted, and why")
        .doesNotContain("Agreement with published jobs");
  }

  @Test
  void rules_audit_answers_in_json() {
    Ran ran = SHELL.run("rules", "audit", "--json", "--section", "circles");
    assertThat(ran.code()).isZero();
    JsonNode audit = JsonMapper.shared().readTree(ran.out()).path("audit");
    assertThat(audit.path("open").asInt(-1)).isZero();
    assertThat(audit.path("sections").path(0).path("name").asString()).isEqualTo("circles");
  }

  @Test
  @DisplayName("The sites that show a finding are written, and the site check accepts them")
  void witnesses_are_written() throws IOException {
    Path out = folder.resolve("witnesses");
    Ran ran =
        SHELL.run(
            "rules", "audit", "--section", "opposites", "--tries", "500", "--out", out.toString());
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    try (Stream<Path> files = Files.list(out)) {
      List<Path> written = files.toList();
      assertThat(written).isNotEmpty();
      for (Path file : written) {
        assertThat(SHELL.run("site", "check", file.toString()).code()).isZero();
      }
    }
  }

  @Test
  void a_section_that_is_none_is_refused_with_the_list() {
    Ran ran = SHELL.run("rules", "audit", "--section", "shadows");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("shadowed", "circles", "published");
  }

  @Test
  void a_number_of_tries_that_is_none_is_refused_with_the_limits() {
    Ran ran = SHELL.run("rules", "audit", "--tries", "many");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.err()).contains("\"many\"", "1000000");
  }

  @Test
  void rules_audit_takes_no_words() {
    Ran ran = SHELL.run("rules", "audit", "everything");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
  }
}
