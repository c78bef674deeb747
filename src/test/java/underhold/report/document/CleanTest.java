package underhold.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Words from outside do nothing to a document but be shown. */
class CleanTest {
  @Test
  void ordinary_words_of_any_script_stay_as_they_are() {
    for (String words : List.of("", "Rue de l'Église 4 × 5 m", "שלום", "地下鉄", "😀 <b>|`*_#")) {
      assertThat(Clean.words(words)).isEqualTo(words);
    }
  }

  @Test
  void line_ends_and_tabs_become_blanks() {
    assertThat(Clean.words("a\nb\r\nc\rd\te\u2028f\u2029g\u0085h")).isEqualTo("a b c d e f g h");
  }

  @Test
  @DisplayName("XML 1.0, 2.2: no control characters, no halves of characters, no U+FFFE")
  void what_no_text_may_hold_is_replaced() {
    assertThat(Clean.words("a\u0000b\u001bc\u007fd\ud800e\udc00f\ufffeg\uffffh"))
        .isEqualTo("a\ufffdb\ufffdc\ufffdd\ufffde\ufffdf\ufffdg\ufffdh");
  }

  @Test
  @DisplayName("Unicode Standard Annex 9: explicit signs of direction")
  void signs_that_turn_the_direction_are_replaced() {
    String turning = "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069";

    assertThat(Clean.words(turning)).isEqualTo("\ufffd".repeat(turning.length()));
  }

  @Test
  void every_word_of_a_document_is_cleaned() {
    String bad = "a\nb\u202e";
    String good = "a b\ufffd";
    Block.Working working =
        new Block.Working(
            "", bad, bad, List.of(new Block.Symbol(bad, bad, bad)), bad, bad, Prose.of(bad));
    Document document =
        new Document(
            bad,
            bad,
            List.of(new Document.Entry(bad, Prose.of(bad))),
            List.of(
                Section.of(
                    "one",
                    bad,
                    List.of(
                        new Block.Notice(Block.Tone.PLAIN, bad, Prose.of(bad).strong(bad)),
                        new Block.Table(
                            bad,
                            List.of(Block.Column.words(bad)),
                            List.of(Block.Row.of(Prose.empty().typed(bad)))),
                        working))));

    assertThat(document.toString()).contains(good).doesNotContain("\n", "\u202e");
  }
}
