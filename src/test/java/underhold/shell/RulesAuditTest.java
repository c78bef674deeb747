package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** The command that audits the rules. */
class RulesAuditTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @Test
  void rules_audit_shows_the_agreement_with_published_jobs() {
    Ran ran = SHELL.run("rules", "audit");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Agreement with published jobs");
  }

  @Test
  void rules_audit_answers_in_json() {
    Ran ran = SHELL.run("rules", "audit", "--json");
    assertThat(ran.code()).isZero();
    assertThat(JsonMapper.shared().readTree(ran.out()).path("publishedJobs").path("jobs").asInt())
        .isPositive();
  }

  @Test
  void rules_audit_takes_no_words() {
    Ran ran = SHELL.run("rules", "audit", "everything");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
  }
}
