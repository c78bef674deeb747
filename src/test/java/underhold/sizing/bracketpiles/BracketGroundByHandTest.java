package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.bracketpiles.PlatformEdge.*;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** The platform edge's piles in the ground, worked by hand. */
class BracketGroundByHandTest {
  @Test
  @DisplayName(
      "own hand calculation: three lengths of 1.50 m below 0.9 m give 5.5 m; half of an 8 m pile 5.1 m; 3.5 + 3 m just 6.5 m")
  void bottom_of_the_casing() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    assertThat(noted(sheet, "pile-bond", "f")).isCloseTo(5.5, within(1e-9));
    assertThat(noted(sheet, "pile-bond", "t")).isCloseTo(8.6, within(1e-9));
    assertThat(check(sheet, "pile-bond").note().template()).contains("boring past the toe");
    assertThat(noted(BracketSites.size(EDGE, FREE, CASING, "longest-pile=8 m"), "pile-bond", "f"))
        .isCloseTo(5.1, within(1e-9));
    assertThat(
            noted(
                BracketSites.size(EDGE, FREE, CASING, "casing-below-subgrade=3 m"),
                "pile-bond",
                "f"))
        .isCloseTo(6.5, within(1e-9));
    String deeper =
        with(
            "\"unitWeight\": \"20 kN/m3\" }",
            "\"unitWeight\": \"20 kN/m3\" }, { \"top\": \"20 m\", \"soil\": \"rock\" }");
    assertThat(check(BracketSites.size(deeper, FREE, CASING), "pile-bond").note().template())
        .doesNotContain("boring past the toe");
  }

  @Test
  @DisplayName(
      "Broms 1964: 3 x 32.92 kN m: clay 1.5 b + sqrt(M / (2.25 su b)) = 1.92 m; loose sand cbrt(2 M / (9.19 b 2.77)) = 3.52 m; rock and no moment ask nothing")
  void least_length_in_the_ground() {
    String[] stiff = {FREE, CASING, "soil-reaction=300 MPa", "lateral-factor=3"};
    double moment = 3 * 108 * 0.3048;
    double springs = 3 * Math.pow(4 * BENDING / 150_000, 0.25);
    assertThat(springs).isLessThan(1.75);
    double clay = 1.5 * OUTSIDE + Math.sqrt(moment / (2.25 * 90 * OUTSIDE));
    assertThat(check(BracketSites.size(EDGE, stiff), "sideways-resistance").demand().si())
        .isCloseTo(clay, withPercentage(0.1));
    double passive = Math.pow(Math.tan(Math.toRadians(45 + 28 / 2.0)), 2);
    double sand = Math.cbrt(2 * moment / ((19 - 9.81) * OUTSIDE * passive));
    assertThat(ground("loose-sand", stiff)).isCloseTo(sand, withPercentage(0.1));
    assertThat(ground("rock", stiff)).isCloseTo(springs, withPercentage(0.1));
    assertThat(
            check(BracketSites.size(EDGE, "moment-path=paired", CASING), "sideways-resistance")
                .demand()
                .si())
        .isZero();
  }

  private static double ground(String soil, String... settings) {
    String other =
        EDGE.replace("\"stiff-clay\"", "\"" + soil + "\"")
            .replace(", \"undrainedStrength\": \"90 kPa\"", "");
    return check(BracketSites.size(other, settings), "sideways-resistance").demand().si();
  }

  @Test
  @DisplayName(
      "Bjerrum and Mascardi: the pile in clay of 6,030 kPa buckles at 2 sqrt(6,030 EI) / 2.12 = 4.5 MN")
  void buckling_load() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    assertThat(noted(sheet, "soft-ground-buckling", "p"))
        .isCloseTo(2 * Math.sqrt(67 * 90 * BENDING) / 2.12, withPercentage(0.1));
    assertThat(check(sheet, "soft-ground-buckling").verdict()).isEqualTo(Verdict.PASSES);
    String peat = with("\"dense-sand\"", "\"peat\"").replace("60 kN/m", "600 kN/m");
    // 1,080 kN against 2 sqrt(500 x 3,834) / 2.12 = 1,306; 2,160 kN is beyond it
    assertThat(check(BracketSites.size(peat, FREE, CASING), "soft-ground-buckling").verdict())
        .isEqualTo(Verdict.REFER);
    assertThat(
            check(
                    BracketSites.size(peat.replace("600 kN/m", "1200 kN/m"), FREE, CASING),
                    "soft-ground-buckling")
                .verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "Hetenyi: M exp(-x)(cos x + sin x) falls to the thread's moment at depth x lc; a bared pile adds its bare length")
  void depth_from_which_a_joint_holds() {
    for (String site : List.of(EDGE, bared())) {
      boolean bare = !site.equals(EDGE);
      Sheet sheet = BracketSites.size(site, FREE, CASING, "first-joint=0.5 m");
      double moment = 108 * 0.3048;
      double ratio = check(sheet, "casing-joint").capacity().si() / moment;
      assertThat(ratio).isBetween(0.01, 0.99);
      double low = 0;
      double high = 2;
      for (int i = 0; i < 60; i++) {
        double x = (low + high) / 2;
        boolean above = Math.exp(-x) * (Math.cos(x) + Math.sin(x)) > ratio;
        low = above ? x : low;
        high = above ? high : x;
      }
      double scale = Math.pow(4 * BENDING / (0.5 * 67 * 90), 0.25);
      assertThat(noted(sheet, "casing-joint", "z"))
          .isCloseTo((bare ? 2.6 : 0) + low * scale, withPercentage(0.1));
    }
  }

  @Test
  @DisplayName(
      "own hand calculation: lc 1.263 m: from 0.3 m in pieces of 0.7 m two joints; from 2.6 m none; bared 2.6 m from 1 m two")
  void joints_near_the_head() {
    String low = with("\"4 m\"", "\"2.1 m\"");
    assertThat(
            noted(BracketSites.size(low, FREE, CASING, "first-joint=0.3 m"), "casing-joint", "n"))
        .isEqualTo(2);
    assertThat(noted(BracketSites.size(EDGE, FREE, CASING), "casing-joint", "n")).isZero();
    assertThat(
            noted(BracketSites.size(bared(), FREE, CASING, "first-joint=1 m"), "casing-joint", "n"))
        .isEqualTo(2);
    // 3.2 m of sleeve over a first joint at 1 m: the next, 2.6 m lower
    Sheet sleeved = BracketSites.size(EDGE, FREE, CASING, "first-joint=1 m", "sleeve-length=3.2 m");
    assertThat(noted(sleeved, "casing-joint", "d")).isCloseTo(3.6, within(1e-9));
    // a sleeve that just reaches the next joint covers no more than it
    Sheet just = BracketSites.size(EDGE, FREE, CASING, "first-joint=1 m", "sleeve-length=3.6 m");
    assertThat(noted(just, "casing-joint", "d")).isCloseTo(3.6, within(1e-9));
  }

  @Test
  @DisplayName(
      "statics: a bared pile turns over 2.6 m, with one brace over 4/3 x 1.3 m, with two over 4/3 x 0.867 m")
  void turning_length() {
    assertThat(symbol(BracketSites.size(bared(), FREE, CASING), "head-rotation", "H"))
        .isCloseTo(2.6, within(1e-9));
    assertThat(
            symbol(
                BracketSites.size(bared(), FREE, CASING, "brace-levels=1"), "head-rotation", "H"))
        .isCloseTo(1.3 * 4 / 3, within(1e-9));
    assertThat(
            symbol(
                BracketSites.size(bared(), FREE, CASING, "brace-levels=2"), "head-rotation", "H"))
        .isCloseTo(2.6 / 3 * 4 / 3, within(1e-9));
  }
}
