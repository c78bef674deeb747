package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.WALL;
import static underhold.sizing.drilledpiles.Piles.over;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** What governs number, length and section of drilled piles; own cases worked by hand. */
class PileDesignByHandTest {
  private static final List<String> SECTION =
      List.of("pile-structure", "pile-bared", "pile-bond", "pile-in-group", "group-loss");

  private static final String ROCK =
      over(
          "{ \"top\": \"9 m\", \"soil\": \"rock\", \"unitWeight\": \"25 kN/m3\", \"unconfinedStrength\": \"50 MPa\", \"rqd\": \"95 %\" }");

  private static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  private static double symbol(Sheet sheet, String id, String sign) {
    return sheet.step(id).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " has no " + sign))
        .amount()
        .si();
  }

  private static double quantity(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  /** Whether all that the number of piles answers for passes. */
  private static boolean holds(Sheet sheet) {
    return SECTION.stream().allMatch(id -> check(sheet, id).verdict() == Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "Own case: sockets in strong rock carry more than the casing: the number of piles is the least at which the section holds, whole and with one pile lost")
  void fewest_piles_that_the_section_allows() {
    for (String load : List.of("3000 kN", "6000 kN", "9000 kN")) {
      String json =
          with(ROCK, "1200 kN", load)
              .replace("\"bracingRoom\": \"yes\"", "\"bracingRoom\": \"no\"");
      Sheet sheet = size(json);
      int piles = (int) Math.round(quantity(sheet, "piles") / 2);
      assertThat(piles).as(load).isGreaterThan(4);
      assertThat(holds(sheet)).as(load).isTrue();
      assertThat(holds(size(json, "piles=" + (piles - 2)))).as(load).isFalse();
    }
  }

  @Test
  @DisplayName(
      "own hand calculation: tested piles of a wall, F 2.0: the end pile with a needle lost, 1.5 x 2 P, asks for more than 2.0 P")
  void a_needle_lost_governs_the_length() {
    Sheet sheet = size(WALL, "needle-spacing=2 m", "boring-depth=60 m", "test-regime=static");
    double load = 150 * 2 * 1.1 * (0.5 + 0.075 / 3.1);
    double metre = Math.PI * 0.244475 * 66;
    double needed = 1.5 * 2 * load / metre + 1.524 + 0.244475;
    assertThat(step(sheet, "embedment")).isBetween(needed, needed + 0.25);
    assertThat(check(sheet, "pile-bond").capacity().si())
        .isCloseTo((step(sheet, "embedment") - 1.768475) * metre / 2, withPercentage(0.01));
    // half of it on a neighbour: 1.5 x 1.5 P
    Sheet half =
        size(
            WALL,
            "needle-spacing=2 m",
            "boring-depth=60 m",
            "test-regime=static",
            "loss-share-wall=0.5");
    double less = 1.5 * 1.5 * load / metre + 1.524 + 0.244475;
    assertThat(step(half, "embedment")).isBetween(less, less + 0.25);
  }

  @Test
  @DisplayName(
      "International Building Code 1810.2.1: soft clay from 3.6 to 4.4 m lies below the 3.5 m dug for the first brace: held 10 ft deep; a layer that ends at the dug level counts no more")
  void soft_ground_of_a_stage_counts() {
    String firm = with(COLUMN, "\"fill\"", "\"stiff-clay\"");
    assertThat(step(size(firm), "fixity")).isEqualTo(1.524);
    assertThat(step(size(seam(firm, "3.6 m", "4.4 m")), "fixity")).isEqualTo(3.048);
    // above the first stage's dug level, and below what 5 ft reach: none
    assertThat(step(size(seam(firm, "2.6 m", "3.5 m")), "fixity")).isEqualTo(1.524);
    assertThat(step(size(seam(firm, "5.1 m", "5.5 m")), "fixity")).isEqualTo(1.524);
    assertThat(step(size(seam(firm, "5.1 m", "5.6 m")), "fixity")).isEqualTo(3.048);
  }

  private static String seam(String json, String top, String bottom) {
    return with(
        json,
        "\"120 kPa\" } ] }",
        "\"120 kPa\" }, { \"top\": \""
            + top
            + "\", \"soil\": \"soft-clay\", \"undrainedStrength\": \"20 kPa\" }, { \"top\": \""
            + bottom
            + "\", \"soil\": \"stiff-clay\", \"unitWeight\": \"20 kN/m3\", \"undrainedStrength\": \"120 kPa\" } ] }");
  }

  @Test
  @DisplayName(
      "own hand calculation: a cap 0.5 m above the underside of the footing: casing from 1.0 m to 7.024 m")
  void caps_above_the_underside() {
    Sheet sheet = size(COLUMN, "head-above-footing=0.5 m");
    assertThat(quantity(sheet, "casing, length") / quantity(sheet, "piles"))
        .isCloseTo(6.024, within(1e-6));
  }

  @Test
  @DisplayName(
      "judgement of the method: bars at most an eighth of the socket of 196.8 mm: 3,802 mm2")
  void bounds_of_the_section() {
    Sheet bars = size(COLUMN, "small-bar-area=10000 mm2");
    assertThat(symbol(bars, "strength-uncased", "Ab"))
        .isCloseTo(Math.PI / 4 * 0.196789 * 0.196789 / 8, withPercentage(0.01));
    Sheet some = size(COLUMN, "small-bar-area=3000 mm2");
    assertThat(symbol(some, "strength-uncased", "Ab")).isCloseTo(0.003, within(1e-9));
  }

  @Test
  void rows_beside_a_slab_without_a_rig_outside_reach_no_side() {
    String json =
        with(
            Piles.BOX,
            "\"insideAccess\": \"small-rig\"",
            "\"insideAccess\": \"hand\", \"drillingFromAbove\": \"no\", \"rigBothSides\": \"yes\"");
    Sheet sheet =
        size(
            with(
                json,
                "\"outsideAccess\": \"none\"",
                "\"outsideAccess\": \"hand\", \"outsideHeadroom\": \"12 m\""));
    assertThat(check(sheet, "rig-access").demand().si()).isEqualTo(2);
    assertThat(check(sheet, "rig-access").capacity().si()).isZero();
    assertThat(check(sheet, "rig-access").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void the_ground_of_the_socket_and_of_the_group_is_named() {
    Sheet rock = size(ROCK);
    StepProof.redo(rock);
    String sand =
        with(
            COLUMN,
            "\"stiff-clay\", \"unitWeight\": \"20 kN/m3\", \"undrainedStrength\": \"120 kPa\"",
            "\"dense-sand\", \"unitWeight\": \"20 kN/m3\", \"n60\": \"40\"");
    Sheet group = size(sand, "boring-depth=60 m");
    StepProof.redo(group);
    assertThat(group.step("group-factor").orElseThrow().note().template())
        .isEqualTo("Sand, older edition.");
    assertThat(group.step("group-factor").orElseThrow().formula().siText()).contains("1.5");
    assertThat(size(COLUMN).step("group-factor").orElseThrow().formula().siText()).contains("3.5");
  }

  @Test
  @DisplayName(
      "own hand calculation: factor at 0.75 m of 0.244475 m: 0.65 + 0.35 (3.068 - 2.5) / 3.5 = 0.7068 (clay)")
  void factor_of_the_group() {
    assertThat(step(size(COLUMN), "group-factor"))
        .isCloseTo(0.65 + 0.35 * (0.75 / 0.244475 - 2.5) / 3.5, within(1e-6));
  }
}
