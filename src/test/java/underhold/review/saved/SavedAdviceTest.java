package underhold.review.saved;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.review.file.FileReading;

/** Consultations in files. */
class SavedAdviceTest {
  private static final String ALDER = "alder-row-party-wall";

  static List<String> demos() {
    return SavedSamples.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void what_is_written_is_read_again(String name) {
    SavedAdvice saved = SavedSamples.saved(name);
    String text = SavedAdvice.FILES.text(saved);

    FileReading<SavedAdvice> read = SavedAdvice.FILES.read(text, "x.advice.json");

    assertThat(read.messages()).isEmpty();
    assertThat(read.content()).contains(saved);
    assertThat(read.content().orElseThrow().intact()).isTrue();
    assertThat(SavedAdvice.FILES.text(read.content().orElseThrow())).isEqualTo(text);
    assertThat(saved.problems()).isEmpty();
    assertThat(
            saved.readSite("x").<Object>fold(valid -> valid.site(), invalid -> invalid.problems()))
        .isEqualTo(SavedSamples.site(name));
  }

  @Test
  void everything_that_the_answer_rests_on_is_there() {
    SavedZone zone = SavedSamples.saved(ALDER).zones().get(0);
    SavedOption pits = zone.option("pits").orElseThrow();

    assertThat(pits.standing()).isEqualTo("leads");
    assertThat(zone.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.rule()).isEqualTo("PIT-04a");
              assertThat(finding.strength()).contains("major");
              assertThat(finding.limits())
                  .contains(
                      new SavedMatch(
                          "pit-depth-easy",
                          "depth of a pit dug in one lift",
                          "3 m",
                          "from memory"));
            });
    assertThat(zone.facts()).extracting(SavedFact::origin).contains("stated", "derived", "assumed");
    SavedSheet sheet = pits.sheet().orElseThrow();
    assertThat(sheet.inputs()).extracting(SavedInput::origin).contains("stated", "default");
    assertThat(sheet.steps()).isNotEmpty();
    assertThat(sheet.checks()).extracting(SavedCheck::verdict).contains("passes", "refer");
    assertThat(SavedSamples.saved(ALDER).plan().stages()).isNotEmpty();
    assertThat(SavedSamples.saved(ALDER).rulePack().limits()).hasSizeGreaterThan(50);
  }

  @Test
  void a_content_edited_by_hand_does_not_match_its_seal() {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    String edited = text.replaceFirst("\"verdict\": \"refer\"", "\"verdict\": \"passes\"");
    assertThat(edited).isNotEqualTo(text);

    assertThat(SavedAdvice.FILES.read(edited, "x").content().orElseThrow().intact()).isFalse();
  }

  @Test
  void zones_that_are_not_those_of_the_site_are_told_without_what_moves_the_cursor() {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    int zones = text.indexOf("\"zones\"", text.indexOf("\"rulePack\""));
    int named = text.lastIndexOf("\"name\": \"party wall\"");
    assertThat(named).isGreaterThan(zones);
    String other =
        text.substring(0, named)
            + "\"name\": \"\\u001b[2J"
            + "x".repeat(5000)
            + text.substring(named + "\"name\": \"party wall".length());

    List<String> problems =
        SavedAdvice.FILES.read(other, "x.advice.json").content().orElseThrow().problems();

    assertThat(problems)
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem)
                    .startsWith("zones: the zones advised are ?[2Jx")
                    .endsWith("those of the site are party wall")
                    .hasSizeLessThan(400));
  }

  @Test
  void another_layout_is_the_same_content() {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    String other = text.replace("\n", "\r\n").replace("\": ", "\"  :\t");

    assertThat(SavedAdvice.FILES.read(other, "x").content().orElseThrow().intact()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"tie\": 2|\"tie\": \"two\"|rulePack.tie: this is a text in \"quotation marks\"; a number is needed",
        "\"tie\": 2|\"tie\": 2.5|rulePack.tie: this is no whole number",
        "\"tie\": 2|\"tye\": 2|rulePack.tye: there is no entry \"tye\"; did you mean \"tie\"?",
        "\"tie\": 2|\"tie\": 2, \"tie\": 2|rulePack.tie: tie stands twice",
        "\"tie\": 2,| |rulePack.tie: the entry tie is not there",
        "T14:30:00Z|T14:30|made.when: this is no instant; one looks like",
        "advice/1|advice/9|the file is of the form \"advice/9\"; this program reads advice/1",
        "advice/1|site/1|this is not a saved consultation but \"site/1\"",
      })
  void a_broken_file_is_told_with_its_place(String from, String to, String message) {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    String broken = text.replaceFirst(java.util.regex.Pattern.quote(from), to == null ? "" : to);
    assertThat(broken).isNotEqualTo(text);

    FileReading<SavedAdvice> read = SavedAdvice.FILES.read(broken, "job.advice.json");

    assertThat(read.content()).isEmpty();
    assertThat(read.messages())
        .anySatisfy(one -> assertThat(one).startsWith("job.advice.json:").contains(message));
  }

  @Test
  void all_problems_are_told_at_once() {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    String broken =
        text.replace("\"tie\": 2", "\"tie\": true")
            .replace("\"units\": \"SI\"", "\"units\": 7")
            .replace("\"tied\": false", "\"tied\": 0");

    assertThat(SavedAdvice.FILES.read(broken, "x").messages())
        .hasSizeGreaterThan(4)
        .anyMatch(one -> one.contains("rulePack.tie"))
        .anyMatch(one -> one.contains("units"))
        .anyMatch(one -> one.contains("zones[0].options[0].tied"));
  }

  @Test
  void whatever_a_file_holds_nothing_is_thrown() {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(ALDER));
    for (int end = 0; end < text.length(); end += 1 + text.length() / 40) {
      assertThat(SavedAdvice.FILES.read(text.substring(0, end), "x").messages()).isNotEmpty();
    }
    for (String odd : List.of("", "[]", "null", "7", "{}", "{\"underhold\": 1}", "\u0000", "{{")) {
      assertThat(SavedAdvice.FILES.read(odd, "x").messages()).isNotEmpty();
    }
  }
}
