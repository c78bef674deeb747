package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("own cases")
class QuantityTest {

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void a_value_that_is_not_finite_is_refused(double value) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Quantity(value, Measure.LENGTH, "m", "1 m"))
        .withMessageContaining("a length must be finite");
    assertThatIllegalArgumentException().isThrownBy(() -> Quantity.of(value, Measure.LENGTH, "m"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Measure.LENGTH.requireUnit("ft").toInside(value));
  }

  @Test
  void a_unit_of_another_measure_and_a_blank_or_endless_text_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Quantity(1, Measure.LENGTH, "kPa", "1 kPa"));
    assertThatIllegalArgumentException().isThrownBy(() -> new Quantity(1, Measure.LENGTH, "", "1"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Quantity(1, Measure.LENGTH, "m", " "));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Quantity(1, Measure.LENGTH, "m", "1".repeat(101)));
  }

  @Test
  void the_unit_is_kept_in_its_canonical_spelling_and_zero_has_no_sign() {
    Quantity quantity = new Quantity(-0.0, Measure.FORCE_PER_LENGTH, "KLF", " -0 KLF ");
    assertThat(quantity).isEqualTo(new Quantity(0.0, Measure.FORCE_PER_LENGTH, "kip/ft", "-0 KLF"));
  }

  @Test
  void a_quantity_nobody_typed_prints_its_own_text() {
    assertThat(Quantity.of(1.3716, Measure.LENGTH, "ft").text()).isEqualTo("4.5 ft");
    assertThat(Quantity.of(1.0, Measure.LENGTH, "ft").text()).isEqualTo("3.281 ft");
    assertThat(Quantity.of(1.0, Measure.LENGTH, "ft").si()).isEqualTo(1.0);
  }

  @Test
  void a_quantity_can_be_had_in_another_unit() {
    assertThat(Quantity.of(1.2192, Measure.LENGTH, "m").in("in")).isEqualTo(48.0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Quantity.of(1, Measure.LENGTH, "m").in("kN"));
  }

  @Test
  void the_user_gets_the_system_back_that_was_typed() {
    assertThat(UnitSystem.of(Quantity.of(1, Measure.LENGTH, "ft"))).isEqualTo(UnitSystem.US);
    assertThat(UnitSystem.of(Quantity.of(1, Measure.PRESSURE, "MPa"))).isEqualTo(UnitSystem.SI);
    assertThat(UnitSystem.of(Quantity.of(1, Measure.COUNT, ""))).isEqualTo(UnitSystem.SI);
    assertThat(UnitSystem.statedBy(Quantity.of(1, Measure.ANGLE, "deg"))).isEmpty();
    assertThat(UnitSystem.statedBy(Quantity.of(1, Measure.FORCE, "k"))).contains(UnitSystem.US);
  }

  @ParameterizedTest
  @EnumSource
  void every_measure_knows_its_units_and_reads_its_own_example(Measure measure) {
    assertThat(measure.requireUnit(measure.insideUnit()).insideUnitsPerUnit())
        .isEqualByComparingTo(BigDecimal.ONE);
    assertThat(measure.units()).isNotEmpty();
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(measure.requireUnit(measure.printUnit(system)).system())
          .isIn(Optional.empty(), Optional.of(system));
      assertThat(measure.requireUnit(measure.finePrintUnit(system)).system())
          .isIn(Optional.empty(), Optional.of(system));
    }
    for (String example : measure.example().split(" or ")) {
      assertThat(Quantity.parse(example, measure).toOptional()).as(example).isPresent();
    }
    assertThat(measure.needsUnit()).isEqualTo(Quantity.parse("1", measure).toOptional().isEmpty());
  }

  @Test
  void a_unit_without_a_name_or_with_a_factor_of_nought_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new MeasureUnit("x", "xs", Measure.LENGTH, BigDecimal.ZERO, Optional.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new MeasureUnit("x", " ", Measure.LENGTH, BigDecimal.ONE, Optional.empty()));
  }
}
