package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail.PitRound;
import underhold.sizing.StageRole;

/** Legal and broken sequences. Own cases, reasoned in words. */
class SequenceTest {
  /** Ten pits of 1 m, 10 m of wall, a quarter of which may be open, three widths kept clear. */
  private static final Reckoned.Rounds TEN = rounds(10, 2.5);

  private static Reckoned.Rounds rounds(int pits, double mayBeOpen) {
    List<PitRound> rounds = new ArrayList<>();
    for (int pit = 1; pit <= pits; pit++) {
      rounds.add(new PitRound(List.of(pit), List.of(1.0), pits, mayBeOpen, 1, 1, 1));
    }
    return new Reckoned.Rounds(rounds, 3, "a source");
  }

  private static Optional<String> broken(String typed, Reckoned.Rounds sheet) {
    return Sequence.broken(Sequence.rounds(typed).orElseThrow(), sheet);
  }

  @Test
  @DisplayName("Pits 1 and 5 have three pits of soil between them: three widths are kept")
  void legal_rounds() {
    assertThat(broken("1 5 / 2 6 / 3 7 / 4 8 / 9 / 10", TEN)).isEmpty();
    assertThat(broken("10/9/8/7/6/5/4/3/2/1", TEN)).isEmpty();
  }

  @Test
  void neighbours_may_not_be_open_together() {
    assertThat(broken("1 2 / 3 7 / 4 8 / 5 9 / 6 10", TEN))
        .hasValueSatisfying(text -> assertThat(text).contains("1 and 2", "neighbours"));
  }

  @Test
  @DisplayName("Pits 1 and 4 have two pits of soil between them: less than three widths")
  void too_close() {
    assertThat(broken("1 4 / 2 6 / 3 7 / 5 9 / 8 / 10", TEN))
        .hasValueSatisfying(text -> assertThat(text).contains("2.00 m", "3.00 m", "a source"));
  }

  @Test
  @DisplayName("Three pits of 1 m are more than the 2.5 m that may be open, however far apart")
  void too_much_open() {
    assertThat(broken("1 5 9 / 2 6 / 3 7 / 4 8 / 10", TEN))
        .hasValueSatisfying(text -> assertThat(text).contains("3.00 m", "2.50 m"));
  }

  @Test
  void every_pit_is_dug_once() {
    assertThat(broken("1 5 / 2 6 / 3 7 / 4 8 / 9", TEN)).isPresent();
    assertThat(broken("1 5 / 1 6 / 2 / 3 7 / 4 8 / 9 / 10", TEN)).isPresent();
    assertThat(broken("1 5 / 2 6 / 3 7 / 4 8 / 9 / 11", TEN)).isPresent();
  }

  @Test
  void what_is_no_sequence_is_told_apart() {
    assertThat(Sequence.rounds("one and five")).isEmpty();
    assertThat(Sequence.rounds("1 5 //")).isEmpty();
    assertThat(Sequence.rounds("1,5 / 2,6")).contains(List.of(List.of(1, 5), List.of(2, 6)));
    assertThat(Sequence.letters("b, a c")).contains(List.of(1, 0, 2));
    assertThat(Sequence.letters("1 2 3")).isEmpty();
  }

  private static Stage stage(StageRole role, String title) {
    return new Stage(role, title, List.of(), List.of());
  }

  /** Under the letters a: Dig, b: Dig deeper, c: Drill, d: Load, e: Survey. */
  private static final Reckoned.Order ORDER =
      new Reckoned.Order(
          List.of(
              stage(StageRole.PREPARE, "Survey"),
              stage(StageRole.DRILL, "Drill"),
              stage(StageRole.LOAD, "Load"),
              stage(StageRole.DIG, "Dig"),
              stage(StageRole.DIG, "Dig deeper")));

  private static Optional<String> order(String typed) {
    return Sequence.broken(Sequence.letters(typed).orElseThrow(), ORDER);
  }

  @Test
  void the_order_of_works() {
    assertThat(order("e c d a b")).isEmpty();
    assertThat(order("e c a d b"))
        .hasValueSatisfying(text -> assertThat(text).contains("before its load stands"));
    assertThat(order("c e d a b")).hasValueSatisfying(text -> assertThat(text).contains("Survey"));
    assertThat(order("e c d b a"))
        .hasValueSatisfying(text -> assertThat(text).contains("level by level"));
    assertThat(order("e c d a")).isPresent();
    assertThat(order("e c d a z")).isPresent();
  }

  @Test
  @DisplayName("The order of the program's own sheets is legal, and shuffled rounds of pits too")
  void own_order_is_legal() {
    List<Stage> stages = new ArrayList<>(ORDER.stages());
    stages.add(2, stage(StageRole.PITS, "Pits, round 1"));
    stages.add(3, stage(StageRole.PITS, "Pits, round 2"));
    Reckoned.Order order = new Reckoned.Order(stages);
    assertThat(Sequence.broken(places(order, stages), order)).isEmpty();
    Collections.swap(stages, 2, 3);
    assertThat(Sequence.broken(places(order, stages), order)).isEmpty();
  }

  private static List<Integer> places(Reckoned.Order order, List<Stage> stages) {
    return stages.stream().map(order.lettered()::indexOf).toList();
  }

  @Test
  @DisplayName(
      "Against pairs reckoned one by one: random rounds are refused just where a pair is too close")
  void random_rounds() {
    Random random = new Random(7);
    Reckoned.Rounds sheet = rounds(12, 100); // the share never governs
    for (int trial = 0; trial < 500; trial++) {
      List<Integer> pits = new ArrayList<>();
      for (int pit = 1; pit <= 12; pit++) {
        pits.add(pit);
      }
      Collections.shuffle(pits, random);
      List<List<Integer>> rounds = new ArrayList<>();
      for (int i = 0; i < 12; i += 2) {
        rounds.add(pits.subList(i, i + 2));
      }
      // with pits of 1 m three must stand between: numbers differ by four at least
      boolean legal = rounds.stream().allMatch(round -> Math.abs(round.get(0) - round.get(1)) >= 4);
      assertThat(Sequence.broken(rounds, sheet).isEmpty()).isEqualTo(legal);
    }
  }
}
