package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The signs are those named by OWASP, CSV Injection: = + - @ tab and carriage return, and wide
 * forms.
 */
class SafeCellTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=HYPERLINK(\"http://x\",\"y\")",
        "+1+cmd|' /C calc'!A0",
        "-2+3",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "  =1",
        "＝1",
        "＋1",
        "-"
      })
  void a_text_that_could_be_a_formula_is_made_a_text(String text) {
    assertThat(SafeCell.of(text)).startsWith("'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-3", "+2.5", "-1.5e-3", "12", "north wall", "a=b", "3-4", ""})
  void numbers_and_other_texts_stay_as_they_are(String text) {
    assertThat(SafeCell.of(text)).isEqualTo(text);
  }

  @Test
  @DisplayName("A cell never has two lines, so that a line is a row")
  void a_cell_is_one_line() {
    assertThat(SafeCell.of("a\nb\r\nc\u2028d")).doesNotContain("\n", "\r", "\u2028");
  }
}
