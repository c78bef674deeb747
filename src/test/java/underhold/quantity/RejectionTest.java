package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.ParsedQuantity.Rejected;

@DisplayName("own cases")
class RejectionTest {
  private static final Set<RejectionCode> SEEN = EnumSet.noneOf(RejectionCode.class);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          LENGTH   | ``                | EMPTY
          LENGTH   | `   `             | EMPTY
          LENGTH   | ft                | NO_NUMBER
          LENGTH   | about 4 ft        | NO_NUMBER
          LENGTH   | ٣ m               | NO_NUMBER
          LENGTH   | ４ m               | NO_NUMBER
          LENGTH   | ½ in              | NO_NUMBER
          LENGTH   | infrared          | NO_NUMBER
          LENGTH   | - m               | NO_NUMBER
          LENGTH   | 4                 | NO_UNIT
          ANGLE    | 30                | NO_UNIT
          LENGTH   | 1,5 m             | DECIMAL_COMMA
          LENGTH   | 0,500 m           | DECIMAL_COMMA
          LENGTH   | 1234,567 m        | DECIMAL_COMMA
          LENGTH   | 1.234,5 m         | DECIMAL_COMMA
          LENGTH   | 4' 6,5"           | DECIMAL_COMMA
          LENGTH   | 1,20,000 m        | BAD_NUMBER
          FORCE    | 1 200 kN          | BAD_NUMBER
          FORCE    | 1'200 kN          | UNKNOWN_UNIT
          LENGTH   | 4-5 ft            | BAD_NUMBER
          LENGTH   | 4 to 5 ft         | BAD_NUMBER
          LENGTH   | 1.2.3 m           | BAD_NUMBER
          LENGTH   | 1/2/3 in          | BAD_NUMBER
          LENGTH   | 1 5/2 in          | BAD_NUMBER
          LENGTH   | 4 ft 12 in        | BAD_NUMBER
          LENGTH   | 4.5 ft 6 in       | BAD_NUMBER
          SPEED    | 1.2×10^-5 m/s     | BAD_NUMBER
          COUNT    | 4 2               | BAD_NUMBER
          LENGTH   | NaN m             | NOT_FINITE
          LENGTH   | -Infinity m       | NOT_FINITE
          LENGTH   | ∞                 | NOT_FINITE
          LENGTH   | 1e400 m           | NOT_FINITE
          LENGTH   | 1e-400 m          | NOT_FINITE
          LENGTH   | 1e999999999999 m  | NOT_FINITE
          LENGTH   | 3/0 in            | NOT_FINITE
          DURATION | 1e308 weeks       | NOT_FINITE
          LENGTH   | 4 fr              | UNKNOWN_UNIT
          LENGTH   | 4 parsecs         | UNKNOWN_UNIT
          LENGTH   | 4 Mm              | UNKNOWN_UNIT
          PRESSURE | 30 mPa            | UNKNOWN_UNIT
          FORCE    | 3 mN              | UNKNOWN_UNIT
          FORCE    | 10² kN            | UNKNOWN_UNIT
          AREA     | 3 sq ft2          | TRAILING_TEXT
          COUNT    | 12 piles          | UNKNOWN_UNIT
          FORCE    | 12 tonne          | AMBIGUOUS_UNIT
          FORCE    | 12 t              | AMBIGUOUS_UNIT
          UNIT_WEIGHT | 1800 kg/m³     | AMBIGUOUS_UNIT
          DURATION | 2 months          | AMBIGUOUS_UNIT
          LENGTH   | 4 kPa             | WRONG_MEASURE
          FORCE    | 4' 6"             | WRONG_MEASURE
          ANGLE    | 30'               | WRONG_MEASURE
          PRESSURE | 100 kN/m          | WRONG_MEASURE
          COUNT    | 25 %              | WRONG_MEASURE
          LENGTH   | 4 ft deep         | TRAILING_TEXT
          LENGTH   | 4 m, 5 m          | TRAILING_TEXT
          LENGTH   | 4'6               | TRAILING_TEXT
          LENGTH   | 4'2               | TRAILING_TEXT
          AREA     | 4'2               | UNKNOWN_UNIT
          PRESSURE | 4 kPa (net)       | TRAILING_TEXT
          """)
  void a_text_is_refused_for_its_reason(Measure measure, String text, RejectionCode code) {
    Rejected rejected = rejected(text, measure);
    SEEN.add(rejected.code());
    assertThat(rejected.code()).isEqualTo(code);
    assertThat(rejected.message()).isNotBlank();
    assertThat(rejected.suggestion()).isNotBlank();
  }

  @Test
  void a_text_over_100_characters_is_refused_and_not_repeated_whole() {
    String longText = "4".repeat(5000) + " ft";
    assertThat(rejected(longText, Measure.LENGTH).code()).isEqualTo(RejectionCode.TOO_LONG);
    assertThat(rejected(longText, Measure.LENGTH).message()).hasSizeLessThan(250);
    assertThat(Quantity.parse("0".repeat(96) + "4 ft", Measure.LENGTH).toOptional()).isPresent();
    assertThat(rejected("0".repeat(97) + "4 ft", Measure.LENGTH).code())
        .isEqualTo(RejectionCode.TOO_LONG);
    SEEN.add(RejectionCode.TOO_LONG);
  }

  @AfterAll
  static void every_reason_has_been_seen() {
    assertThat(SEEN).containsExactlyInAnyOrder(RejectionCode.values());
  }

  @Test
  void a_missing_unit_is_answered_with_the_number_and_units_of_both_systems() {
    assertThat(rejected("4", Measure.LENGTH).explanation())
        .isEqualTo("4 has no unit; a length is needed: m, mm, cm, ft, in, yd; type 4 ft or 4 m");
    assertThat(rejected("30", Measure.ANGLE).suggestion()).isEqualTo("type 30 deg");
  }

  @Test
  void a_unit_of_another_measure_is_named_with_what_is_needed() {
    assertThat(rejected("4 kPa", Measure.LENGTH).message())
        .isEqualTo("\"4 kPa\" is a pressure; a length is needed: m, mm, cm, ft, in, yd");
    assertThat(rejected("4 kPa", Measure.LENGTH).suggestion())
        .isEqualTo("type for example 4 ft or 1.2 m");
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 4 fr, ft",
    "LENGTH, 4 Mm, mm",
    "LENGTH, 4 metrs, m",
    "LENGTH, 4 feets, ft",
    "PRESSURE, 30 mPa, MPa",
    "FORCE, 3 mn, MN",
    "FORCE, 3 kipz, kip"
  })
  void a_near_miss_is_answered_with_the_unit_meant(Measure measure, String text, String unit) {
    assertThat(rejected(text, measure).suggestion()).isEqualTo("did you mean " + unit + "?");
  }

  @Test
  void a_decimal_comma_is_answered_with_a_point() {
    assertThat(rejected("1,5 m", Measure.LENGTH).suggestion())
        .isEqualTo("for a decimal type 1.5 m");
    assertThat(rejected("1,2,3 m", Measure.LENGTH).suggestion())
        .isEqualTo("type for example 4 ft or 1.2 m");
  }

  @Test
  void a_tonne_is_answered_with_kilonewtons() {
    assertThat(rejected("12 tonnes", Measure.FORCE).message()).contains("tonnes", "kN", "2000 lbf");
  }

  @Test
  void control_characters_are_refused_and_never_repeated() {
    Rejected rejected = rejected("4 \u001b[31m\u0085ft\u202e", Measure.LENGTH);
    assertThat(rejected.code()).isEqualTo(RejectionCode.BAD_NUMBER);
    assertThat(rejected.explanation()).doesNotContain("\u001b", "\u0085", "\u202e");
  }

  private static Rejected rejected(String text, Measure measure) {
    return Quantity.parse(text, measure)
        .fold(
            parsed -> {
              throw new AssertionError(parsed.quantity() + " should have been refused");
            },
            rejected -> rejected);
  }
}
