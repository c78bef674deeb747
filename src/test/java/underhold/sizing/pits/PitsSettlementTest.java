package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.Step;

/** Settlement of the piers, and one sheet in either unit system; own cases. */
class PitsSettlementTest {
  private static double si(Sheet sheet, String step) {
    return sheet.step(step).orElseThrow().result().si();
  }

  @Test
  @DisplayName(
      "Own case: 6,000 lb/ft on a pier 3 ft wide and 8 ft high shortens it by 0.0004 in, modulus 3,120,000 psi")
  void pier_shortening() {
    Sheet sheet = PitsSizing.size(PitsSizingTest.pier().build(), PitsSettings.defaults());
    assertThat(si(sheet, "pier-shortening") / 0.0254).isCloseTo(0.0004, within(0.00005));
    // 6000 / 432 sq in × 96 in / 3.122e6 psi
    assertThat(si(sheet, "pier-shortening") / 0.0254).isCloseTo(4.2708e-4, within(1e-7));
  }

  @Test
  @DisplayName(
      "Own case: settlement with the pier's weight is in proportion to the pressure, and only the one without it is checked")
  void settlement_with_and_without_the_pier() {
    Sheet sheet = PitsSizing.size(PitsSizingTest.brick().build(), PitsSettings.defaults());
    assertThat(si(sheet, "base-settlement-gross") / si(sheet, "base-settlement"))
        .isCloseTo(si(sheet, "base-gross") / si(sheet, "base-net"), within(1e-9));
    double reckoned = si(sheet, "base-settlement") + si(sheet, "pier-shortening");
    double experience = PitsSettings.defaults().get(PitsSetting.EXPECTED_MOVEMENT);
    assertThat(sheet.check("movement").orElseThrow().demand().si())
        .isCloseTo(Math.max(experience, reckoned), within(1e-12));
    assertThat(
            PitsSizing.size(PitsSizingTest.pier().build(), PitsSettings.defaults())
                .step("base-settlement-gross"))
        .isEmpty();
  }

  @Test
  @DisplayName("Own case: settings typed in US units give the sheet of the same settings in SI")
  void settings_in_either_system_give_one_sheet() {
    List<String> si = new ArrayList<>();
    List<String> us = new ArrayList<>();
    PitsSettings defaults = PitsSettings.defaults();
    for (PitsSetting one : PitsSetting.values()) {
      Amount amount = defaults.amount(one);
      for (UnitSystem system : UnitSystem.values()) {
        (system == UnitSystem.US ? us : si).add(one.setting().name() + "=" + full(amount, system));
      }
    }
    PitsSettings.Read metric = PitsSettings.parse(si);
    PitsSettings.Read american = PitsSettings.parse(us);
    assertThat(metric.problems()).isEmpty();
    assertThat(american.problems()).isEmpty();
    Sheet one = PitsSizing.size(PitsSizingTest.brick().build(), metric.settings());
    Sheet other = PitsSizing.size(PitsSizingTest.brick().build(), american.settings());
    for (Step step : one.steps()) {
      double value = step.result().si();
      assertThat(si(other, step.id())).isCloseTo(value, within(1e-9 * Math.abs(value) + 1e-12));
    }
    assertThat(other.checks().stream().map(check -> check.verdict()).toList())
        .isEqualTo(one.checks().stream().map(check -> check.verdict()).toList());
  }

  private static String full(Amount amount, UnitSystem system) {
    return QuantityPrinter.printFull(amount.si(), amount.measure(), amount.unit(system));
  }
}
