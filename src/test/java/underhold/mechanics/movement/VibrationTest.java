package underhold.mechanics.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;

class VibrationTest {

  @ParameterizedTest(
      name = "DIN 4150-3 short-term at the foundation (values from memory): {0}, {1} Hz: {2} mm/s")
  @CsvSource({
    "COMMERCIAL, 5, 20",
    "COMMERCIAL, 10, 20",
    "COMMERCIAL, 30, 30",
    "COMMERCIAL, 50, 40",
    "COMMERCIAL, 75, 45",
    "COMMERCIAL, 100, 50",
    "COMMERCIAL, 200, 50",
    "DWELLING, 5, 5",
    "DWELLING, 30, 10",
    "DWELLING, 50, 15",
    "DWELLING, 100, 20",
    "SENSITIVE, 5, 3",
    "SENSITIVE, 30, 5.5",
    "SENSITIVE, 50, 8",
    "SENSITIVE, 75, 9",
    "SENSITIVE, 100, 10"
  })
  void foundationLines(DinVibration line, double hertz, double millimetresPerSecond) {
    assertThat(line.foundationMetresPerSecond(hertz))
        .isCloseTo(millimetresPerSecond / 1000, within(1e-12));
  }

  @Test
  @DisplayName(
      "DIN 4150-3 (from memory) topmost floor 40, 15, 8 mm/s; (secondary) floors 20, pipes 100, 80, 50 mm/s")
  void otherPlaces() {
    assertThat(DinVibration.COMMERCIAL.topFloorMetresPerSecond()).isEqualTo(0.040);
    assertThat(DinVibration.DWELLING.topFloorMetresPerSecond()).isEqualTo(0.015);
    assertThat(DinVibration.SENSITIVE.topFloorMetresPerSecond()).isEqualTo(0.008);
    assertThat(DinVibration.FLOOR_VERTICAL_METRES_PER_SECOND).isEqualTo(0.020);
    assertThat(DinVibration.Pipe.STEEL.metresPerSecond()).isEqualTo(0.100);
    assertThat(DinVibration.Pipe.CONCRETE_STONEWARE_METAL.metresPerSecond()).isEqualTo(0.080);
    assertThat(DinVibration.Pipe.MASONRY_PLASTIC.metresPerSecond()).isEqualTo(0.050);
    assertThat(DinVibration.DWELLING.label()).contains("dwellings");
  }

  @ParameterizedTest(name = "{2}: {0} {1} mm/s")
  @CsvSource({
    "NYC_HISTORIC, 12.7, NYC TPPN 10/88 (secondary)",
    "FTA_REINFORCED, 12.7, FTA category I (from memory)",
    "FTA_ENGINEERED, 7.62, FTA category II (from memory)",
    "FTA_TIMBER_AND_MASONRY, 5.08, FTA category III (from memory)",
    "FTA_FRAGILE, 3.048, FTA category IV (from memory)",
    "USBM_LOW, 12.7, USBM RI 8507 low end (from memory)",
    "USBM_HIGH, 50.8, USBM RI 8507 high end (from memory)"
  })
  void oneValueLimits(VibrationLimit limit, double millimetresPerSecond) {
    assertThat(limit.metresPerSecond()).isCloseTo(millimetresPerSecond / 1000, within(1e-9));
    assertThat(limit.label()).isNotBlank();
    assertThat(limit.citation().text()).isNotBlank();
  }

  @Test
  @DisplayName("NYC TPPN 10/88 (secondary): historic movement 0.25 in")
  void historicMovement() {
    assertThat(HistoricMovement.LIMIT_METRES).isCloseTo(0.00635, within(1e-12));
    assertThat(HistoricMovement.CITATION.text()).contains("10/88");
  }

  @Property(seed = Seeds.BUILD)
  void theLinesRiseWithFrequencyAndNeverCross(
      @ForAll @DoubleRange(min = 0.1, max = 400) double hertz) {
    double sensitive = DinVibration.SENSITIVE.foundationMetresPerSecond(hertz);
    double dwelling = DinVibration.DWELLING.foundationMetresPerSecond(hertz);
    double commercial = DinVibration.COMMERCIAL.foundationMetresPerSecond(hertz);
    assertThat(sensitive).isLessThan(dwelling);
    assertThat(dwelling).isLessThan(commercial);
    assertThat(DinVibration.DWELLING.foundationMetresPerSecond(hertz + 1))
        .isGreaterThanOrEqualTo(dwelling);
  }

  @Test
  void noFrequencyNoAnswer() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DinVibration.DWELLING.foundationMetresPerSecond(0))
        .withMessageContaining("frequency");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Citation(" ", Provenance.FROM_MEMORY))
        .withMessageContaining("named");
    assertThat(new Citation("", Provenance.DERIVED).text()).isEmpty();
  }
}
