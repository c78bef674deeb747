package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.advice.Ranking;
import underhold.consult.Consultant;
import underhold.site.Site;
import underhold.site.Zone;

/** The cases of the classroom: sound at every stage, and teaching what they say they teach. */
class ClassroomCasesTest {
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final QuestionDesk QUESTIONS = new QuestionDesk(CONSULTANT);

  static Stream<CaseStudy> cases() {
    return Cases.all().stream();
  }

  @Test
  void there_are_cases_for_each_level_and_each_thing_to_be_taught() {
    List<CaseStudy> all = Cases.all();
    assertThat(all).hasSizeGreaterThanOrEqualTo(15);
    assertThat(all.stream().map(one -> one.file().level()).distinct())
        .containsExactlyInAnyOrder("first", "second", "third");
    String taught = String.join("; ", all.stream().map(one -> one.file().teaches()).toList());
    assertThat(taught)
        .contains(
            "concentrated against continuous",
            "can it span",
            "water decides",
            "rock against earth at the edge",
            "access decides",
            "when not to underpin",
            "unknown foundations",
            "a surprise boulder",
            "married methods",
            "when to refer");
    assertThat(all).allSatisfy(one -> assertThat(one.file().lesson().length()).isBetween(80, 600));
  }

  @ParameterizedTest
  @MethodSource("cases")
  @DisplayName("the leader is what the case teaches once all is known, and on day one")
  void teaches_what_it_says(CaseStudy study) {
    for (Expected expected : study.file().expects()) {
      int last = study.stages().size() - 1;
      assertLeads(study, last, expected.zone(), expected.leader());
      assertLeads(study, 0, expected.zone(), expected.dayOne());
    }
  }

  private static void assertLeads(CaseStudy study, int stage, String zoneName, String expected) {
    Ranking ranking = ranking(study, stage, zoneName);
    Set<String> first = new HashSet<>();
    ranking.leader().ifPresent(one -> first.add(one.option().id()));
    ranking.tiedWithLeader().forEach(one -> first.add(one.option().id()));
    if (expected.equals(Expected.NO_METHOD)) {
      assertThat(first).as(study.name() + " at stage " + stage).isEmpty();
    } else {
      assertThat(first).as(study.name() + " at stage " + stage).contains(expected);
    }
  }

  private static Ranking ranking(CaseStudy study, int stage, String zoneName) {
    Site site = study.known(stage, Set.of());
    Zone zone =
        site.zones().stream().filter(one -> one.name().equals(zoneName)).findFirst().orElseThrow();
    return CONSULTANT.ranking(site, zone);
  }

  @Test
  void day_one_is_honest_in_most_cases_by_making_no_choice() {
    long open =
        Cases.all().stream()
            .flatMap(one -> one.file().expects().stream())
            .filter(one -> one.dayOne().equals(Expected.NO_METHOD))
            .count();
    long zones = Cases.all().stream().mapToLong(one -> one.file().expects().size()).sum();
    assertThat(2 * open).isGreaterThan(zones);
  }

  @Test
  @DisplayName("Two fair answers: pits and brackets tie at the end of Weavers Court")
  void weavers_court_is_a_tie() {
    Ranking ranking = ranking(Cases.of("weavers-court"), 3, "court wall");
    Set<String> first = new HashSet<>();
    ranking.leader().ifPresent(one -> first.add(one.option().id()));
    ranking.tiedWithLeader().forEach(one -> first.add(one.option().id()));
    assertThat(first).containsExactlyInAnyOrder("pits", "bracket-piles");
  }

  @Test
  @DisplayName("The boulder alone turns Heron Gate: pits are among the first before it, not after")
  void the_boulder_turns_heron_gate() {
    CaseStudy study = Cases.of("heron-gate");
    assertLeads(study, 3, "mill wall", "pits");
    Ranking after = ranking(study, 4, "mill wall");
    assertThat(after.leader().orElseThrow().option().id()).isEqualTo("bracket-piles");
    assertThat(after.tiedWithLeader()).isEmpty();
  }

  @Test
  void whatever_a_student_asks_for_is_sound_at_every_later_stage_or_refused() {
    int told = 0;
    for (CaseStudy study : Cases.all()) {
      for (FactPlace place : study.stages().get(2).places()) {
        ClassFile file = Cases.classOf(study, 0);
        ClassDesk desk = new ClassDesk(file, Map.of(study.name(), study), CONSULTANT.pack());
        String zone = place.zone().isEmpty() ? study.full().zones().get(0).name() : place.zone();
        if (desk.ask("Ada", study.name(), zone, place.fact()) instanceof Doing.Done done) {
          told++;
          Set<FactPlace> asked = done.file().askedBy("Ada", study.name());
          for (int open = 0; open < study.stages().size(); open++) {
            assertThat(study.known(open, asked).zones()).isNotEmpty();
          }
        }
      }
    }
    assertThat(told).isGreaterThan(50);
  }

  @Test
  @DisplayName("Asking does not tell a surprise apart from what nobody ever finds out")
  void a_surprise_is_not_asked_out() {
    CaseStudy study = Cases.of("heron-gate");
    String early = refusal(study, 0, "obstructions").replace("Boulders and old works", "X");
    assertThat(refusal(study, 0, "uplift").replace("Uplift", "X")).isEqualTo(early);
    // once it is believed it is known, as everybody thinks
    assertThat(refusal(study, 2, "obstructions")).contains("known already");
  }

  private static String refusal(CaseStudy study, int open, String fact) {
    ClassDesk desk =
        new ClassDesk(Cases.classOf(study, open), Map.of(study.name(), study), CONSULTANT.pack());
    Doing doing = desk.ask("Ada", study.name(), "", fact);
    return String.join(" ", ((Doing.Refused) doing).problems());
  }

  @Test
  void every_question_can_be_answered_by_the_program() {
    for (CaseStudy study : Cases.all()) {
      for (Question question : study.file().questions()) {
        assertThat(QUESTIONS.of(study, question))
            .as(study.name() + " " + question.id())
            .isNotInstanceOf(Reckoned.Nothing.class);
      }
    }
  }

  @Test
  @DisplayName("By hand: Bracken Lane's piers go 3.3 m - 1.1 m = 2.2 m below the footing")
  void pier_depth_by_hand() {
    CaseStudy study = Cases.of("bracken-lane");
    Reckoned depth = QUESTIONS.of(study, study.question("pit-depth").orElseThrow());
    assertThat(((Reckoned.Amount) depth).si()).isCloseTo(2.2, within(1e-9));
  }

  @Test
  @DisplayName("By hand, M = P L / 4: 0.6 × 1.15 × 820 kN × 8 m / 4 = 1131.6 kN·m")
  void needle_moment_by_hand() {
    CaseStudy study = Cases.of("mercer-hall");
    Question question = study.question("needle-moment").orElseThrow();
    double reckoned = ((Reckoned.Amount) QUESTIONS.of(study, question)).si();
    // the sheet adds the weight of the beam, which the question leaves out: its tolerance covers it
    assertThat(Math.abs(1131.6 - reckoned)).isLessThan(reckoned * question.tolerance() / 100);
    assertThat(QuestionMarker.mark(question, "1131.6 kNm", QUESTIONS.of(study, question)).points())
        .isEqualTo(Rubric.QUESTION);
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.api.Assertions.within(offset);
  }
}
