package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.bracketpiles.PlatformEdge.*;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Seats, anchors, welds and movement of the platform edge, worked by hand. */
class BracketSeatByHandTest {
  @Test
  @DisplayName(
      "own hand calculation: overhang half of 177.8 mm: t 24.6 mm; a seat of 1.2 m overhangs 511 mm; 9 kN still take 0.2 m")
  void seat_plate() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING);
    double pressure = 2 * 108 / (0.1524 * 0.25);
    assertThat(step(sheet, "seat-plate"))
        .isCloseTo(0.0889 * Math.sqrt(2 * pressure * 1.67 / 248_211), withPercentage(0.01));
    Sheet rubble = BracketSites.size(with("strong-concrete", "rubble"), FREE, CASING);
    StepProof.redo(rubble);
    double wide = 2 * 108 / (0.1524 * 1.2);
    assertThat(step(rubble, "seat-pressure")).isCloseTo(wide, withPercentage(0.01));
    assertThat(step(rubble, "seat-plate"))
        .isCloseTo((1.2 - 0.1778) / 2 * Math.sqrt(2 * wide * 1.67 / 248_211), withPercentage(0.01));
    assertThat(rubble.step("seat-allowable")).isEmpty();
    Sheet light = BracketSites.size(with("60 kN/m", "5 kN/m"), FREE, CASING);
    assertThat(step(light, "seat-pressure"))
        .isCloseTo(2 * 9 / (0.1524 * 0.2), withPercentage(0.01));
    assertThat(check(light, "seat-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(light, "seat-bearing").note().template()).startsWith("Open the edge up");
    assertThat(check(rubble, "seat-bearing").note().template()).contains("cast beam or needles");
  }

  @Test
  @DisplayName(
      "own hand calculation: a shift of 0.1 m counts as 0.45 x 152.4 mm: 2 P / (3 x 7.62 mm) = 9,449 kN/m on 1.2 m")
  void seat_loaded_at_its_edge() {
    Sheet sheet = BracketSites.size(EDGE, FREE, "casing=9.625 x 0.545 in", "shim-shift=0.1 m");
    StepProof.redo(sheet);
    assertThat(step(sheet, "seat-pressure"))
        .isCloseTo(2 * 108 / (3 * 0.05 * 0.1524) / 1.2, withPercentage(0.01));
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.FAILS);
    // B/6 exactly is still a whole seat: 2 P / B
    Sheet sixth = BracketSites.size(EDGE, FREE, CASING, "shim-shift=20 mm");
    assertThat(symbol(sixth, "seat-pressure", "es")).isCloseTo(0.020, within(1e-12));
    assertThat(step(sixth, "seat-pressure"))
        .isCloseTo(
            108 / (0.1524 * symbol(sixth, "seat-pressure", "L")) * (1 + 6 * 0.02 / 0.1524),
            withPercentage(0.01));
    // on a column the seat may be longer than any spacing: 200 kN, 2,625 kN/m of 690 kPa
    Sheet column =
        BracketSites.size(
            column().replace("strong-concrete", "rubble"), FREE, CASING, "longest-seat=3 m");
    assertThat(symbol(column, "seat-pressure", "L")).isCloseTo(3, within(1e-9));
    // beside others no longer than their spacing of 1.8 m: 1,417 / 690 = 2.05 m is cut
    Sheet beside =
        BracketSites.size(
            with("strong-concrete", "rubble"), FREE, CASING, "longest-seat=3 m", "spacing=1.8 m");
    assertThat(symbol(beside, "seat-pressure", "L")).isCloseTo(1.8, within(1e-9));
  }

  @Test
  @DisplayName(
      "AISC Manual part 9, prying: 75.94/2 kN, 1.5 x 22.3 mm lever, twice that tributary: 17.8 mm")
  void prying() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=couple", "casing=5.5 x 0.361 in");
    double diameter = Math.sqrt(4 * 0.606 / Math.PI) * INCH;
    double pull = 108 * 0.28575 / 0.4064 / 2;
    // b / p is 1 / 2 whatever the lever
    assertThat(step(sheet, "prying"))
        .isCloseTo(Math.sqrt(6.66 * pull / 2 / 399_896), withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "T")).isCloseTo(pull, withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "b")).isCloseTo(1.5 * diameter, withPercentage(0.05));
    assertThat(symbol(sheet, "prying", "p")).isCloseTo(3 * diameter, withPercentage(0.05));
  }

  @Test
  @DisplayName("ACI 318-19 17.6.2.1.2: the area of a row is no more than that of its anchors apart")
  void anchors_far_apart() {
    Sheet sheet =
        BracketSites.size(EDGE, "moment-path=couple", "anchor-spread=2 m", "anchor-edge=1 m");
    StepProof.redo(sheet);
    assertThat(step(sheet, "breakout-area")).isCloseTo(2, within(1e-9));
    assertThat(step(sheet, "breakout-edge")).isEqualTo(1);
    assertThat(check(sheet, "bracket-anchors").note().template()).contains("breakout of cracked");
    Sheet bolts = BracketSites.size(EDGE, "moment-path=couple", "anchors=through-bolts");
    assertThat(check(bolts, "bracket-anchors").note().template()).contains("plates behind");
  }

  @Test
  @DisplayName("own hand calculation: box weld: P over 2 (b + d), M over b d + d2/3")
  void box_weld() {
    Sheet sheet = BracketSites.size(EDGE, FREE, CASING, "weld=box");
    StepProof.redo(sheet);
    double depth = symbol(sheet, "weld-force", "d");
    double direct = 108 / (2 * (OUTSIDE + depth));
    double bending = 108 * 0.3048 / (OUTSIDE * depth + depth * depth / 3);
    assertThat(step(sheet, "weld-force"))
        .isCloseTo(Math.hypot(direct, bending), withPercentage(0.01));
    assertThat(symbol(sheet, "weld-force", "b")).isCloseTo(OUTSIDE, within(1e-9));
  }

  @Test
  @DisplayName(
      "own hand calculation: the far bar stretches 25.7 kN x (4.6 + 3.1 / 2) / (E 1,452 mm2), times e / L")
  void drop_of_a_pair() {
    Sheet sheet = BracketSites.size(EDGE, "moment-path=paired", "casing=5.5 x 0.361 in");
    double cased = symbol(sheet, "seat-drop", "Lc");
    double bond = symbol(sheet, "seat-drop", "Lb");
    double pull = 108 * 0.28575 / 1.2;
    double drop = pull * (cased + bond / 2) / (199_947_962 * 1452e-6) * 0.28575 / 1.2;
    assertThat(step(sheet, "seat-drop")).isCloseTo(drop, withPercentage(0.1));
    assertThat(step(sheet, "movement-bare"))
        .isCloseTo(step(sheet, "shortening") + drop + 0.006, withPercentage(0.1));
  }
}
