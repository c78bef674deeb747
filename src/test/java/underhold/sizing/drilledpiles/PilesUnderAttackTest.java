package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.BOX;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.WALL;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;
import underhold.sizing.Verdict;

/** Own cases of what a sheet of piles must not let pass. */
class PilesUnderAttackTest {
  private static final String SOFT =
      with(COLUMN, "\"stiff-clay\"", "\"soft-clay\"")
          .replace("\"120 kPa\"", "\"25 kPa\"")
          .replace(
              "\"25 kPa\" } ] }",
              "\"25 kPa\" }, { \"top\": \"14 m\", \"soil\": \"stiff-clay\", \"unitWeight\": \"20 kN/m3\", \"undrainedStrength\": \"150 kPa\" } ] }");

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static List<String> work(Sheet sheet) {
    return sheet.stages().stream()
        .map(Stage::work)
        .flatMap(List::stream)
        .map(one -> one.in(UnitSystem.SI))
        .toList();
  }

  @Test
  @DisplayName(
      "In soft clay a bared pile is held 3.048 m (10 ft, IBC 1810.2.1) below the dug 5.5 m: the casing goes there, and side resistance counts below")
  void casing_reaches_the_depth_at_which_the_column_is_held() {
    Sheet sheet = size(SOFT, "boring-depth=60 m");
    assertThat(step(sheet, "fixity")).isCloseTo(3.048, within(1e-9));
    assertThat(work(sheet)).anyMatch(one -> one.contains("casing from the cap to 8.548 m"));
    assertThat(work(size(SOFT, "boring-depth=60 m", "bared=no")))
        .anyMatch(one -> one.contains("casing from the cap to 7.024 m")); // 5.5 + 1.524
  }

  @Test
  @DisplayName("All jacks together lift the stated load, never the allowances of the design load")
  void jacks_never_lift_more_than_there_is() {
    for (String site : List.of(COLUMN, WALL, BOX)) {
      Sheet sheet = size(site, "boring-depth=60 m");
      double stated = step(sheet, "total-load") / 1.1;
      double piles =
          sheet.step("jack-share").orElseThrow().formula().symbols().get(1).amount().si();
      assertThat(step(sheet, "jack-100") * piles).isCloseTo(stated, withPercentage(1e-9));
      assertThat(step(sheet, "lock-off") * piles).isLessThanOrEqualTo(stated * (1 + 1e-9));
    }
  }

  @Test
  @DisplayName("A pile in a group carries the group's factor of what it carries alone")
  void the_pile_loaded_most_is_checked_with_the_factor_of_its_group() {
    boolean caught = false;
    for (int piles = 4; piles <= 12; piles += 2) {
      Sheet sheet = size(COLUMN, "boring-depth=60 m", "piles=" + piles, "longest-embedment=12 m");
      Check alone = check(sheet, "pile-bond");
      Check inGroup = check(sheet, "pile-in-group");
      assertThat(inGroup.capacity().si())
          .isCloseTo(step(sheet, "group-factor") * alone.capacity().si(), withPercentage(1e-9));
      assertThat(inGroup.demand().si()).isEqualTo(alone.demand().si());
      caught |= alone.verdict() == Verdict.PASSES && inGroup.verdict() == Verdict.FAILS;
    }
    assertThat(caught).as("a group in which only this check fails").isTrue();
  }

  @Test
  void what_pushes_piles_sideways_is_named_until_nothing_does() {
    assertThat(check(size(COLUMN), "sideways").verdict()).isEqualTo(Verdict.REFER);
    String calm =
        with(
            COLUMN,
            "\"obstructions\": \"none\"",
            "\"obstructions\": \"none\", \"lateralDemand\": \"low\", \"excavationWall\": \"stiff\"");
    assertThat(check(size(calm), "sideways").verdict()).isEqualTo(Verdict.PASSES);
    String pushed = with(calm, "\"lateralDemand\": \"low\"", "\"lateralDemand\": \"high\"");
    assertThat(check(size(pushed), "sideways").note().in(UnitSystem.SI)).contains("high");
    String open = with(calm, "\"stiff\"", "\"flexible\"");
    assertThat(check(size(open), "sideways").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void a_footing_whose_width_nobody_knows_is_asked_for() {
    Sheet sheet = size(with(COLUMN, "\"footingWidth\": \"2 m\",", ""));
    assertThat(sheet.complete()).isFalse();
    assertThat(sheet.missing()).anyMatch(one -> one.name().equals("footingWidth"));
  }
}
