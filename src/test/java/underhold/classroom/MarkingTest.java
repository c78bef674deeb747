package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.consult.Consultant;

/**
 * Answers with marks made by hand. The reason of each mark stands beside it in words and comes from
 * the rubric and from how engineers would judge the site; no mark was taken from what the code
 * prints.
 */
class MarkingTest {
  private static Answer answer(
      String student,
      String of,
      int stage,
      String zone,
      String method,
      String because,
      String check,
      String danger) {
    return new Answer(
        student,
        of,
        stage,
        0,
        zone,
        method,
        words(because),
        words(check),
        List.of(),
        words(danger));
  }

  private static List<String> words(String typed) {
    return typed.isEmpty() ? List.of() : Arrays.asList(typed.split(","));
  }

  private static List<Mark> marks(String of, Answer... answers) {
    ClassFile file = Cases.classOf(Cases.of(of), Cases.of(of).stages().size() - 1);
    for (Answer one : answers) {
      file = file.with(one);
    }
    return Cases.marked(file).marks();
  }

  private static double part(Mark mark, String part) {
    return mark.lines().stream()
        .filter(line -> line.part().equals(part))
        .findFirst()
        .orElseThrow()
        .points();
  }

  private static final String GABLE = "gable";

  @Test
  @DisplayName(
      "Day one, nothing known of ground and water: no choice, the reasons, the checks and the dangers"
          + " are worth all points")
  void honest_on_day_one() {
    // a continuous load beside the dig speaks for pits, no rig can come for piles: three reasons.
    // Whether a pit would fill hangs on the water and on a layer that runs. People would stand in
    // the pits, and nobody has asked what services lie there.
    Mark mark =
        marks(
                "bracken-lane",
                answer(
                    "Ada",
                    "bracken-lane",
                    0,
                    GABLE,
                    "none",
                    "loadPattern,excavationPosition,outsideAccess",
                    "groundWaterDepth,runningLayer",
                    "people-in-pits,services"))
            .get(0);
    assertThat(part(mark, "method")).isEqualTo(3);
    assertThat(part(mark, "deciding facts")).isEqualTo(3);
    assertThat(part(mark, "to check first")).isEqualTo(2);
    assertThat(part(mark, "dangers")).isEqualTo(2);
    assertThat(mark.points()).isEqualTo(10);
    assertThat(mark.feedback()).hasSizeBetween(1, 3);
    assertThat(mark.feedback().get(0)).contains("PIT-01");
  }

  @Test
  @DisplayName(
      "Day one, the later leader named with one reason and no doubt: a lucky guess, 2 of 10")
  void lucky_guess() {
    Mark mark =
        marks("bracken-lane", answer("Bo", "bracken-lane", 0, GABLE, "pits", "loadPattern", "", ""))
            .get(0);
    assertThat(part(mark, "method")).isEqualTo(1);
    assertThat(part(mark, "deciding facts")).isEqualTo(1);
    assertThat(mark.points()).isEqualTo(2);
  }

  @Test
  @DisplayName("Day one, pits if the water lies low: fair, for it says what the pits wait for")
  void conditional_choice() {
    Mark mark =
        marks(
                "bracken-lane",
                answer("Bo", "bracken-lane", 0, GABLE, "pits", "", "groundWaterDepth", ""))
            .get(0);
    assertThat(part(mark, "method")).isEqualTo(2);
    assertThat(part(mark, "to check first")).isEqualTo(1);
  }

  @Test
  @DisplayName(
      "All known: pits, for the load lies along the wall, the wall bridges a pit, the dig is at its"
          + " foot; a mind changed for the span found is worth a point on top")
  void changed_mind_for_a_reason() {
    List<Mark> marks =
        marks(
            "bracken-lane",
            answer(
                "Ada",
                "bracken-lane",
                0,
                GABLE,
                "none",
                "loadPattern,excavationPosition,outsideAccess",
                "groundWaterDepth,runningLayer",
                "people-in-pits,services"),
            answer(
                "Ada",
                "bracken-lane",
                3,
                GABLE,
                "pits",
                "loadPattern,clearSpan,gapToExcavation",
                "artesian",
                "people-in-pits,movement"),
            answer("Bo", "bracken-lane", 0, GABLE, "pits", "loadPattern", "", ""),
            answer(
                "Bo",
                "bracken-lane",
                3,
                GABLE,
                "pits",
                "loadPattern,clearSpan,gapToExcavation",
                "artesian",
                "people-in-pits,movement"));
    Mark last = marks.get(1);
    assertThat(last.points()).isEqualTo(11);
    assertThat(last.outOf()).isEqualTo(12);
    assertThat(part(last, "changed mind")).isEqualTo(1);
    // the same last answer without a changed mind has no such point, and the guess before it cost
    assertThat(marks.get(3).points()).isEqualTo(10);
    assertThat(marks.get(0).points() + last.points())
        .isGreaterThan(marks.get(2).points() + marks.get(3).points());
  }

  @Test
  @DisplayName("A mind changed without a new fact is told so and is worth nothing on top")
  void changed_without_reason() {
    List<Mark> marks =
        marks(
            "bracken-lane",
            answer("Bo", "bracken-lane", 0, GABLE, "none", "", "", ""),
            answer("Bo", "bracken-lane", 3, GABLE, "pits", "loadPattern", "", ""));
    assertThat(part(marks.get(1), "changed mind")).isZero();
  }

  @Test
  @DisplayName("All known, no choice made: careful, but the facts carry one, 1 of 3")
  void waiting_too_long() {
    Mark mark =
        marks("bracken-lane", answer("Bo", "bracken-lane", 3, GABLE, "none", "", "", "")).get(0);
    assertThat(part(mark, "method")).isEqualTo(1);
  }

  @Test
  @DisplayName("Facts not known yet give nothing, and a long list is cut after five")
  void no_points_for_lists() {
    Mark mark =
        marks(
                "bracken-lane",
                answer(
                    "Bo",
                    "bracken-lane",
                    0,
                    GABLE,
                    "none",
                    "groundWaterDepth,clearSpan,lineLoad,oldPiles,obstructions,loadPattern",
                    "",
                    ""))
            .get(0);
    assertThat(part(mark, "deciding facts")).isZero();
    assertThat(mark.lines().get(1).why()).contains("not known to you then");
  }

  @Test
  @DisplayName("When to refer: the specialist has all points, pits in running sand none")
  void refer() {
    List<Mark> marks =
        marks(
            "saltmarsh-store",
            answer("Ada", "saltmarsh-store", 3, "corner", "refer", "", "", ""),
            answer("Bo", "saltmarsh-store", 3, "corner", "pits", "", "", ""));
    assertThat(part(marks.get(0), "method")).isEqualTo(3);
    assertThat(part(marks.get(1), "method")).isZero();
  }

  @Test
  @DisplayName("Two fair answers: either of a tie has all points for the method")
  void tie() {
    List<Mark> marks =
        marks(
            "weavers-court",
            answer("Ada", "weavers-court", 3, "court wall", "pits", "", "", ""),
            answer("Bo", "weavers-court", 3, "court wall", "bracket-piles", "", "", ""));
    assertThat(part(marks.get(0), "method")).isEqualTo(3);
    assertThat(part(marks.get(1), "method")).isEqualTo(3);
  }

  @Test
  @DisplayName("A boulder in the first pit: from pits to small piles because of it, a point on top")
  void boulder() {
    List<Mark> marks =
        marks(
            "heron-gate",
            answer("Ada", "heron-gate", 3, "mill wall", "pits", "", "", ""),
            answer("Ada", "heron-gate", 4, "mill wall", "bracket-piles", "obstructions", "", ""),
            answer("Bo", "heron-gate", 3, "mill wall", "pits", "", "", ""),
            answer("Bo", "heron-gate", 4, "mill wall", "pits", "", "", ""));
    assertThat(part(marks.get(0), "method")).isEqualTo(3);
    assertThat(part(marks.get(1), "method")).isEqualTo(3);
    assertThat(part(marks.get(1), "changed mind")).isEqualTo(1);
    // one fact of at least three that turn the answer
    assertThat(part(marks.get(1), "deciding facts")).isEqualTo(1);
    // pits are not ruled out by boulders, but no more speaks for them than against them
    assertThat(part(marks.get(3), "method")).isEqualTo(1);
  }

  @Test
  @DisplayName(
      "What was asked for after an answer does not count against it; what was before, does")
  void held_against_what_was_known_then() {
    // that the footing bridges 1.4 m is known only to who asked for it before answering
    CaseStudy study = Cases.of("bracken-lane");
    Answer early = answer("Ada", "bracken-lane", 0, GABLE, "none", "clearSpan", "", "");
    ClassFile file =
        Cases.classOf(study, 0)
            .with(early)
            .with(new Asked("Ada", "bracken-lane", GABLE, "clearSpan", 0, 4));
    assertThat(Cases.marked(file).marks().get(0).lines().get(1).why())
        .contains("not known to you then: clearSpan");
    Answer late =
        new Answer(
            "Ada",
            "bracken-lane",
            0,
            1,
            GABLE,
            "none",
            List.of("clearSpan"),
            List.of(),
            List.of(),
            List.of());
    assertThat(Cases.marked(file.with(late)).marks().get(0).lines().get(1).why())
        .doesNotContain("not known to you then");
  }

  @Test
  @DisplayName(
      "The same marks in any order of the answers, in any language and time zone of the machine")
  void marks_do_not_hang_on_order_or_machine() {
    CaseStudy study = Cases.of("bracken-lane");
    List<Answer> answers =
        new ArrayList<>(
            List.of(
                answer("Ada", study.name(), 0, GABLE, "none", "loadPattern", "", "services"),
                answer("Bo", study.name(), 0, GABLE, "pits", "loadPattern", "", ""),
                answer("Ada", study.name(), 3, GABLE, "pits", "clearSpan", "", "")));
    List<Mark> first = marks(study.name(), answers.toArray(new Answer[0]));
    Locale language = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        Collections.rotate(answers, 1);
        ClassFile file = Cases.classOf(study, 3);
        for (Answer one : answers) {
          file = file.with(one);
        }
        assertThat(
                new Marking(Map.of(study.name(), study), Consultant.standard()).mark(file).marks())
            .isEqualTo(first);
      }
    } finally {
      Locale.setDefault(language);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  @DisplayName("Answered again at one stage: the last counts, the first stays and is told of")
  void answered_again() {
    CaseStudy study = Cases.of("bracken-lane");
    ClassFile file =
        Cases.classOf(study, 0)
            .with(answer("Bo", study.name(), 0, GABLE, "pits", "", "", ""))
            .with(answer("Bo", study.name(), 0, GABLE, "none", "", "", ""));
    assertThat(file.answers()).hasSize(2);
    List<Mark> marks = Cases.marked(file).marks();
    assertThat(marks).hasSize(1);
    assertThat(part(marks.get(0), "method")).isEqualTo(3);
    assertThat(part(marks.get(0), Mark.EARLIER)).isZero();
    assertThat(marks.get(0).lines()).anyMatch(line -> line.why().contains("before it: pits"));
    assertThat(marks.get(0).outOf()).isEqualTo(Rubric.ofZone());
  }

  @Test
  void every_rule_that_asks_for_something_has_a_word_and_no_word_is_stale() {
    List<String> rules =
        ConditionWords.rules(BuiltInPack.pack()).stream().map(rule -> rule.id()).toList();
    assertThat(ConditionWords.named()).containsExactlyInAnyOrderElementsOf(rules);
    assertThat(ConditionWords.of(BuiltInPack.pack()))
        .allSatisfy(one -> assertThat(one.word()).matches("[a-z]+(-[a-z]+)*"));
  }
}
