package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import underhold.quantity.Seeds;

/** Whatever a file holds, reading it ends with a site or with problems; own cases. */
class SiteFuzzTest {
  @Property(tries = 300, seed = Seeds.BUILD)
  void random_bytes_give_problems(@ForAll byte[] bytes) throws IOException {
    Path file = Files.createTempFile("fuzz", ".site.json");
    try {
      Files.write(file, bytes);
      assertThat(SiteReader.read(file)).isInstanceOf(SiteReading.Invalid.class);
    } finally {
      Files.delete(file);
    }
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void random_texts_give_problems(@ForAll String text) {
    assertThat(SiteReader.read(text, "fuzz")).isInstanceOf(SiteReading.Invalid.class);
  }

  @Property(tries = 700, seed = Seeds.BUILD)
  void a_damaged_file_is_read_soundly_or_gives_problems(@ForAll("damaged") String text) {
    SiteReader.read(text, "fuzz")
        .fold(
            valid -> {
              String written = SiteWriter.toText(valid.site());
              return assertThat(Sites.valid(written)).isEqualTo(valid.site());
            },
            invalid ->
                assertThat(invalid.problems()).isNotEmpty().allSatisfy(SiteFuzzTest::printable));
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void any_text_typed_for_any_fact_is_accepted_unknown_or_rejected(
      @ForAll("facts") FactDefinition fact, @ForAll("typed") String typed) {
    FactReader.read(fact, typed)
        .fold(
            accepted -> assertThat(FactReader.read(fact, accepted.text())).isNotNull(),
            () -> assertThat(typed.strip()).isEqualToIgnoringCase("unknown"),
            rejected -> assertThat(rejected.explanation()).isNotBlank());
  }

  private static void printable(SiteProblem problem) {
    String text = problem.text();
    assertThat(text.length()).isLessThan(1500);
    assertThat(text.codePoints().anyMatch(Character::isISOControl)).isFalse();
    assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(text)).isTrue();
  }

  @Provide
  Arbitrary<FactDefinition> facts() {
    return Arbitraries.of(Sites.DICTIONARY.all());
  }

  @Provide
  Arbitrary<String> typed() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(150),
        Arbitraries.of("1 m", "1 in 500", "yes", "Beside", "4' 6\"", "1e999 m", "UNKNOWN", "-0"));
  }

  @Provide
  Arbitrary<String> damaged() {
    Arbitrary<Integer> place = Arbitraries.integers().between(0, Sites.FULL.length() - 1);
    Arbitrary<Integer> removed = Arbitraries.integers().between(0, 12);
    Arbitrary<String> added =
        Arbitraries.oneOf(
            Arbitraries.strings().ofMaxLength(5),
            Arbitraries.of(
                List.of("\"", "{", "}", "[", "]", ",", ":", "null", "1e999", "-", "\\u0000", "m")));
    return Combinators.combine(place, removed, added)
        .as(
            (at, length, put) ->
                Sites.FULL.substring(0, at)
                    + put
                    + Sites.FULL.substring(Math.min(Sites.FULL.length(), at + length)));
  }
}
