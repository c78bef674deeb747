package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.site.SiteProblem.Code;

/** One typed value of one fact; own cases. */
class FactReaderTest {
  @ParameterizedTest
  @CsvSource({
    "soilAtFooting, Stiff clay, stiff-clay",
    "soilAtFooting, STIFF-CLAY, stiff-clay",
    "soilAtFooting, hard clay or  till, hard-clay-or-till",
    "excavationPosition, partly_under, partly-under",
    "bracingRoom, Yes, yes",
    "bracingRoom, false, no",
    "bracingRoom, TRUE, yes",
    "tiltLimit, 1:500, 1:500",
    "clearSpan, 4' 6\", 4' 6\"",
    "storeys, 4, 4"
  })
  void a_value_is_accepted_as_people_type_it(String fact, String typed, String text) {
    assertThat(accepted(fact, typed).text()).isEqualTo(text);
  }

  @Test
  void a_slope_is_held_as_a_ratio() {
    FactValue value = accepted("tiltLimit", "1 in 500");

    assertThat(((FactValue.Amount) value).quantity().si()).isEqualTo(0.002);
  }

  @ParameterizedTest
  @CsvSource({"unknown", "Unknown", "' UNKNOWN '"})
  void unknown_is_an_answer(String typed) {
    assertThat(read("clearSpan", typed)).isInstanceOf(FactReading.NotKnown.class);
  }

  @ParameterizedTest
  @CsvSource({
    "clearSpan, 10.001 m, OUT_OF_RANGE",
    "clearSpan, -0.001 m, OUT_OF_RANGE",
    "clearSpan, 3, NO_UNIT",
    "clearSpan, 3 kg, WRONG_UNIT",
    "clearSpan, '', NOT_A_QUANTITY",
    "clearSpan, '1,5 m', NOT_A_QUANTITY",
    "heritage, '', NOT_ALLOWED_VALUE",
    "tiltLimit, '', NOT_A_QUANTITY",
    "tiltLimit, 1 in 0, NOT_A_QUANTITY",
    "tiltLimit, 1 in 9999, OUT_OF_RANGE"
  })
  void a_bad_value_is_rejected_with_its_code(String fact, String typed, Code code) {
    assertThat(rejected(fact, typed).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"clearSpan, 10 m", "clearSpan, 0 m", "movementLimit, 1 mm", "movementLimit, 75 mm"})
  void the_limits_themselves_are_allowed(String fact, String typed) {
    assertThat(read(fact, typed)).isInstanceOf(FactReading.Accepted.class);
  }

  @Test
  void a_rejection_names_what_is_allowed_and_what_was_perhaps_meant() {
    FactReading.Rejected rejected = rejected("soilAtFooting", "stif clay");

    assertThat(rejected.message()).contains("\"stif clay\"").contains("loose-sand");
    assertThat(rejected.suggestion()).isEqualTo("did you mean \"stiff-clay\"?");
  }

  @Test
  void a_wrong_unit_brings_the_unit_that_was_perhaps_meant() {
    assertThat(rejected("clearSpan", "3 fts").explanation()).contains("did you mean ft?");
  }

  @Test
  void a_very_long_text_is_rejected_in_few_words() {
    assertThat(rejected("tiltLimit", "1" + " ".repeat(200) + "in 500").message())
        .hasSizeLessThan(200);
    assertThat(rejected("heritage", "n".repeat(100_000)).message()).hasSizeLessThan(200);
  }

  private static FactReading read(String fact, String typed) {
    return FactReader.read(Sites.DICTIONARY.require(fact), typed);
  }

  private static FactValue accepted(String fact, String typed) {
    return ((FactReading.Accepted) read(fact, typed)).value();
  }

  private static FactReading.Rejected rejected(String fact, String typed) {
    return (FactReading.Rejected) read(fact, typed);
  }
}
