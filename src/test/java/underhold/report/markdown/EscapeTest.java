package underhold.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;

/**
 * Words escaped for Markdown show just those words, by CommonMark 0.31 and its tables extension.
 */
class EscapeTest {
  /** CommonMark 0.31, 2.4: a backslash before ASCII punctuation shows the punctuation. */
  private static String shown(String markdown) {
    return markdown.replaceAll("\\\\(\\p{Punct})", "$1");
  }

  @Label("Showing escaped words gives the words back")
  @Property(tries = 300, seed = Seeds.BUILD)
  void nothing_is_lost(
      @ForAll @CharRange(from = ' ', to = '~') @StringLength(max = 60) String words) {
    assertThat(shown(Escape.words(words))).isEqualTo(words);
    assertThat(shown(Escape.first(Escape.words(words))).stripLeading())
        .isEqualTo(words.stripLeading());
  }

  @Label("No sign of Markdown or HTML stands bare")
  @Property(tries = 300, seed = Seeds.BUILD)
  void nothing_is_done(
      @ForAll @CharRange(from = ' ', to = '~') @StringLength(max = 60) String words) {
    String bare = Escape.words(words).replaceAll("\\\\\\p{Punct}", "");

    assertThat(bare).doesNotContainPattern("[\\\\`*_\\[\\]<>|~&$#]").doesNotContain("://", "@");
    assertThat(Escape.first(Escape.words(words))).doesNotContainPattern("^\\s*([-+=>#]|\\d+[.)])");
  }

  @ParameterizedTest
  @DisplayName("CommonMark 0.31, 4 and 5.2: what would begin a block does not")
  @CsvSource(
      delimiter = ';',
      value = {
        "- item;\\- item",
        "+ item;\\+ item",
        "1. item;1\\. item",
        "20) item;20\\) item",
        "=== x;\\=== x",
        "2.4 m;2\\.4 m",
        "# head;\\# head",
        "plain;plain"
      })
  void a_line_begins_no_block(String words, String line) {
    assertThat(Escape.first(Escape.words(words))).isEqualTo(line);
  }

  @ParameterizedTest
  @DisplayName("GitHub Flavored Markdown 6.9: nothing becomes a link by itself")
  @CsvSource({"http://a.b/c, http\\://a.b/c", "www.a.b, www\\.a.b", "a@b.c, a\\@b.c"})
  void no_link_makes_itself(String words, String markdown) {
    assertThat(Escape.words(words)).isEqualTo(markdown);
  }

  @Test
  void typed_words_stand_in_code_only_where_code_can_hold_them() {
    assertThat(Escape.typed("4 ft")).isEqualTo("`4 ft`");
    assertThat(Escape.typed("<b>&amp;*")).isEqualTo("`<b>&amp;*`");
    assertThat(Escape.typed("a`b")).isEqualTo("a\\`b");
    assertThat(Escape.typed("a|b")).isEqualTo("a\\|b");
    assertThat(Escape.typed("a\\")).isEqualTo("a\\\\");
    assertThat(Escape.typed(" a")).isEqualTo(" a");
    assertThat(Escape.typed("")).isEmpty();
  }

  @Test
  void no_line_closes_its_fence() {
    assertThat(Escape.fence(List.of("plain"))).isEqualTo("```");
    assertThat(Escape.fence(List.of("a ```` b", "``"))).isEqualTo("`````");
  }
}
