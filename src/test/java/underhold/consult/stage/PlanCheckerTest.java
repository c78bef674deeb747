package underhold.consult.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;

/** Plans of a few stages, drawn by hand, each sound or wrong in one thing. */
class PlanCheckerTest {
  private static final Place WALL = Place.of("wall", "the structure");
  private static final Place PIT_1 = new Place("wall", "pit 1", 1, 1.2);
  private static final Place PIT_2 = new Place("wall", "pit 2", 2, 1.2);
  private static final Place PIT_5 = new Place("wall", "pit 5", 5, 1.2);
  private static final Support PILES = new Support("piles", List.of(WALL), false);
  private static final Support NEEDLES = new Support("needles", List.of(WALL), true);
  private static final Support FOOTING = new Support("new footing", List.of(WALL), false);

  private static PlanStage stage(String id, Moves moves, String... after) {
    return stage(id, moves, List.of(hold("engineer of record")), after);
  }

  private static PlanStage stage(String id, Moves moves, List<HoldPoint> holds, String... after) {
    return new PlanStage(
        id,
        "wall",
        Optional.empty(),
        StageKind.BUILD,
        id,
        List.of(),
        holds,
        moves,
        List.of(after).stream().map(one -> new Link(one, "")).toList(),
        new StageTime(1, "own case"),
        List.of(),
        List.of(),
        List.of());
  }

  private static HoldPoint hold(String by) {
    return new HoldPoint(Phrase.of("seen"), by);
  }

  private static Moves undermining(Place place) {
    return new Moves(List.of(place), List.of(), List.of(), List.of());
  }

  private static Moves pit(Place... pits) {
    return new Moves(
        List.of(),
        List.of(pits),
        List.of(new Support("piers " + List.of(pits), List.of(pits), false)),
        List.of());
  }

  private static List<String> problems(PlanStage... stages) {
    return PlanChecker.problems(List.of(stages), List.of());
  }

  @Test
  void a_dig_after_accepted_piles_holds() {
    assertThat(
            problems(
                stage("load", Moves.accepting(PILES)), stage("dig", undermining(WALL), "load")))
        .isEmpty();
  }

  @Test
  void a_dig_that_may_come_before_the_piles_is_refused() {
    assertThat(
            problems(
                stage("survey", Moves.NONE),
                stage("load", Moves.accepting(PILES), "survey"),
                stage("dig", undermining(WALL), "survey")))
        .singleElement()
        .asString()
        .startsWith("dig takes the ground from below the structure of wall");
  }

  @Test
  void needles_go_only_once_the_new_footing_carries() {
    PlanStage load = stage("load", Moves.accepting(NEEDLES));
    PlanStage dig = stage("dig", undermining(WALL), "load");
    PlanStage footing = stage("footing", Moves.accepting(FOOTING), "dig");
    assertThat(
            problems(
                load, dig, footing, stage("draw", Moves.removing(List.of(NEEDLES)), "footing")))
        .isEmpty();
    assertThat(problems(load, dig, footing, stage("draw", Moves.removing(List.of(NEEDLES)), "dig")))
        .singleElement()
        .asString()
        .contains("draw takes away needles and nothing else is sure to carry");
  }

  @Test
  void two_supports_that_stand_in_for_each_other_do_not_both_go() {
    Support other = new Support("other needles", List.of(WALL), true);
    List<String> problems =
        problems(
            stage("load", Moves.accepting(NEEDLES)),
            stage("load other", Moves.accepting(other), "load"),
            stage("dig", undermining(WALL), "load other"),
            stage("draw", Moves.removing(List.of(NEEDLES)), "dig"),
            stage("draw other", Moves.removing(List.of(other)), "dig"));
    assertThat(problems).isNotEmpty().allMatch(text -> text.contains("sure to carry"));
  }

  @Test
  void what_was_never_accepted_cannot_be_taken_away() {
    assertThat(problems(stage("draw", Moves.removing(List.of(NEEDLES)))))
        .anyMatch(text -> text.contains("takes away needles, not accepted before it"));
  }

  @Test
  void temporary_works_are_taken_away_once() {
    assertThat(problems(stage("load", Moves.accepting(NEEDLES))))
        .containsExactly("needles is temporary and is taken away 0 times");
  }

  @Test
  void neighbours_are_never_open_together() {
    assertThat(problems(stage("one", pit(PIT_1)), stage("two", pit(PIT_2), "one"))).isEmpty();
    assertThat(problems(stage("one", pit(PIT_1)), stage("two", pit(PIT_2))))
        .anyMatch(text -> text.contains("may be open beside an open neighbour"));
    assertThat(problems(stage("both", pit(PIT_1, PIT_2))))
        .anyMatch(text -> text.contains("may be open beside an open neighbour"));
  }

  @Test
  void the_open_share_counts_all_that_may_go_on_together() {
    OpenLimit quarter = new OpenLimit("wall", 2.4, 9.6);
    List<PlanStage> together = List.of(stage("one", pit(PIT_1)), stage("five", pit(PIT_5)));
    assertThat(PlanChecker.problems(together, List.of(quarter))).isEmpty(); // 1.2 + 1.2 = 2.4 m
    OpenLimit less = new OpenLimit("wall", 2.3, 9.6);
    assertThat(PlanChecker.problems(together, List.of(less)))
        .anyMatch(text -> text.contains("opens more of wall than may be open at once"));
    OpenLimit tiny = new OpenLimit("wall", 1.0, 4);
    assertThat(PlanChecker.problems(List.of(stage("one", pit(PIT_1))), List.of(tiny)))
        .as("one pit alone is always allowed: no smaller step exists")
        .isEmpty();
  }

  @Test
  void a_pit_that_no_pier_takes_up_is_refused() {
    Moves open = new Moves(List.of(), List.of(PIT_1), List.of(), List.of());
    assertThat(problems(stage("one", open))).anyMatch(text -> text.contains("leaves pit 1"));
  }

  @Test
  void a_circle_a_lost_stage_and_a_missing_hold_point_are_named() {
    assertThat(problems(stage("a", Moves.NONE, "b"), stage("b", Moves.NONE, "a")))
        .singleElement()
        .asString()
        .contains("in a circle: a, b");
    assertThat(problems(stage("a", Moves.NONE, "x")))
        .containsExactly("a comes after x, which is no stage");
    assertThat(problems(stage("a", Moves.NONE, List.of()))).hasSize(1);
    assertThat(problems(stage("a", Moves.NONE, List.of(hold(" "))))).hasSize(1);
    assertThat(problems(stage("a", Moves.NONE), stage("a", Moves.NONE)))
        .contains("two stages are called a");
  }
}
