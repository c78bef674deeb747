package underhold.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SafeTextTest {

  @Test
  @DisplayName("Trade signs and letters of any language stay as they are")
  void keeps() {
    String text = "× ² ³ ° µ γ φ ≤ √ 工地 \ud83c\udfd7 é\n\t";
    assertThat(SafeText.of(text)).isEqualTo(text);
  }

  @Test
  @DisplayName("Control characters, half pairs and noncharacters are shown as U+FFFD")
  void replaces() {
    assertThat(SafeText.of("a\u0000b\u001bc\u007fd\u0085e")).isEqualTo("a�b�c�d�e");
    assertThat(SafeText.of("x\ud83cy\udfd7")).isEqualTo("x�y�");
    assertThat(SafeText.of("\uffff\ufdd0")).isEqualTo("��");
    assertThat(SafeText.of("a\r\nb")).isEqualTo("a \nb");
  }

  @Test
  @DisplayName("What would turn the words around is shown, not obeyed")
  void reordering() {
    assertThat(SafeText.of("12\u202e34\u202c\u2066\u2069\u200f")).isEqualTo("12�34����");
  }

  @Test
  @DisplayName("Words from right to left are isolated from the numbers beside them")
  void isolates() {
    assertThat(SafeText.of("\u05d0\u05d1 \u05d2 12 m"))
        .isEqualTo("\u2067\u05d0\u05d1 \u05d2\u2069 12 m");
  }

  /** Whatever is let through at once is what the slow way makes of it. */
  @Test
  void every_sign_alone_is_as_unicode_normalises_it() {
    for (char sign = 0xA0; sign < 0xD800; sign++) {
      String text = "a" + sign;
      String safe = SafeText.of(text);
      if (safe.equals(text) && sign >= 0x2000 && sign < 0x2C00) {
        assertThat(Normalizer.normalize(text, Normalizer.Form.NFC)).isEqualTo(text);
        assertThat(Character.getType(sign))
            .as("%04X", (int) sign)
            .isNotIn((int) Character.CONTROL, (int) Character.SURROGATE);
      }
    }
  }
}
