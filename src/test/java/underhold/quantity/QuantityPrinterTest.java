package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("own cases")
class QuantityPrinterTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          LENGTH   | 1.2192      | ft    | 4 ft
          LENGTH   | 1.3716      | ft    | 4.5 ft
          LENGTH   | 1.3716      | feet  | 4.5 ft
          LENGTH   | 0           | m     | 0 m
          LENGTH   | -0.0        | m     | 0 m
          LENGTH   | -2          | m     | -2 m
          LENGTH   | 1.23449     | m     | 1.234 m
          LENGTH   | 1.2345      | m     | 1.235 m
          LENGTH   | -1.2345     | m     | -1.235 m
          LENGTH   | 1.2344999999999997 | m | 1.235 m
          LENGTH   | 0.00001     | m     | 0.00001 m
          LENGTH   | 1e-7        | m     | 1e-7 m
          LENGTH   | 1e15        | m     | 1e15 m
          FORCE    | 12345       | kN    | 12350 kN
          FORCE    | 9999.9      | kN    | 10000 kN
          FORCE    | 1200        | kN    | 1200 kN
          SPEED    | 1.2e-5      | m/s   | 1.2e-5 m/s
          SPEED    | 1.23456e-5  | m/s   | 1.235e-5 m/s
          SPEED    | 0.005       | m/s   | 0.005 m/s
          RATIO    | 0.25        | ``    | 0.25
          RATIO    | 0.25        | %     | 25 %
          COUNT    | 12          | ``    | 12
          COUNT    | 123456      | ``    | 123456
          MOMENT   | 110         | kN.m  | 110 kN·m
          """)
  void values_are_printed_to_four_figures_without_needless_zeros(
      Measure measure, double si, String unit, String expected) {
    assertThat(QuantityPrinter.print(si, measure, unit)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LENGTH           | 1.2192 | 1.2192 m -> 1.219 m | 4 ft
          FORCE            | 266.893296915630 | 266.9 kN | 60 kip
          PRESSURE         | 95.760517960678 | 95.76 kPa | 2 ksf
          UNIT_WEIGHT      | 18.8504956615 | 18.85 kN/m3 | 120 pcf
          ANGLE            | 30     | 30 deg   | 30 deg
          DURATION         | 36     | 36 h     | 36 h
          """)
  void each_system_has_its_usual_units(Measure measure, double si, String metric, String us) {
    assertThat(metric).endsWith(QuantityPrinter.print(si, measure, UnitSystem.SI));
    assertThat(QuantityPrinter.print(si, measure, UnitSystem.US)).isEqualTo(us);
  }

  @Test
  void small_sizes_are_printed_in_fine_units() {
    assertThat(QuantityPrinter.printFine(0.0254, Measure.LENGTH, UnitSystem.SI))
        .isEqualTo("25.4 mm");
    assertThat(QuantityPrinter.printFine(0.0254, Measure.LENGTH, UnitSystem.US)).isEqualTo("1 in");
    assertThat(QuantityPrinter.printFine(0.0127, Measure.SPEED, UnitSystem.US))
        .isEqualTo("0.5 in/s");
    assertThat(QuantityPrinter.printFine(5, Measure.FORCE, UnitSystem.SI)).isEqualTo("5 kN");
  }

  @Test
  void the_machines_locale_changes_nothing() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(QuantityPrinter.print(1234.5, Measure.FORCE, "kN")).isEqualTo("1235 kN");
        assertThat(QuantityPrinter.print(1.5, Measure.LENGTH, "m")).isEqualTo("1.5 m");
        assertThat(Quantity.parse("6 IN", Measure.LENGTH).toOptional()).isPresent();
        assertThat(Quantity.parse("12 KIP", Measure.FORCE).toOptional()).isPresent();
        assertThat(Quantity.parse("7 XYZ", Measure.FORCE).toOptional()).isEmpty();
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void what_is_not_finite_or_not_of_the_measure_is_not_printed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityPrinter.print(Double.NaN, Measure.LENGTH, "m"))
        .withMessageContaining("finite");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityPrinter.print(1, Measure.LENGTH, "kPa"))
        .withMessageContaining("kPa");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityPrinter.print(1, Measure.LENGTH, ""));
  }
}
