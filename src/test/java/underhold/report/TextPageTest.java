package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

/** Laying out text; own cases. */
class TextPageTest {
  @Property(tries = 300, seed = Seeds.BUILD)
  void no_line_is_wider_than_the_page(
      @ForAll @StringLength(max = 300) String words,
      @ForAll @IntRange(min = 1, max = 200) int width,
      @ForAll @IntRange(max = 8) int indent) {
    Look look = new Look(width, false, StandardCharsets.US_ASCII);
    String text =
        new TextPage(look)
            .para(indent, words)
            .item(indent, "mark", 10, words)
            .ends(Tint.NONE, words.replaceAll("\\R", " "), Tint.NONE, "right")
            .text();

    assertThat(text.lines()).allMatch(line -> line.length() <= look.width());
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void no_word_is_lost(
      @ForAll @StringLength(max = 300) @CharRange(from = ' ', to = '~') String words) {
    String text = new TextPage(Look.PLAIN).para(0, words).text();

    assertThat(text.replaceAll("\\s+", "")).isEqualTo(words.replaceAll("\\s+", ""));
  }

  @Test
  void a_mark_stands_once_beside_its_paragraph() {
    Look narrow = new Look(40, false, StandardCharsets.UTF_8);

    assertThat(new TextPage(narrow).item(2, "for", 6, "a reason that takes two lines here").text())
        .isEqualTo("  for   a reason that takes two lines\n        here\n");
  }

  @Test
  void signs_a_terminal_lacks_are_spelt() {
    assertThat(Plain.in(StandardCharsets.US_ASCII, "“≤ 3 m²” – Müller… φ 漢"))
        .isEqualTo("\"<= 3 m2\" - Muller... phi ?");
    assertThat(Plain.in(StandardCharsets.UTF_8, "≤")).isEqualTo("≤");
  }

  @Test
  void the_width_stays_readable() {
    assertThat(new Look(500, false, StandardCharsets.UTF_8).width()).isEqualTo(Look.WIDEST);
    assertThat(new Look(0, false, StandardCharsets.UTF_8).width()).isEqualTo(Look.NARROWEST);
  }
}
