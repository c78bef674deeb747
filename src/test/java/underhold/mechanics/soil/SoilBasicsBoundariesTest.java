package underhold.mechanics.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Guards, tables and safety factors at their very edges. */
class SoilBasicsBoundariesTest {
  @Test
  void numbers_at_the_ends_of_what_is_believable_are_accepted() {
    assertThat(Require.finite(1e9, "x", "m")).isEqualTo(1e9);
    assertThat(Require.finite(-1e9, "x", "m")).isEqualTo(-1e9);
    assertThat(Require.positive(1e-9, "x", "m")).isEqualTo(1e-9);
    assertThat(Require.positive(1e9, "x", "m")).isEqualTo(1e9);
    assertThat(Require.notNegative(0, "x", "m")).isZero();
    assertThat(Require.notNegative(1e9, "x", "m")).isEqualTo(1e9);
    assertThat(Require.between(2, 2, 3, "x", "m")).isEqualTo(2);
    assertThat(Require.between(3, 2, 3, "x", "m")).isEqualTo(3);
    assertThat(Require.frictionAngle(0)).isZero();
    assertThat(Require.frictionAngle(60)).isEqualTo(60);
  }

  @Test
  void numbers_beyond_are_refused_with_their_limit() {
    refused(
        () -> Require.finite(1.001e9, "x", "m"), "x is 1.001E9 m, it must be finite and below 1e9");
    refused(
        () -> Require.positive(0.9e-9, "x", "m"),
        "x is 9.0E-10 m, it must be above 0 (1e-9 to 1e9)");
    refused(
        () -> Require.positive(1.1e9, "x", "m"), "x is 1.1E9 m, it must be above 0 (1e-9 to 1e9)");
    refused(() -> Require.notNegative(-1, "x", "m"), "x is -1.0 m, it must be 0 or above (to 1e9)");
    refused(
        () -> Require.notNegative(1.1e9, "x", "m"), "x is 1.1E9 m, it must be 0 or above (to 1e9)");
    refused(() -> Require.between(1.9, 2, 3, "x", "m"), "x is 1.9 m, it must be from 2.0 to 3.0");
    refused(() -> Require.between(3.1, 2, 3, "x", "m"), "x is 3.1 m, it must be from 2.0 to 3.0");
    refused(
        () -> Require.frictionAngle(-0.1),
        "angle of shearing resistance is -0.1 degrees, it must be from 0.0 to 60.0");
  }

  private static void refused(Runnable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
  }

  @Test
  void safety_factor_of_a_hair_of_demand() {
    assertThat(new SafetyFactor(1, 1e-12).value()).isEmpty();
    assertThat(new SafetyFactor(1, 2e-12).value()).hasValue(5e11);
    assertThat(new SafetyFactor(1e300, 1e-11).value()).isEmpty();
    assertThat(new SafetyFactor(3, 2).isAtLeast(1.5)).isTrue();
    assertThat(new SafetyFactor(-1, 0).isAtLeast(1)).isFalse();
    refused(
        () -> new SafetyFactor(1, Double.POSITIVE_INFINITY),
        "a safety factor needs finite parts and a demand of 0 or above, got 1.0 / Infinity");
    refused(
        () -> new SafetyFactor(Double.NEGATIVE_INFINITY, 1),
        "a safety factor needs finite parts and a demand of 0 or above, got -Infinity / 1.0");
  }

  @Test
  void table_has_its_rows_and_no_remark() {
    SoilTable table = SoilTable.load("terzaghi-n-gamma.csv");
    assertThat(table.rows()).hasSize(19);
    SoilTable.Row first = table.rows().get(0);
    assertThat(first.text("author")).isEqualTo("DAS");
    assertThat(first.number("angle-degrees")).isZero();
    assertThat(table.rows().get(4).number("n-gamma")).isEqualTo(3.64);
    assertThat(table.rows().get(4).optionalNumber("n-gamma")).hasValue(3.64);
    assertThat(new SoilTable.Row(Map.of("a", "")).optionalNumber("a")).isEmpty();
    assertThatIllegalStateException()
        .isThrownBy(() -> first.text("depth"))
        .withMessage("no column depth");
    assertThatIllegalStateException()
        .isThrownBy(() -> SoilTable.load("none.csv"))
        .withMessage("table not found: none.csv");
    assertThat(new SoilTable(table.rows())).isEqualTo(table);
  }
}
