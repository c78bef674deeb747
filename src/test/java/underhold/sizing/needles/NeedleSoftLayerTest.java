package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Verdict;

/** Own cases: sand under the seats, soft clay further down. Seats 3 ft (0.914 m) down. */
class NeedleSoftLayerTest {
  private static final Map<String, String> DUG =
      NeedleSites.with(
          NeedleSites.column(),
          "underminedWidth",
          "3 m",
          "excavationDepth",
          "6 m",
          "seatSpan",
          "9.5 m");

  private static Sheet sandOverClayAt(String top, String... settings) {
    return NeedleSites.on(
        "dense-sand\" }, { \"top\": \"" + top + "\", \"soil\": \"soft-clay", DUG, settings);
  }

  private static double setback(Sheet sheet) {
    return sheet.step("setback").orElseThrow().result().si();
  }

  private static String soil(Sheet sheet) {
    return sheet.input("seat-soil").map(SheetInput::words).orElseThrow();
  }

  @Test
  @DisplayName(
      "Clay anywhere between seats and toe of the dig wants the line at 2 to 1: 2 x (6 - 0.914) m")
  void clay_within_the_wedge_flattens_the_line() {
    assertThat(setback(sandOverClayAt("5.5 m"))).isCloseTo(2 * (6 - 0.9144), within(1e-9));
    assertThat(setback(sandOverClayAt("6.5 m"))).isCloseTo(6 - 0.9144, within(1e-9));
    assertThat(setback(sandOverClayAt("5.5 m", "setback-line=1-to-1")))
        .isCloseTo(6 - 0.9144, within(1e-9));
    assertThat(sandOverClayAt("5.5 m").check("seat-setback").orElseThrow().verdict())
        .isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName(
      "A pad may be 2.5 m wide: the weakest soil within 1.5 x 2.5 = 3.75 m below it bears it")
  void clay_within_one_and_a_half_pads_bears_the_seat() {
    assertThat(soil(sandOverClayAt("4.6 m"))).isEqualTo("soft-clay"); // 0.914 + 3.75 = 4.664 m
    assertThat(soil(sandOverClayAt("4.7 m"))).isEqualTo("dense-sand");
    assertThat(soil(sandOverClayAt("3 m", "widest-pad=1 m"))).isEqualTo("dense-sand"); // 2 m
    assertThat(soil(sandOverClayAt("2.9 m", "widest-pad=1 m"))).isEqualTo("soft-clay");
  }
}
