package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.BuiltInPack;
import underhold.review.audit.AuditNotes;
import underhold.review.audit.Defect;
import underhold.review.audit.Effort;
import underhold.review.audit.RulesAudit;

/** The audit of the rules as it is shown. */
class RulesAuditTextTest {
  private static final List<String> SECTIONS = List.of("shadowed", "double", "thresholds");
  private static final RulesAudit ACCEPTED = audit(AuditNotes.builtIn());
  private static final RulesAudit BARE = audit(AuditNotes.none());

  private static RulesAudit audit(AuditNotes notes) {
    return RulesAudit.of(BuiltInPack.pack(), List.of(), notes, new Effort(50, 1), SECTIONS);
  }

  @ParameterizedTest(name = "{0} columns")
  @ValueSource(ints = {40, 80, 120})
  void no_line_is_wider_than_the_terminal(int columns) {
    Look look = new Look(columns, false, StandardCharsets.UTF_8);
    assertThat(RulesAuditText.of(ACCEPTED, Map.of(), look).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
  }

  @Test
  void what_is_accepted_is_told_with_its_reason() {
    String text = flat(RulesAuditText.of(ACCEPTED, Map.of(), Look.PLAIN));
    assertThat(text).contains("No open defect").doesNotContain("OPEN");
    for (Defect defect : ACCEPTED.defects()) {
      assertThat(text).contains(flat(defect.text()));
      assertThat(text).contains(flat(ACCEPTED.accepted(defect).orElseThrow().because()));
    }
  }

  @Test
  void what_nobody_accepted_stands_out() {
    String text = flat(RulesAuditText.of(BARE, Map.of(), Look.PLAIN));
    assertThat(text)
        .contains(BARE.defects().size() + " open defects")
        .contains("OPEN")
        .doesNotContain("Accepted, and why");
  }

  @Test
  void the_tree_holds_the_same() {
    JsonNode tree = JsonMapper.shared().readTree(Json.text(RulesAuditJson.of(ACCEPTED, Map.of())));
    assertThat(tree.path("open").asInt(-1)).isZero();
    assertThat(tree.path("accepted").asInt()).isEqualTo(ACCEPTED.defects().size());
    assertThat(tree.path("sections").size()).isEqualTo(SECTIONS.size());
    assertThat(
            tree.path("sections")
                .path(0)
                .path("findings")
                .path(0)
                .path("accepted")
                .path("because")
                .asString())
        .isNotBlank();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
