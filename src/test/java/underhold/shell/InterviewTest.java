package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import underhold.consult.Consultant;
import underhold.quantity.UnitSystem;
import underhold.shell.Question.Topic;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.Site;

/** The course of an interview, scripted; the site is our own case. */
class InterviewTest {
  private static final Consultant CONSULTANT = Consultant.standard();

  private static final Map<String, String> ANSWERS =
      Map.ofEntries(
          Map.entry("loadPattern", "2"),
          Map.entry("excavationPosition", "beside"),
          Map.entry("structureKind", "building wall"),
          Map.entry("gapToExcavation", "1 ft"),
          Map.entry("excavationDepth", "14 ft"),
          Map.entry("foundingDepth", "6 ft"),
          Map.entry("worstSoil", "stiff-clay"),
          Map.entry("groundWaterDepth", "25 ft"),
          Map.entry("movementLimit", "0.4 in"),
          Map.entry("bearingDepth", "10 ft"),
          Map.entry("outsideAccess", "none"),
          Map.entry("investigation", "3"));

  private static Interview fresh() {
    return new Interview(agenda());
  }

  private static Agenda agenda() {
    return new Agenda(CONSULTANT.pack(), CONSULTANT::advise);
  }

  private static String fact(Interview interview) {
    return interview.question().fact().map(FactDefinition::name).orElse("");
  }

  /** Answers by the script, else with the first word or unknown, until a fact or topic comes up. */
  private static List<String> answerUntil(Interview interview, String fact) {
    List<String> asked = new ArrayList<>();
    while (!interview.finished() && !fact(interview).equals(fact)) {
      Question question = interview.question();
      String typed =
          switch (question.topic()) {
            case SITE_NAME -> "Mill Row";
            case ZONE_NAME -> "north wall";
            case FACT -> typed(question.fact().orElseThrow());
            case GO_ON, ANOTHER_ZONE, NONE -> "no";
          };
      asked.add(question.fact().map(FactDefinition::name).orElse(question.topic().name()));
      Reply reply = interview.answer(typed);
      assertThat(reply.kind()).as(asked + " " + reply.text()).isEqualTo(Reply.Kind.TAKEN);
    }
    return asked;
  }

  private static String typed(FactDefinition fact) {
    String scripted = ANSWERS.get(fact.name());
    if (scripted != null) {
      return scripted;
    }
    return fact.kind().isNumber() ? "unknown" : fact.values().get(0).value();
  }

  @Test
  void a_one_zone_site_takes_about_twenty_questions() {
    Interview interview = fresh();

    List<String> asked = answerUntil(interview, "none");

    assertThat(asked.size()).isBetween(14, 30);
    assertThat(asked).startsWith("SITE_NAME", "ZONE_NAME", "loadPattern", "excavationPosition");
    assertThat(asked).endsWith("ANOTHER_ZONE").doesNotHaveDuplicates();
  }

  @Test
  void what_follows_from_other_answers_is_not_asked() {
    Interview interview = fresh();

    assertThat(answerUntil(interview, "none"))
        .contains("excavationDepth", "foundingDepth")
        .doesNotContain("excavationBelowFooting");
  }

  @Test
  void a_depth_that_stays_unknown_is_asked_for_in_another_way() {
    Interview interview = fresh();
    answerUntil(interview, "foundingDepth");
    interview.answer("unknown");

    assertThat(fact(interview)).isEqualTo("excavationBelowFooting");
  }

  @Test
  void after_the_core_only_what_can_decide_is_asked_and_then_the_rest_is_offered() {
    Interview interview = fresh();
    boolean offered = false;
    while (!interview.finished()) {
      Question question = interview.question();
      if (question.open().isPresent()) {
        assertThat(question.open().get().decides()).isTrue();
      }
      offered |= question.topic() == Topic.GO_ON;
      String typed =
          switch (question.topic()) {
            case SITE_NAME, ZONE_NAME -> "name";
            case FACT -> typed(question.fact().orElseThrow());
            case GO_ON, ANOTHER_ZONE, NONE -> "no";
          };
      interview.answer(typed);
    }
    assertThat(offered).isTrue();
  }

  @Test
  void minor_questions_are_asked_on_demand_and_end() {
    Interview interview = fresh();
    int minor = 0;
    while (interview.question().topic() != Topic.ANOTHER_ZONE) {
      Question question = interview.question();
      minor += question.open().filter(open -> !open.decides()).isPresent() ? 1 : 0;
      interview.answer(
          switch (question.topic()) {
            case SITE_NAME, ZONE_NAME -> "name";
            case FACT -> typed(question.fact().orElseThrow());
            case GO_ON, ANOTHER_ZONE, NONE -> "yes";
          });
    }
    assertThat(minor).isPositive();
  }

  @Test
  void the_units_typed_first_come_back() {
    Interview interview = fresh();
    answerUntil(interview, "worstSoil");

    Site site = interview.site().orElseThrow();
    assertThat(site.units()).isEqualTo(UnitSystem.US);
    assertThat(site.facts().get("excavationDepth").value().text()).isEqualTo("14 ft");
  }

  @Test
  void a_wrong_answer_is_explained_and_the_question_stands() {
    Interview interview = fresh();
    answerUntil(interview, "gapToExcavation");
    Site before = interview.site().orElseThrow();

    Reply bare = interview.answer("3");
    assertThat(bare.kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(bare.text()).contains("has no unit");
    assertThat(interview.answer("3 kN").text()).contains("length");
    assertThat(interview.answer("900 m").text()).contains("must lie between");
    assertThat(interview.answer("").kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(fact(interview)).isEqualTo("gapToExcavation");
    assertThat(interview.site()).contains(before);
  }

  @Test
  void a_number_outside_the_list_is_no_choice() {
    Interview interview = fresh();
    answerUntil(interview, "loadPattern");

    assertThat(interview.answer("9").text()).contains("concentrated, continuous");
    assertThat(interview.answer("contin").text()).contains("allowed");
    assertThat(interview.answer("Cantilevered Edge").kind()).isEqualTo(Reply.Kind.TAKEN);
  }

  @Test
  void what_every_zone_needs_cannot_stay_unknown() {
    Interview interview = fresh();
    answerUntil(interview, "loadPattern");

    Reply reply = interview.answer("unknown");

    assertThat(reply.kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(reply.text()).contains("before this is known");
  }

  @Test
  void an_answer_that_contradicts_another_is_refused() {
    Interview interview = fresh();
    answerUntil(interview, "foundingDepth");
    interview.answer("unknown");
    interview.answer("12 ft");
    interview.answer("back");
    interview.answer("back");

    Reply reply = interview.answer("8 ft");

    assertThat(fact(interview)).isEqualTo("foundingDepth");
    assertThat(reply.kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(reply.text()).contains("That cannot be", "back to correct");
  }

  @Test
  void back_shows_the_former_answer_and_keeps_it_on_enter() {
    Interview interview = fresh();
    answerUntil(interview, "gapToExcavation");
    interview.answer("2 ft");

    assertThat(interview.answer("back").kind()).isEqualTo(Reply.Kind.BACK);
    assertThat(fact(interview)).isEqualTo("gapToExcavation");
    assertThat(interview.question().former()).isEqualTo("2 ft");
    interview.answer("back");
    assertThat(fact(interview)).isEqualTo("structureKind");
    interview.answer("tunnel-box");
    assertThat(fact(interview)).isEqualTo("gapToExcavation");
    interview.answer("");

    Site site = interview.site().orElseThrow();
    assertThat(site.facts().get("structureKind").value().text()).isEqualTo("tunnel-box");
    assertThat(site.zones().get(0).facts().get("gapToExcavation").value().text()).isEqualTo("2 ft");
    assertThat(fact(interview)).isEqualTo("excavationDepth");
  }

  @Test
  void back_stops_at_the_first_question() {
    Interview interview = fresh();

    assertThat(interview.answer("back").text()).contains("first question");
    interview.answer("Mill Row");
    interview.answer("back");
    assertThat(interview.question().topic()).isEqualTo(Topic.SITE_NAME);
    assertThat(interview.question().former()).isEqualTo("Mill Row");
  }

  @Test
  void a_later_interview_goes_on_at_the_same_question_and_can_go_back() {
    Interview interview = fresh();
    answerUntil(interview, "groundWaterDepth");
    int number = interview.question().number();

    Interview later = new Interview(agenda(), interview.site().orElseThrow());

    assertThat(fact(later)).isEqualTo("groundWaterDepth");
    assertThat(later.question().number()).isEqualTo(number);
    later.answer("back");
    assertThat(fact(later)).isEqualTo("worstSoil");
  }

  @Test
  void an_unknown_answer_is_not_asked_again() {
    Interview interview = fresh();
    answerUntil(interview, "groundWaterDepth");
    interview.answer("unknown");

    Interview later = new Interview(agenda(), interview.site().orElseThrow());

    assertThat(answerUntil(later, "none")).doesNotContain("groundWaterDepth");
  }

  @Test
  void another_zone_is_asked_only_what_is_its_own() {
    Interview interview = fresh();
    while (interview.question().topic() != Topic.ANOTHER_ZONE) {
      Question question = interview.question();
      interview.answer(
          switch (question.topic()) {
            case SITE_NAME, ZONE_NAME -> "name";
            case FACT -> typed(question.fact().orElseThrow());
            case GO_ON, ANOTHER_ZONE, NONE -> "no";
          });
    }
    assertThat(interview.answer("NAME").text()).contains("already");
    interview.answer("column B4");

    assertThat(interview.question().zoneName()).isEqualTo("column B4");
    assertThat(answerUntil(interview, "none"))
        .startsWith("loadPattern", "excavationPosition")
        .doesNotContain("structureKind", "groundWaterDepth", "SITE_NAME");
  }

  @Test
  void names_that_no_file_can_hold_are_refused() {
    Interview interview = fresh();

    assertThat(interview.answer("").kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(interview.answer("x".repeat(300)).kind()).isEqualTo(Reply.Kind.REFUSED);
    assertThat(interview.question().topic()).isEqualTo(Topic.SITE_NAME);
  }

  @Test
  void a_question_mark_and_stop_are_no_answers() {
    Interview interview = fresh();

    assertThat(interview.answer("?").kind()).isEqualTo(Reply.Kind.EXPLAIN);
    assertThat(interview.answer("Stop").kind()).isEqualTo(Reply.Kind.STOP);
    assertThat(interview.site()).isEmpty();
  }

  @Test
  void yes_and_no_are_taken_in_short() {
    FactDefinition fact =
        underhold.site.FactDictionary.standard().all().stream()
            .filter(f -> f.kind() == FactKind.YES_NO && !f.derived())
            .findFirst()
            .orElseThrow();

    assertThat(AnswerReader.read(fact, "y").fold(v -> v.text(), () -> "", r -> ""))
        .isEqualTo("yes");
    assertThat(AnswerReader.read(fact, "N").fold(v -> v.text(), () -> "", r -> "")).isEqualTo("no");
  }
}
