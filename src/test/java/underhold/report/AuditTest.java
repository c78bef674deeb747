package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.consult.Consultant;
import underhold.review.Agreement;
import underhold.review.AgreementTable;
import underhold.review.Audit;
import underhold.review.Expectation;
import underhold.review.Outcome;

/** The audit as it is shown. */
class AuditTest {
  private static final Audit AUDIT = Audit.of(Consultant.standard());

  @ParameterizedTest(name = "{0} columns")
  @ValueSource(ints = {40, 80, 120})
  void no_line_is_wider_than_the_terminal(int columns) {
    Look look = new Look(columns, false, StandardCharsets.UTF_8);
    assertThat(AuditText.of(AUDIT, look).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
  }

  @Test
  void the_text_names_every_zone_and_says_why_we_disagree() {
    String text = flat(AuditText.of(AUDIT, Look.PLAIN));
    for (Agreement row : AUDIT.publishedJobs().rows()) {
      assertThat(text).contains(row.job().site().name() + ": " + row.expected().zone() + ".");
      if (!row.outcome().agrees()) {
        row.expected().known().ifPresent(known -> assertThat(text).contains(known.because()));
      }
    }
    assertThat(text)
        .contains("Must not lead, and is not kept back: monitor.")
        .doesNotContain("Not as recorded")
        .contains(Program.CAUTION);
  }

  @Test
  void a_disagreement_that_is_not_on_record_stands_out() {
    Agreement row = AUDIT.publishedJobs().rows(Outcome.MISS).get(0);
    Expectation e = row.expected();
    Expectation unrecorded =
        new Expectation(
            e.zone(),
            e.done(),
            e.used(),
            e.target(),
            e.alsoFair(),
            e.out(),
            List.of("PIT-18"),
            true,
            "",
            null);
    AgreementTable table =
        new AgreementTable(List.of(new Agreement(row.job(), unrecorded, row.answer())));
    assertThat(flat(AuditText.of(new Audit(AUDIT.pack(), table), Look.PLAIN)))
        .contains("1 miss")
        .contains("Not as recorded: look into it.")
        .contains("Should speak and does not: PIT-18.");
  }

  @Test
  void the_tree_holds_the_same_as_the_table() {
    JsonNode tree = JsonMapper.shared().readTree(Json.text(AuditJson.of(AUDIT)));
    JsonNode jobs = tree.path("publishedJobs");
    AgreementTable table = AUDIT.publishedJobs();
    assertThat(jobs.path("rows").size()).isEqualTo(table.rows().size());
    int sum = 0;
    for (Outcome outcome : Outcome.values()) {
      int count = jobs.path("outcomes").path(outcome.word()).asInt();
      assertThat(count).isEqualTo(table.rows(outcome).size());
      sum += count;
    }
    assertThat(sum).isEqualTo(table.rows().size());
    JsonNode first = jobs.path("rows").path(0);
    assertThat(first.path("source").asString()).startsWith("DNAinfo");
    assertThat(first.path("target").path(0).asString()).isEqualTo("pits");
    assertThat(first.path("leadsBecause").size()).isPositive();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
