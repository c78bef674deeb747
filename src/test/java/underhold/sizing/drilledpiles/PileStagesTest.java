package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.WALL;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.with;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** What a crew is told to do, and before what it must wait; reasoned from the words themselves. */
class PileStagesTest {
  private static final String BESIDE =
      with(
          COLUMN,
          "\"excavationPosition\": \"crosses-support\"",
          "\"excavationPosition\": \"beside\", \"gapToExcavation\": \"1.2 m\"");

  private static List<Stage> of(Sheet sheet, StageRole role) {
    return sheet.stages().stream().filter(one -> one.role() == role).toList();
  }

  private static String work(Stage stage) {
    return stage.work().stream().map(one -> one.in(UnitSystem.SI)).collect(Collectors.joining(" "));
  }

  private static String holds(Stage stage) {
    return stage.holdPoints().stream()
        .map(one -> one.condition().in(UnitSystem.SI))
        .collect(Collectors.joining(" "));
  }

  @Test
  @DisplayName("Jacking tells its four steps and what holds for them, nothing that comes after")
  void steps_only() {
    Stage jacking = of(size(COLUMN), StageRole.LOAD).get(0);
    StageDetail.LoadSteps steps = (StageDetail.LoadSteps) jacking.detail();
    assertThat(steps.steps()).hasSize(4);
    assertThat(jacking.work().subList(jacking.work().size() - 4, jacking.work().size()))
        .isEqualTo(steps.steps());
    assertThat(work(jacking))
        .contains("Stop at 2 mm of upward movement")
        .doesNotContainIgnoringCase("prove")
        .doesNotContainIgnoringCase("lock off")
        .doesNotContainIgnoringCase("release")
        .doesNotContainIgnoringCase("packing");
    assertThat(steps.lift().orElseThrow().in(UnitSystem.SI)).isEqualTo("2 mm");
  }

  @Test
  @DisplayName(
      "Proof, lock-off and release come after the steps, each held; the last frees the dig")
  void proof_lock_release() {
    List<Stage> after = of(size(COLUMN), StageRole.LOCK);
    assertThat(after)
        .extracting(Stage::title)
        .containsExactly("Proof of the piles", "Lock-off and packing", "Release of the jacks");
    assertThat(after).allSatisfy(one -> assertThat(one.holdPoints()).isNotEmpty());
    assertThat(holds(after.get(2))).contains("only now", "the ground below it be dug");
    assertThat(holds(after.get(0)) + holds(after.get(1))).doesNotContain("only now");
  }

  @Test
  @DisplayName("Own case, 8 piles under each of 2 columns: no column can be left out")
  void every_column() {
    Sheet sheet = size(COLUMN);
    assertThat(work(of(sheet, StageRole.DRILL).get(0)))
        .contains("each of the 8 piles under each of the 2 columns, 16 in all,");
    assertThat(work(of(sheet, StageRole.LOAD).get(0))).contains("together under one column");
    for (StageRole role : List.of(StageRole.DRILL, StageRole.LOAD, StageRole.LOCK)) {
      assertThat(of(sheet, role))
          .allSatisfy(
              one -> assertThat(holds(one)).containsIgnoringCase("every pile under every column"));
    }
    assertThat(work(of(size(WALL, "needle-spacing=2 m"), StageRole.DRILL).get(0)))
        .contains("Take each of the 14 piles to")
        .doesNotContain("column");
  }

  @Test
  @DisplayName(
      "Beside the structure nobody is told to dig round the piles, but what if soil is lost")
  void beside() {
    Sheet sheet = size(BESIDE);
    List<Stage> digs = of(sheet, StageRole.DIG);
    assertThat(digs).hasSize(1);
    assertThat(work(digs.get(0)))
        .contains("The soil under the footing and around the piles stays", "stop", "fill")
        .doesNotContain("evenly on all sides");
    assertThat(holds(digs.get(0))).contains("no soil is lost from under the footing");
    assertThat(work(of(size(COLUMN), StageRole.DIG).get(0))).contains("evenly on all sides");
    // the sizing is that of bared piles either way
    assertThat(sheet.check("pile-slenderness").orElseThrow().demand())
        .isEqualTo(size(COLUMN).check("pile-slenderness").orElseThrow().demand());
  }

  @Test
  @DisplayName("A hold point asks for bracing only where there is some")
  void bracing() {
    Sheet without = size(with(COLUMN, "\"bracingRoom\": \"yes\"", "\"bracingRoom\": \"no\""));
    assertThat(of(without, StageRole.DIG))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(holds(one)).doesNotContainIgnoringCase("bracing"));
    assertThat(holds(of(size(COLUMN), StageRole.DIG).get(0))).contains("Bracing of this level");
  }

  @Test
  @DisplayName(
      "Own case by hand: gravel below water is cased while drilled, its joints made and broken, and no joint that bends")
  void temporary_casing() {
    String gravel =
        Piles.over(
            "{ \"top\": \"9 m\", \"soil\": \"dense-gravel\", \"unitWeight\": \"20 kN/m3\", \"n60\": 30 }");
    Sheet cased = size(gravel);
    Sheet open = size(gravel, "temporary-casing=none");
    double toe = Piles.step(cased, "embedment") + 5.5;
    // drilled from the cap at 1.5 m with 3.5 m of headroom, 1.37 m of it taken: pieces of 2.13 m
    int stays = (int) Math.ceil((7.024 - 1.5) / 2.13) - 1;
    int all = (int) Math.ceil((toe - 1.5) / 2.13) - 1;
    assertThat(hours(cased) - hours(open)).isCloseTo(2 * (all - stays) * 0.5, within(1e-6));
    assertThat(work(of(cased, StageRole.DRILL).get(0)))
        .contains("Case the hole to", "pull that casing as the concrete rises");
    assertThat(cased.check("casing-joints").orElseThrow().note())
        .isEqualTo(open.check("casing-joints").orElseThrow().note());
    // stiff clay stands open
    assertThat(work(of(size(COLUMN), StageRole.DRILL).get(0))).doesNotContain("Case the hole");
  }

  private static double hours(Sheet sheet) {
    return sheet.time().stream()
        .filter(one -> one.name().equals("one pile"))
        .mapToDouble(one -> one.amount().si())
        .sum();
  }
}
