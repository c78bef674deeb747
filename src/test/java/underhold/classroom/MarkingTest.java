package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.consult.Consultant;

/**
 * Answers with marks made by hand. The reason of each mark stands beside it in words and comes from
 * the rubric and from how engineers would judge the site; no mark was taken from what the code
 * prints.
 */
class MarkingTest {
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final Map<String, CaseStudy> STUDIES = new LinkedHashMap<>();
  private static final Marking MARKING;

  static {
    for (String name :
        List.of(
            "bracken-lane", "larch-terrace", "saltmarsh-store", "weavers-court", "heron-gate")) {
      STUDIES.put(name, Cases.of(name));
    }
    MARKING = new Marking(STUDIES, CONSULTANT);
  }

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
    ClassFile file = Cases.classOf(STUDIES.get(of), STUDIES.get(of).stages().size() - 1);
    for (Answer one : answers) {
      file = file.with(one);
    }
    return MARKING.mark(file).marks();
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
  @DisplayName("Drilled piles where no rig can come are ruled out: no point, and the rule is told")
  void ruled_out() {
    Mark mark =
        marks("bracken-lane", answer("Bo", "bracken-lane", 0, GABLE, "drilled-piles", "", "", ""))
            .get(0);
    assertThat(part(mark, "method")).isZero();
    assertThat(mark.points()).isZero();
    assertThat(String.join(" ", mark.feedback())).contains("hand").contains("DRP-05");
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
  @DisplayName("When not to underpin: watch it; nothing is open, so nothing need be checked first")
  void watch_it() {
    // were the dig under the wall, or the limit a fifth of what it is, the answer would turn: two.
    // the forecast would have to be five times as large, which is far-fetched: it supports, a half.
    Mark mark =
        marks(
                "larch-terrace",
                answer(
                    "Ada",
                    "larch-terrace",
                    3,
                    "end wall",
                    "monitor",
                    "movementLimit,excavationPosition,predictedMovement",
                    "",
                    "services"))
            .get(0);
    assertThat(part(mark, "method")).isEqualTo(3);
    assertThat(part(mark, "deciding facts")).isEqualTo(2.5);
    assertThat(part(mark, "to check first")).isEqualTo(2);
    assertThat(part(mark, "dangers")).isEqualTo(2);
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
    CaseStudy study = STUDIES.get("bracken-lane");
    Answer early = answer("Ada", "bracken-lane", 0, GABLE, "none", "clearSpan", "", "");
    ClassFile file =
        Cases.classOf(study, 0)
            .with(early)
            .with(new Asked("Ada", "bracken-lane", GABLE, "clearSpan", 0, 4));
    assertThat(MARKING.mark(file).marks().get(0).lines().get(1).why())
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
    assertThat(MARKING.mark(file.with(late)).marks().get(0).lines().get(1).why())
        .doesNotContain("not known to you then");
  }

  @Test
  void marking_twice_gives_the_same() {
    Answer one = answer("Ada", "bracken-lane", 0, GABLE, "pits", "loadPattern", "", "services");
    assertThat(
            new Marking(STUDIES, CONSULTANT)
                .mark(Cases.classOf(STUDIES.get("bracken-lane"), 0).with(one)))
        .isEqualTo(MARKING.mark(Cases.classOf(STUDIES.get("bracken-lane"), 0).with(one)));
  }
}
