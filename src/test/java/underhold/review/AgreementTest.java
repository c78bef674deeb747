package underhold.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Screening;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.Weighed;

/** How strict agreement is, on made-up rankings; and what the reader refuses. */
class AgreementTest {
  private static final PublishedJob JOB = PublishedJobs.builtIn().get(0);
  private static final Screening SCREENING =
      Consultant.standard().screen(JOB.site(), JOB.site().zones().get(0));

  private static OptionAdvice advice(
      SupportOption option, Standing standing, int score, boolean tied) {
    return new OptionAdvice(
        option, standing, score, tied, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  private static Agreement agreement(
      List<SupportOption> target,
      List<SupportOption> fair,
      List<SupportOption> out,
      OptionAdvice... options) {
    Expectation expected =
        new Expectation("zone", "", List.of(), target, fair, out, List.of(), true, "", null);
    return new Agreement(
        JOB, expected, new Weighed("zone", SCREENING, new Ranking(List.of(options))));
  }

  private static final List<SupportOption> PITS = List.of(SupportOption.PITS);
  private static final List<SupportOption> NEEDLES = List.of(SupportOption.NEEDLES);
  private static final List<SupportOption> NONE = List.of();

  @Test
  @DisplayName("No clear choice is no agreement, even where the target alone is in play")
  void no_choice_is_no_agreement() {
    Agreement row =
        agreement(PITS, NONE, NONE, advice(SupportOption.PITS, Standing.HELD, 9, false));
    assertThat(row.outcome()).isEqualTo(Outcome.NO_CHOICE);
    assertThat(row.outcome().agrees()).isFalse();
    assertThat(row.asRecorded()).isFalse();
  }

  @Test
  @DisplayName("A tie with the target agrees; a tie with what is only fair does not")
  void ties() {
    OptionAdvice leader = advice(SupportOption.MONITOR, Standing.LEADS, 4, true);
    OptionAdvice tied = advice(SupportOption.PITS, Standing.WORKS, 3, true);
    assertThat(agreement(PITS, NONE, NONE, leader, tied).outcome()).isEqualTo(Outcome.FIRST_CHOICE);
    assertThat(agreement(PITS, NONE, NONE, leader, tied).byTieOnly()).isTrue();
    assertThat(agreement(NEEDLES, PITS, NONE, leader, tied).outcome()).isEqualTo(Outcome.MISS);
  }

  @Test
  @DisplayName("The target in front does not help where one that must not lead ties with it")
  void a_tie_with_what_must_not_lead_is_a_miss() {
    Agreement row =
        agreement(
            PITS,
            NONE,
            NEEDLES,
            advice(SupportOption.PITS, Standing.LEADS, 4, true),
            advice(SupportOption.NEEDLES, Standing.WORKS, 2, true));
    assertThat(row.outcome()).isEqualTo(Outcome.MISS);
    assertThat(row.letThrough()).containsExactly(SupportOption.NEEDLES);
  }

  @Test
  @DisplayName("What must not lead is kept back when ruled out, held or without a point")
  void kept_back() {
    for (Map.Entry<OptionAdvice, Boolean> one :
        Map.of(
                advice(SupportOption.NEEDLES, Standing.RULED_OUT, 6, false), true,
                advice(SupportOption.NEEDLES, Standing.HELD, 6, false), true,
                advice(SupportOption.NEEDLES, Standing.WORKS, 0, false), true,
                advice(SupportOption.NEEDLES, Standing.WORKS, 1, false), false)
            .entrySet()) {
      Agreement row =
          agreement(
              PITS,
              NONE,
              NEEDLES,
              advice(SupportOption.PITS, Standing.LEADS, 8, false),
              one.getKey());
      assertThat(row.letThrough().isEmpty()).as(one.getKey().toString()).isEqualTo(one.getValue());
      assertThat(row.outcome()).isEqualTo(Outcome.FIRST_CHOICE);
    }
  }

  @Test
  @DisplayName("Another option in front is a miss; one that is also fair is fair")
  void fair_and_miss() {
    OptionAdvice leader = advice(SupportOption.NEEDLES, Standing.LEADS, 4, false);
    assertThat(agreement(PITS, NEEDLES, NONE, leader).outcome()).isEqualTo(Outcome.FAIR);
    assertThat(agreement(PITS, NONE, NONE, leader).outcome()).isEqualTo(Outcome.MISS);
  }

  @Test
  void the_reader_collects_what_is_wrong_with_the_jobs() {
    String site =
        """
        {"underhold": "site/1", "name": "n", "note": "no place named", "zones": [{"name": "z",
         "facts": {"loadPattern": "continuous", "excavationPosition": "beside"}}]}
        """;
    String expected =
        """
        {"jobs": [
          {"site": "lost", "teaches": "t", "zones": []},
          {"site": "found", "teaches": "", "zones": [{"zone": "other", "target": ["pits", "piles"],
            "out": ["pits"], "scored": false, "departure": {"outcome": "fair", "because": "x"}}]}]}
        """;
    PublishedJobs reader = new PublishedJobs();
    reader.read(
        name ->
            switch (name) {
              case "expected.json" -> Optional.of(expected);
              case "found.site.json" -> Optional.of(site);
              default -> Optional.empty();
            });
    assertThat(reader.problems())
        .containsExactly(
            "expected.json names lost.site.json, which is not there",
            "found says not what it teaches",
            "found: other: there is no option piles",
            "found: other: a departure needs a miss or no choice, and a reason",
            "found has the zones [z], expected are [other]",
            "found names no source in its note",
            "found: other is scored without a target, or the reverse",
            "found: other says not why it is not scored",
            "found: other: pits is fair and out");
  }

  @Test
  void a_list_of_jobs_that_is_not_json_is_a_problem() {
    PublishedJobs reader = new PublishedJobs();
    assertThat(reader.read(name -> Optional.of("{"))).isEmpty();
    assertThat(reader.problems()).containsExactly("expected.json is not there or is not JSON");
  }
}
